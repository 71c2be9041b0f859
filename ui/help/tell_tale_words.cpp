#include "ui/help/tell_tale_words.h"

#include <QCoreApplication>
#include <QLocale>
#include <QStringList>

namespace frontwright {

namespace {

struct TellTales {
    Q_DECLARE_TR_FUNCTIONS(frontwright::TellTales)
public:
    static QString words(ScaleCause cause) {
        switch (cause) {
        case ScaleCause::QueueOfOtherPaper:
            return tr("A4 pages on a printer set to Letter");
        case ScaleCause::FittedToOtherPaper:
            return tr("A4 page fitted to Letter");
        case ScaleCause::ShrunkToPrintable:
            return tr("page shrunk to the printable area");
        case ScaleCause::FittedToWidth:
            return tr("Letter page fitted to the width of A4");
        case ScaleCause::Enlarged:
            return tr("page enlarged to the other paper");
        case ScaleCause::DotsMistaken:
            return tr("dots taken for the wrong size, 72 or 96 to the inch");
        case ScaleCause::UnitsMistaken:
            return tr("millimetres, centimetres or metres taken for one another");
        case ScaleCause::InchesMistaken:
            return tr("inches and millimetres taken for one another");
        case ScaleCause::PaperSlipped:
            break;
        }
        return tr("the two directions differ by more than 2 %: paper slipped");
    }
    static QString remedy(ScaleCause cause) {
        switch (cause) {
        case ScaleCause::QueueOfOtherPaper:
        case ScaleCause::FittedToOtherPaper:
        case ScaleCause::FittedToWidth:
        case ScaleCause::Enlarged:
            return tr("Set the printer and this window to the paper that lies in the tray.");
        case ScaleCause::ShrunkToPrintable:
            return tr("Print at 100 % or “Actual size”, never “Fit”.");
        case ScaleCause::DotsMistaken:
            return tr("Print from here or from another viewer, at “Actual size”.");
        case ScaleCause::UnitsMistaken:
        case ScaleCause::InchesMistaken:
            return tr("Write the unit with the length: 180 mm, 7 1/16 in.");
        case ScaleCause::PaperSlipped:
            break;
        }
        return tr("Print that page again, and measure both bars again.");
    }
    static QString sizes(const TellTale& row) {
        if (row.sizes.empty())
            return tr("any");
        QLocale locale;
        locale.setNumberOptions(QLocale::OmitGroupSeparator);
        QStringList numbers;
        for (double size : row.sizes)
            numbers << locale.toString(size, 'g', 6);
        return tr("%1 mm").arg(numbers.join(tr(" or ")));
    }
    static QString heading() {
        return tr("<tr><th align='left'>100 mm comes out at</th><th align='left'>what "
                  "happened</th><th align='left'>what to do</th></tr>");
    }
};

QString rowOf(const TellTale& row, bool isMarked) {
    const QString pattern =
        isMarked
            ? QStringLiteral("<tr><td><b>➤ %1</b></td><td><b>%2</b></td><td><b>%3</b></td></tr>")
            : QStringLiteral("<tr><td>%1</td><td>%2</td><td>%3</td></tr>");
    return pattern.arg(TellTales::sizes(row), TellTales::words(row.cause),
                       TellTales::remedy(row.cause));
}

} // namespace

QString causeWords(ScaleCause cause) {
    return TellTales::words(cause);
}
QString causeRemedy(ScaleCause cause) {
    return TellTales::remedy(cause);
}

QString tellTaleTable(std::optional<ScaleCause> likeliest) {
    QString table = QStringLiteral("<table cellpadding='3'>") + TellTales::heading();
    for (const TellTale& row : tellTales())
        table += rowOf(row, likeliest == row.cause);
    return table + QStringLiteral("</table>");
}

} // namespace frontwright
