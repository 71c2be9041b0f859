#include "app/command_line.h"

#include "core/lengths/parse.h"

#include <algorithm>
#include <map>
#include <optional>
#include <utility>

namespace frontwright {

namespace {

/// Arguments sorted into options with and without a value, and files.
struct Sorted {
    std::map<std::string, std::string> values;
    std::vector<std::string> flags;
    std::vector<std::string> files;

    [[nodiscard]] bool has(const std::string& flag) const {
        return std::find(flags.begin(), flags.end(), flag) != flags.end();
    }
    [[nodiscard]] std::string value(const std::string& option) const {
        const auto found = values.find(option);
        return found == values.end() ? std::string() : found->second;
    }
};

Error usage(Phrase what) {
    return {text("command line"), std::move(what), text("see frontwright --help")};
}

bool isOneOf(const std::string& argument, const std::vector<std::string>& names) {
    return std::find(names.begin(), names.end(), argument) != names.end();
}

Result<Sorted> sorted(const std::vector<std::string>& arguments, std::size_t from,
                      const std::vector<std::string>& withValue,
                      const std::vector<std::string>& flags) {
    Sorted result;
    for (std::size_t i = from; i < arguments.size(); ++i) {
        const std::string& argument = arguments[i];
        if (isOneOf(argument, withValue)) {
            if (i + 1 == arguments.size())
                return usage(phrase("%1 wants a value", argument));
            result.values[argument] = arguments[++i];
        } else if (isOneOf(argument, flags)) {
            result.flags.push_back(argument);
        } else if (argument.size() > 1 && argument[0] == '-') {
            return usage(phrase("%1 is not an option here", argument));
        } else {
            result.files.push_back(argument);
        }
    }
    return result;
}

Result<std::string> onlyFile(const Sorted& sortedArguments) {
    if (sortedArguments.files.size() != 1)
        return usage(sortedArguments.files.empty() ? text("a case file is wanted")
                                                   : text("only one case file can be given"));
    return sortedArguments.files.front();
}

Error overTheCase(const std::string& file) {
    return usage(phrase("the case file %1 can't be an output too", file));
}

template<class ReportCommand>
Result<Command> readReport(const std::vector<std::string>& arguments) {
    const auto options = sorted(arguments, 1, {}, {"--json"});
    if (!options.ok())
        return options.error();
    const auto file = onlyFile(options.value());
    if (!file.ok())
        return file.error();
    return Command(ReportCommand{file.value(), options.value().has("--json") ? ReportForm::Json
                                                                             : ReportForm::Text});
}

Result<Command> readTemplates(const std::vector<std::string>& arguments) {
    const auto options = sorted(arguments, 1, {"-o", "--paper", "--overlap", "--svg", "--marks"},
                                {"--upright", "--landscape"});
    if (!options.ok())
        return options.error();
    const auto file = onlyFile(options.value());
    if (!file.ok())
        return file.error();
    TemplatesCommand command;
    command.file = file.value();
    command.pdf = options.value().value("-o");
    command.svgFolder = options.value().value("--svg");
    command.marks = options.value().value("--marks");
    command.paper = options.value().value("--paper");
    const bool upright = options.value().has("--upright"),
               landscape = options.value().has("--landscape");
    if (upright && landscape)
        return usage(text("--upright and --landscape exclude one another"));
    if (upright || landscape)
        command.orientation = upright ? Orientation::Portrait : Orientation::Landscape;
    if (command.pdf.empty() && command.svgFolder.empty() && command.marks.empty())
        return usage(text("templates wants -o OUT.pdf, --svg DIR or --marks OUT.json"));
    if (!command.pdf.empty() && command.pdf == command.marks)
        return usage(phrase("-o and --marks name the same file, %1", command.pdf));
    if (isOneOf(command.file, {command.pdf, command.marks}))
        return overTheCase(command.file);
    if (options.value().values.contains("--overlap")) {
        const std::string overlap = options.value().value("--overlap");
        // Overlaps of paper are told in millimetres where no unit is written.
        const auto length = parseLength(overlap, Unit::Millimetre);
        if (!length.ok())
            return Error{std::string("--overlap"), length.error().sentence(),
                         text("write it like 10 mm or 3/8 in")};
        command.overlap = length.value().length;
    }
    return Command(command);
}

Result<Command> readPicture(const std::vector<std::string>& arguments) {
    const auto options = sorted(arguments, 1, {"-o"}, {"--window", "--look", "--reveals"});
    if (!options.ok())
        return options.error();
    const auto file = onlyFile(options.value());
    if (!file.ok())
        return file.error();
    const bool window = options.value().has("--window");
    const bool look = options.value().has("--look");
    const bool reveals = options.value().has("--reveals");
    const std::string out = options.value().value("-o");
    if (!out.ends_with(".svg") && !out.ends_with(".png"))
        return usage(text("picture wants -o OUT.svg or -o OUT.png"));
    if (out == file.value())
        return overTheCase(out);
    if (window && !out.ends_with(".png"))
        return usage(text("a picture of the window can only be a PNG"));
    if (window && (look || reveals))
        return usage(text("a picture is of the window or of the look, not of both"));
    return Command(PictureCommand{file.value(), out,
                                  window    ? PictureOf::Window
                                  : reveals ? PictureOf::LookReveals
                                  : look    ? PictureOf::Look
                                            : PictureOf::Elevation});
}

} // namespace

Result<Command> readCommandLine(const std::vector<std::string>& arguments) {
    if (arguments.empty())
        return Command(WindowCommand{});
    if (isOneOf("--help", arguments) || isOneOf("-h", arguments))
        return Command(HelpCommand{});
    if (isOneOf("--version", arguments))
        return Command(VersionCommand{});
    if (arguments[0] == "check")
        return readReport<CheckCommand>(arguments);
    if (arguments[0] == "plan")
        return readReport<PlanCommand>(arguments);
    if (arguments[0] == "templates")
        return readTemplates(arguments);
    if (arguments[0] == "picture")
        return readPicture(arguments);
    if (arguments[0] == "rules")
        return arguments.size() == 1 ? Result<Command>(Command(RulesCommand{}))
                                     : usage(text("rules wants nothing more"));
    if (arguments.size() > 1 && arguments[0].find_first_of("./-") == std::string::npos)
        return usage(phrase("%1 is not a command", arguments[0]));
    const auto options = sorted(arguments, 0, {}, {});
    if (!options.ok())
        return options.error();
    // A mistyped command must not open a window and wait.
    for (const std::string& file : options.value().files)
        if (file.find_first_of("./") == std::string::npos)
            return usage(phrase("%1 is neither a command nor a case file", file));
    return Command(WindowCommand{options.value().files});
}

std::string helpText() {
    return "Frontwright: drawer fronts that fit, with every hole in its place.\n"
           "\n"
           "  frontwright [FILE]...                 open the window, one for each case\n"
           "  frontwright check FILE [--json]       what to heed; exit 0 nothing, 1 a part would "
           "be\n"
           "                                        spoiled or will not work, 2 the file can't be "
           "used\n"
           "  frontwright plan FILE [--json]        every computed number and how it came about\n"
           "  frontwright templates FILE [-o OUT.pdf] [--svg DIR] [--marks OUT.json]\n"
           "              [--paper NAME] [--upright|--landscape] [--overlap LENGTH]\n"
           "                                        full-size drilling templates; each lies as it "
           "takes "
           "the\n"
           "                                        fewest pages, unless it is told\n"
           "  frontwright picture FILE -o OUT.svg|OUT.png\n"
           "                                        the elevation with its dimensions\n"
           "  frontwright picture FILE --look [--reveals] -o OUT.svg|OUT.png\n"
           "                                        how it will look; reveals ten times as wide\n"
           "  frontwright picture FILE --window -o OUT.png\n"
           "                                        the whole window\n"
           "  frontwright rules                     every rule, its value and its source\n"
           "  frontwright --help | --version\n"
           "\n"
           "Print templates at 100 %, and measure the check bars before you drill.\n";
}

} // namespace frontwright
