#include "core/wood/air.h"
#include "tests/core/words/untold.h"

#include <gtest/gtest.h>

namespace frontwright {
namespace {

TEST(ImpossibleAir, IsToldWithNoWordLeftInEnglish) {
    const AirState dry = AirState::meter(Percent::whole(6)),
                   damp = AirState::meter(Percent::whole(11)),
                   wet = AirState::meter(Percent::whole(31)),
                   hot = AirState::of(Temperature::fahrenheit(280), Percent::whole(50)),
                   cold = AirState::of(Temperature::celsius(-5), Percent::whole(50)),
                   saturated =
                       AirState::of(Temperature::celsius(20), Percent::fromThousandths(100'500));
    for (const Air& air :
         {Air{wet, dry, damp}, Air{dry, hot, damp}, Air{dry, cold, damp}, Air{dry, dry, saturated},
          Air{dry, damp, dry}, Air{dry, dry, wet}, Air{cold, dry, damp}}) {
        const auto error = impossible(air);
        ASSERT_TRUE(error);
        EXPECT_EQ(testing::untold(error->sentence()), std::vector<std::string>{})
            << error->sentence();
    }
}

} // namespace
} // namespace frontwright
