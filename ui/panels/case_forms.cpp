#include "ui/panels/forms.h"

#include "core/edits/construction.h"
#include "core/edits/divisions.h"
#include "core/plan/member_words.h"
#include "ui/language/told.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

std::function<bool(const Project&)> whileBuilt(Construction construction) {
    return [construction](const Project& p) { return p.casework.construction == construction; };
}

LengthRow outerRow(Construction construction, Side side) {
    PropertyForm::LengthRow row{told(nameOfOuter(construction, side)),
                                construction == Construction::FaceFrame ? tr("Change the frame")
                                                                        : tr("Change the panels"),
                                [side](const Project& p, EditTarget) {
                                    return std::optional<Length>(p.casework.frame[side]);
                                },
                                [side](const Project& p, EditTarget, WrittenLength v) {
                                    CaseMeasures measures = measuresOf(p.casework);
                                    measures.frame[side] = v;
                                    return setCase(p, measures);
                                }};
    row.isShown = whileBuilt(construction);
    return row;
}

LengthRow measureRow(const QString& label, WrittenLength CaseMeasures::*measure) {
    return {label, tr("Change the case"),
            [measure](const Project& p, EditTarget) {
                return std::optional<Length>(measuresOf(p.casework).*measure);
            },
            [measure](const Project& p, EditTarget, WrittenLength v) {
                CaseMeasures measures = measuresOf(p.casework);
                measures.*measure = v;
                return setCase(p, measures);
            }};
}

ChoiceRow constructionRow() {
    return {
        tr("Construction"), tr("Change the construction"),
        [](const Work&) {
            return QStringList{tr("Face frame"), tr("Frameless")};
        },
        [](const Work& w, EditTarget) { return static_cast<int>(w.project.casework.construction); },
        [](const Work&, const Project& p, EditTarget, int index) {
            return setConstruction(p, static_cast<Construction>(index));
        }};
}

LengthRow limitRow(const QString& label, WrittenLength Limits::*limit) {
    return {
        label, tr("Change a limit"),
        [limit](const Project& p, EditTarget) { return std::optional<Length>(p.limits.*limit); },
        [limit](const Project& p, EditTarget, WrittenLength v) {
            Limits limits = p.limits;
            limits.*limit = v;
            return setLimits(p, limits);
        }};
}

} // namespace

PropertyForm* caseForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Case"));
    form->add(PropertyForm::LengthRow{
        tr("Width"), tr("Set case width"),
        [](const Project& p, EditTarget) { return std::optional<Length>(p.casework.width); },
        [](const Project& p, EditTarget, WrittenLength v) {
            return setCaseSize(p, v, p.casework.height);
        }});
    form->explains(QuantityKind::CaseWidth);
    form->add(PropertyForm::LengthRow{
        tr("Height"), tr("Set case height"),
        [](const Project& p, EditTarget) { return std::optional<Length>(p.casework.height); },
        [](const Project& p, EditTarget, WrittenLength v) {
            return setCaseSize(p, p.casework.width, v);
        }});
    form->explains(QuantityKind::CaseHeight);
    form->add(measureRow(tr("Depth inside"), &CaseMeasures::depth));
    form->add(constructionRow());
    for (const Construction construction : {Construction::FaceFrame, Construction::Frameless})
        for (const Side side : allSides)
            form->add(outerRow(construction, side));
    auto thickness = measureRow(tr("Frame thickness"), &CaseMeasures::frameThickness);
    thickness.isShown = whileBuilt(Construction::FaceFrame);
    form->add(thickness);
    form->add(measureRow(tr("Grid of sizes"), &CaseMeasures::grid));
    return form;
}

PropertyForm* drawingForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Document"));
    form->add(PropertyForm::TextRow{
        tr("Title"), tr("Change the title"), [](const Project& p, EditTarget) { return p.title; },
        [](const Project& p, EditTarget, const std::string& v) { return setTitle(p, v); }});
    form->add(PropertyForm::TextRow{
        tr("Note"), tr("Change the note"), [](const Project& p, EditTarget) { return p.note; },
        [](const Project& p, EditTarget, const std::string& v) { return setNote(p, v); }});
    form->add(PropertyForm::ChoiceRow{
        tr("Unit of the document"), tr("Change the document's unit"),
        [](const Work&) {
            return QStringList{tr("Inches"), tr("Millimetres")};
        },
        [](const Work& w, EditTarget) { return static_cast<int>(w.project.style.unit); },
        [](const Work&, const Project& p, EditTarget, int index) {
            LengthStyle style = p.style;
            style.unit = index == 0 ? Unit::Inch : Unit::Millimetre;
            return setStyle(p, style);
        }});
    return form;
}

PropertyForm* limitsForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Limits"));
    form->setToolTip(tr("What the findings judge by. The defaults are common practice without a "
                        "published source; test on scrap."));
    form->add(limitRow(tr("Least penetration"), &Limits::leastPenetration));
    form->add(limitRow(tr("Least tip cover"), &Limits::leastTipCover));
    form->add(limitRow(tr("Screw head to bottom"), &Limits::screwMargin));
    form->add(limitRow(tr("Least wall under a screw head"), &Limits::leastWallUnderHead));
    form->add(limitRow(tr("Least bearing round a screw's hole"), &Limits::leastHeadBearing));
    form->add(limitRow(tr("Least wood under a bolt head"), &Limits::leastWoodUnderHead));
    form->add(limitRow(tr("Room round a bolt head"), &Limits::headAllowance));
    form->add(limitRow(tr("Least gap between fronts"), &Limits::leastGap));
    form->add(limitRow(tr("Least opening"), &Limits::leastOpening));
    form->add(limitRow(tr("Wood between holes"), &Limits::holeToHole));
    form->add(limitRow(tr("Shadow of a filler strip"), &Limits::fillerShadow));
    form->add(limitRow(tr("Greatest bend of a filler strip"), &Limits::fillerBend));
    return form;
}

} // namespace frontwright
