#include "core/boards/fasteners_text.h"

#include "core/lengths/format.h"
#include "core/lengths/parse.h"

namespace frontwright {
namespace {

constexpr std::string_view blanks = " \t";

std::string_view trimmed(std::string_view text) {
    const std::size_t first = text.find_first_not_of(blanks);
    if (first == std::string_view::npos)
        return {};
    return text.substr(first, text.find_last_not_of(blanks) - first + 1);
}

/// What stands before the first `mark`; the rest begins after it.
std::string_view cutOff(std::string_view& rest, char mark) {
    const std::size_t at = rest.find(mark);
    const std::string_view head = rest.substr(0, at);
    rest = at == std::string_view::npos ? std::string_view() : rest.substr(at + 1);
    return trimmed(head);
}

Result<FastenerToReach> parseOne(std::string_view typed, Unit unit) {
    FastenerToReach fastener;
    const char side = typed.front();
    if (side != 'L' && side != 'l' && side != 'R' && side != 'r')
        return Error{{},
                     phrase("\"%1\" does not begin with L or R", std::string(typed)),
                     text("write a side, a depth and a diameter, as in L 4 in : 1 in")};
    fastener.side = side == 'L' || side == 'l' ? Side::Left : Side::Right;
    std::string_view rest = typed.substr(1);
    const auto depth = parseLength(cutOff(rest, ':'), unit);
    if (!depth.ok())
        return depth.error();
    const auto reach = parseLength(trimmed(rest), unit);
    if (!reach.ok())
        return reach.error();
    fastener.depth = depth.value().length;
    fastener.reach = reach.value().length;
    return fastener;
}

} // namespace

std::string written(const std::vector<FastenerToReach>& fasteners, Unit unit) {
    std::string line;
    for (const FastenerToReach& fastener : fasteners) {
        line += line.empty() ? "" : "; ";
        line += fastener.side == Side::Left ? "L " : "R ";
        line += written(fastener.depth, unit) + " : " + written(fastener.reach, unit);
    }
    return line;
}

Result<std::vector<FastenerToReach>> parseFasteners(std::string_view typed, Unit unit) {
    std::vector<FastenerToReach> fasteners;
    for (std::string_view rest = typed; !trimmed(rest).empty();) {
        const std::string_view item = cutOff(rest, ';');
        if (item.empty())
            continue;
        auto one = parseOne(item, unit);
        if (!one.ok())
            return one.error();
        fasteners.push_back(one.value());
    }
    return fasteners;
}

} // namespace frontwright
