#include "app/command_line.h"

#include <gtest/gtest.h>

using namespace frontwright;

namespace {

template<class Wanted>
Wanted read(const std::vector<std::string>& arguments) {
    const auto command = readCommandLine(arguments);
    if (!command.ok()) {
        ADD_FAILURE() << command.error().sentence();
        return {};
    }
    if (!std::holds_alternative<Wanted>(command.value())) {
        ADD_FAILURE() << "another command, index " << command.value().index();
        return {};
    }
    return std::get<Wanted>(command.value());
}

std::string refusal(const std::vector<std::string>& arguments) {
    const auto command = readCommandLine(arguments);
    return command.ok() ? std::string() : command.error().sentence().english();
}

} // namespace

TEST(CommandLine, OpensTheWindowWithAndWithoutAFile) {
    using Files = std::vector<std::string>;
    EXPECT_EQ(read<WindowCommand>({}).files, Files{});
    EXPECT_EQ(read<WindowCommand>({"chest.frontwright"}).files, Files{"chest.frontwright"});
    EXPECT_EQ(read<WindowCommand>({"a.frontwright", "./b"}).files, (Files{"a.frontwright", "./b"}));
}

TEST(CommandLine, ReadsReportsInBothForms) {
    EXPECT_EQ(read<CheckCommand>({"check", "a"}).form, ReportForm::Text);
    EXPECT_EQ(read<CheckCommand>({"check", "--json", "a"}).form, ReportForm::Json);
    EXPECT_EQ(read<PlanCommand>({"plan", "a"}).form, ReportForm::Text);
    const auto plan = read<PlanCommand>({"plan", "a", "--json"});
    EXPECT_EQ(plan.form, ReportForm::Json);
    EXPECT_EQ(plan.file, "a");
}

TEST(CommandLine, ReadsEveryOptionOfTemplates) {
    const auto command =
        read<TemplatesCommand>({"templates", "a", "-o", "b.pdf", "--svg", "c", "--marks", "d.json",
                                "--paper", "Letter", "--landscape", "--overlap", "3/8 in"});
    EXPECT_EQ(command.file, "a");
    EXPECT_EQ(command.pdf, "b.pdf");
    EXPECT_EQ(command.svgFolder, "c");
    EXPECT_EQ(command.marks, "d.json");
    EXPECT_EQ(command.paper, "Letter");
    EXPECT_EQ(command.orientation, Orientation::Landscape);
    EXPECT_EQ(command.overlap, Length::fromSixtyFourths(24));
}

TEST(CommandLine, TakesABareOverlapInMillimetresAndTenWhereNoneIsGiven) {
    EXPECT_EQ(read<TemplatesCommand>({"templates", "a", "-o", "b", "--overlap", "12"}).overlap,
              Length::millimetres(12));
    const auto plain = read<TemplatesCommand>({"templates", "a", "-o", "b"});
    EXPECT_EQ(plain.overlap, Length::millimetres(10));
    EXPECT_EQ(plain.orientation, std::nullopt);
    EXPECT_EQ(read<TemplatesCommand>({"templates", "a", "-o", "b", "--upright"}).orientation,
              Orientation::Portrait);
    EXPECT_EQ(plain.paper, "");
}

TEST(CommandLine, ReadsAPictureOfBothKinds) {
    EXPECT_EQ(read<PictureCommand>({"picture", "a", "-o", "b.svg"}).out, "b.svg");
    const auto png = read<PictureCommand>({"picture", "-o", "b.png", "a"});
    EXPECT_EQ(png.out, "b.png");
    EXPECT_EQ(png.file, "a");
    EXPECT_EQ(png.of, PictureOf::Elevation);
    EXPECT_EQ(read<PictureCommand>({"picture", "a", "--look", "-o", "b.svg"}).of, PictureOf::Look);
    EXPECT_EQ(read<PictureCommand>({"picture", "a", "--look", "--reveals", "-o", "b.png"}).of,
              PictureOf::LookReveals);
    EXPECT_EQ(read<PictureCommand>({"picture", "a", "--window", "-o", "b.png"}).of,
              PictureOf::Window);
}

TEST(CommandLine, HelpsWhereverHelpIsAskedFor) {
    read<HelpCommand>({"--help"});
    read<HelpCommand>({"-h"});
    read<HelpCommand>({"templates", "--help"});
    read<VersionCommand>({"--version"});
}

TEST(CommandLine, HelpNamesEveryCommandAndOption) {
    const std::string help = helpText();
    for (const char* word : {"check FILE", "plan FILE", "templates FILE", "picture FILE", "--json",
                             "-o OUT.pdf", "--svg", "--marks", "--paper", "--upright",
                             "--landscape", "--overlap", "--window", "--help", "--version"})
        EXPECT_NE(help.find(word), std::string::npos) << word;
    EXPECT_EQ(help.back(), '\n');
}

TEST(CommandLine, SaysWhatItDoesNotUnderstand) {
    const std::string see = "; see frontwright --help";
    EXPECT_EQ(refusal({"templates", "a", "-o", "b", "--upright", "--landscape"}),
              "command line: --upright and --landscape exclude one another" + see);
    EXPECT_EQ(refusal({"check"}), "command line: a case file is wanted" + see);
    EXPECT_EQ(refusal({"plan", "a", "b"}), "command line: only one case file can be given" + see);
    EXPECT_EQ(refusal({"check", "a.frontwright", "b.frontwright"}),
              "command line: only one case file can be given" + see);
    EXPECT_EQ(refusal({"chek", "a.frontwright"}), "command line: chek is not a command" + see);
    EXPECT_EQ(refusal({"chek"}), "command line: chek is neither a command nor a case file" + see);
    EXPECT_EQ(refusal({"check", "a", "--xml"}), "command line: --xml is not an option here" + see);
    EXPECT_EQ(refusal({"--frobnicate"}), "command line: --frobnicate is not an option here" + see);
    EXPECT_EQ(refusal({"templates", "a", "-o"}), "command line: -o wants a value" + see);
    EXPECT_EQ(refusal({"templates", "a"}),
              "command line: templates wants -o OUT.pdf, --svg DIR or --marks OUT.json" + see);
    EXPECT_EQ(refusal({"picture", "a", "-o", "b.gif"}),
              "command line: picture wants -o OUT.svg or -o OUT.png" + see);
    EXPECT_EQ(refusal({"picture", "a", "--window", "--look", "-o", "b.png"}),
              "command line: a picture is of the window or of the look, not of both" + see);
    EXPECT_EQ(refusal({"picture", "a", "--window", "-o", "b.svg"}),
              "command line: a picture of the window can only be a PNG" + see);
}

TEST(CommandLine, RefusesAnOverlapThatIsNoLength) {
    const std::string sentence =
        refusal({"templates", "a", "-o", "b", "--overlap", "three fingers"});
    EXPECT_EQ(sentence.substr(0, 11), "--overlap: ");
    EXPECT_NE(sentence.find("write it like 10 mm or 3/8 in"), std::string::npos) << sentence;
    EXPECT_NE(refusal({"templates", "a", "-o", "b", "--overlap", ""}), "");
}

TEST(CommandLine, RefusesOneNameForTwoOutputs) {
    EXPECT_NE(refusal({"templates", "a", "-o", "b", "--marks", "b"}).find("b"), std::string::npos);
    EXPECT_NE(refusal({"templates", "a", "-o", "a"}), "");
    EXPECT_NE(refusal({"picture", "a.svg", "-o", "a.svg"}), "");
}
