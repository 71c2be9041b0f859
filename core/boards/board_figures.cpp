#include "core/boards/board_figures.h"

#include "core/lengths/format.h"

namespace frontwright::boards {

std::string fine(Length length, LengthStyle style) {
    return style.unit == Unit::Inch ? number(length.inInches(), 3, style) + " in"
                                    : number(length.inMillimetres(), 2, style) + " mm";
}

std::string number(double value, int decimals, LengthStyle style) {
    return withMark(decimal(value, decimals), style.mark);
}

std::string number(Ratio ratio, LengthStyle style) {
    const bool isMost = ratio.thousandths() == Ratio::mostThousandths;
    return isMost ? "> 999" : number(static_cast<double>(ratio.thousandths()) / 1000, 2, style);
}

std::string degrees(Angle angle, LengthStyle style) {
    return number(angle.inDegrees(), 2, style) + "°";
}

std::string shownMoment(Moment moment, LengthStyle style) {
    constexpr double poundForceInch = Force::newtonsPerPoundForce * 0.0254;
    return style.unit == Unit::Inch
               ? number(moment.inNewtonMetres() / poundForceInch, 0, style) + " lbf·in"
               : number(moment.inNewtonMetres(), 1, style) + " N·m";
}

Source statics() {
    return sourceNamed(SourceKind::CommonPractice, text("statics of stiff parts, common practice"));
}

Source friction() {
    return sourceNamed(SourceKind::FromMemory,
                       text("statics; friction of dry wood 0.5, the upper end of 0.3 to 0.5: Wood "
                            "Handbook, 1999, chapter 4, from memory"));
}

} // namespace frontwright::boards
