#include "core/findings/judging.h"

namespace frontwright::judging {
namespace {

Severity severityOf(BoardGravity gravity) {
    switch (gravity) {
    case BoardGravity::RuinsPart:
        return Severity::Ruins;
    case BoardGravity::WillNotWork:
        return Severity::WontWork;
    case BoardGravity::AgainstPractice:
        return Severity::OutsidePractice;
    case BoardGravity::ToKnow:
        break;
    }
    return Severity::ToKnow;
}

} // namespace

void judgeBoards(const Plan& plan, std::vector<Finding>& found) {
    for (const PlannedBoard& board : plan.boards)
        for (const BoardFault fault : faultsOf(*board.spec, board.fitted)) {
            Finding& finding = found.emplace_back();
            finding.code = FindingCode::OfBoard;
            finding.severity = severityOf(gravityOf(fault));
            finding.where.opening = board.opening;
            finding.fault = fault;
        }
}

} // namespace frontwright::judging
