#include "ui/rendering/reveal_words.h"

#include "core/lengths/format.h"
#include "ui/session/session.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

QString say(Length length, LengthStyle style) {
    // Differences are small: to the finest fraction.
    style.denominator = 64;
    return QString::fromStdString(shown(length, style));
}

QString besideOneFront(const QString& name, Side side) {
    switch (side) {
    case Side::Left:
        return QCoreApplication::translate("Reveals", "left of %1").arg(name);
    case Side::Right:
        return QCoreApplication::translate("Reveals", "right of %1").arg(name);
    case Side::Bottom:
        return QCoreApplication::translate("Reveals", "below %1").arg(name);
    case Side::Top:
        break;
    }
    return QCoreApplication::translate("Reveals", "above %1").arg(name);
}

QString placeOf(const Work& work, const RevealAt& at) {
    const auto name = [&](std::uint32_t front) {
        return QString::fromStdString(label(work.project, work.plan.fronts[front]));
    };
    if (at.other)
        return QCoreApplication::translate("Reveals", "between %1 and %2")
            .arg(name(at.front), name(*at.other));
    return besideOneFront(name(at.front), at.side);
}

QString even(RevealKind kind) {
    switch (kind) {
    case RevealKind::BetweenFronts:
        return QCoreApplication::translate("Reveals", "Between fronts: every reveal is %1.");
    case RevealKind::AtCaseEdge:
        return QCoreApplication::translate("Reveals", "At the case's edge: every reveal is %1.");
    case RevealKind::RoundInset:
        break;
    }
    return QCoreApplication::translate("Reveals", "Round inset fronts: every gap is %1.");
}

QString uneven(RevealKind kind) {
    switch (kind) {
    case RevealKind::BetweenFronts:
        return QCoreApplication::translate(
            "Reveals", "Between fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.");
    case RevealKind::AtCaseEdge:
        return QCoreApplication::translate(
            "Reveals", "At the case's edge: smallest %1 (%2), largest %3 (%4); they differ by %5.");
    case RevealKind::RoundInset:
        break;
    }
    return QCoreApplication::translate(
        "Reveals", "Round inset fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.");
}

} // namespace

QStringList revealSentences(const Work& work, LengthStyle style) {
    QStringList sentences;
    for (const RevealRange& range : revealRanges(work.plan)) {
        if (range.isEven())
            sentences << even(range.kind).arg(say(range.smallest.width, style));
        else
            sentences << uneven(range.kind)
                             .arg(say(range.smallest.width, style), placeOf(work, range.smallest),
                                  say(range.largest.width, style), placeOf(work, range.largest),
                                  say(range.difference(), style));
    }
    return sentences;
}

QString revealTag(RevealExtreme extreme, Length width, LengthStyle style) {
    const QString words = extreme == RevealExtreme::Smallest
                              ? QCoreApplication::translate("Reveals", "smallest %1")
                              : QCoreApplication::translate("Reveals", "largest %1");
    return words.arg(say(width, style));
}

} // namespace frontwright
