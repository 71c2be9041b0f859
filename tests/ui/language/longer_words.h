#pragma once

#include <QTranslator>

namespace frontwright::testing {

/// A language of our own whose texts are 40 % longer than the English ones, but at least by one
/// letter, as long as this lives.
class LongerWords : public QTranslator {
public:
    LongerWords();
    [[nodiscard]] bool isEmpty() const override { return false; }
    [[nodiscard]] QString translate(const char* context, const char* source,
                                    const char* disambiguation, int n) const override;
};

} // namespace frontwright::testing
