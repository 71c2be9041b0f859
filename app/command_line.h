#pragma once

#include "core/lengths/length.h"
#include "core/results/result.h"
#include "core/sheets/paper.h"

#include <optional>
#include <string>
#include <variant>
#include <vector>

namespace frontwright {

enum class ReportForm : std::uint8_t { Text, Json };

struct WindowCommand {
    std::vector<std::string> files; ///< each in a window of its own; none: the start page
};
struct CheckCommand {
    std::string file;
    ReportForm form = ReportForm::Text;
};
struct PlanCommand {
    std::string file;
    ReportForm form = ReportForm::Text;
};
/// At least one of the three outputs is given.
struct TemplatesCommand {
    std::string file;
    std::string pdf;
    std::string svgFolder;
    std::string marks;
    std::string paper; ///< empty: A4 for documents in millimetres, Letter for those in inches
    std::optional<Orientation> orientation; ///< none: each sheet as it takes the fewest pages
    Length overlap = Length::millimetres(10);
};
enum class PictureOf : std::uint8_t {
    Elevation,   ///< the drawing with its dimensions
    Look,        ///< the rendering
    LookReveals, ///< the rendering with its reveals exaggerated
    Window       ///< the whole window, as the README shows it
};
/// Every rule and its source, as a page.
struct RulesCommand {};
struct PictureCommand {
    std::string file;
    std::string out; ///< .svg or .png; a window as .png only
    PictureOf of = PictureOf::Elevation;
};
struct HelpCommand {};
struct VersionCommand {};

using Command = std::variant<WindowCommand, CheckCommand, PlanCommand, TemplatesCommand,
                             PictureCommand, RulesCommand, HelpCommand, VersionCommand>;

/// Reads the arguments after the program's name. Error: what can't be understood, and what could.
Result<Command> readCommandLine(const std::vector<std::string>& arguments);

std::string helpText();

} // namespace frontwright
