#include "core/boards/fasteners_text.h"
#include "core/edits/boards.h"
#include "ui/panels/spec_rows.h"

#include <QCoreApplication>

namespace frontwright {

namespace {

QString tr(const char* text) {
    return QCoreApplication::translate("frontwright", text);
}

/// Of an opening that is for something else, as a board is from the beginning.
const BoardSpec& boardOf(const Project& p, EditTarget t) {
    static const BoardSpec usual;
    const Opening* opening = t.opening ? findOpening(p, *t.opening) : nullptr;
    return opening && opening->board ? *opening->board : usual;
}
Result<Project> setBoardOf(const Project& p, EditTarget t, const BoardSpec& spec) {
    return setBoard(p, t.opening.value_or(OpeningId{}), spec);
}
const KeeperSpec& keeperOf(const Project& p, EditTarget t) {
    return boardOf(p, t).keeper;
}
Result<Project> setKeeper(const Project& p, EditTarget t, const KeeperSpec& keeper) {
    BoardSpec board = boardOf(p, t);
    board.keeper = keeper;
    return setBoardOf(p, t, board);
}

/// Furring, plays and settings are less than most cases' fraction.
void addFine(PropertyForm& form, PropertyForm::LengthRow row) {
    row.shown = PropertyForm::LengthRow::To::FinestFraction;
    form.add(std::move(row));
}

void addSizes(PropertyForm& form, const QString& name) {
    const auto row = [&](const QString& label, WrittenLength BoardSpec::*part) {
        addFine(form, specRow(label, name, part, boardOf, setBoardOf));
    };
    row(tr("Board thickness"), &BoardSpec::thickness);
    row(tr("Board depth"), &BoardSpec::depth);
    row(tr("Play at each side"), &BoardSpec::sidePlay);
    row(tr("Play in height"), &BoardSpec::playInHeight);
    row(tr("Side panel thickness"), &BoardSpec::sidePanel);
    form.add(PropertyForm::CheckRow{
        tr("Furring beside the board"), tr("Choose furring"),
        [](const Project& p, EditTarget t) { return boardOf(p, t).furred == Furred::Yes; },
        [](const Project& p, EditTarget t, bool isFurred) {
            BoardSpec board = boardOf(p, t);
            board.furred = isFurred ? Furred::Yes : Furred::No;
            return setBoardOf(p, t, board);
        }});
    row(tr("Furring behind the opening's edge"), &BoardSpec::workingAllowance);
    row(tr("Brad length"), &BoardSpec::bradLength);
    addFine(form, specRow(tr("Brad length at the right"), name, &BoardSpec::rightBradLength,
                          tr("as at the left"), boardOf, setBoardOf));
    row(tr("Brad set below the face"), &BoardSpec::bradSet);
    addFine(form, specRow(tr("Runner's top above the opening's edge"), name, &BoardSpec::runnerRise,
                          tr("board in the middle"), boardOf, setBoardOf));
    row(tr("Runner height"), &BoardSpec::runnerHeight);
}

void addRunnerWood(PropertyForm& form) {
    form.add(catalogueRow(
        tr("Wood of runners and keepers"), tr("Choose the runners' wood"), &Catalogue::species,
        [](const Project& p, EditTarget t) { return boardOf(p, t).runnerWood; },
        [](const Project& p, EditTarget t, const std::string& id) {
            BoardSpec board = boardOf(p, t);
            board.runnerWood = id;
            return setBoardOf(p, t, board);
        },
        tr("as the fronts")));
}

void addFasteners(PropertyForm& form) {
    form.add(PropertyForm::TextRow{
        tr("Fasteners to reach"), tr("Set the fasteners to reach"),
        [](const Project& p, EditTarget t) {
            return written(keeperOf(p, t).fasteners, p.style.unit);
        },
        [](const Project& p, EditTarget t, const std::string& typed) -> Result<Project> {
            const auto fasteners = parseFasteners(typed, p.style.unit);
            if (!fasteners.ok())
                return fasteners.error();
            KeeperSpec keeper = keeperOf(p, t);
            keeper.fasteners = fasteners.value();
            return setKeeper(p, t, keeper);
        },
        tr("e.g. L 4 in : 1 in; R 150 mm : 25 mm"),
        tr("L or R for the side, how far behind the frame's face, a colon, how wide it stays free; "
           "several with semicolons between")});
}

void addKeepers(PropertyForm& form, const QString& name) {
    const auto row = [&](const QString& label, WrittenLength KeeperSpec::*part) {
        addFine(form, specRow(label, name, part, keeperOf, setKeeper));
    };
    row(tr("Keeper width"), &KeeperSpec::width);
    row(tr("Keeper height"), &KeeperSpec::height);
    form.add(PropertyForm::ChoiceRow{
        tr("Keepers screwed on"), tr("Choose how keepers are screwed on"),
        [](const Work&) {
            return QStringList{tr("sideways to the panel"), tr("down to the furring")};
        },
        [](const Work& w, EditTarget t) {
            return static_cast<int>(keeperOf(w.project, t).fastening);
        },
        [](const Work&, const Project& p, EditTarget t, int index) {
            KeeperSpec keeper = keeperOf(p, t);
            keeper.fastening = index == 0 ? KeeperFastening::Sideways : KeeperFastening::Down;
            return setKeeper(p, t, keeper);
        }});
    form.add(catalogueRow(
        tr("Keeper screw"), tr("Choose the keepers' screw"), &Catalogue::woodScrews,
        [](const Project& p, EditTarget t) { return keeperOf(p, t).screw; },
        [](const Project& p, EditTarget t, const std::string& id) {
            KeeperSpec keeper = keeperOf(p, t);
            keeper.screw = id;
            return setKeeper(p, t, keeper);
        }));
    row(tr("Keeper screw length"), &KeeperSpec::screwLength);
    addFine(form,
            specRow(tr("Keeper screw length at the right"), name, &KeeperSpec::rightScrewLength,
                    tr("as at the left"), keeperOf, setKeeper));
    row(tr("Keeper screw's head sunk"), &KeeperSpec::screwRecess);
    row(tr("First screw from a piece's end"), &KeeperSpec::screwFromEnd);
    row(tr("Screw to screw at most"), &KeeperSpec::screwSpacing);
    addFasteners(form);
    row(tr("Free beyond a fastener's reach"), &KeeperSpec::allowance);
    row(tr("Shortest piece"), &KeeperSpec::leastPiece);
}

void addLoad(PropertyForm& form) {
    form.add(PropertyForm::TextRow{
        tr("Load at the front edge"), tr("Set the board's load"),
        [](const Project& p, EditTarget t) {
            const auto& load = boardOf(p, t).load;
            return load ? exact(*load) : std::string();
        },
        [](const Project& p, EditTarget t, const std::string& typed) -> Result<Project> {
            BoardSpec board = boardOf(p, t);
            board.load.reset();
            if (!typed.empty()) {
                const Result<Force> load = parseForce(typed);
                if (!load.ok())
                    return load.error();
                board.load = load.value();
            }
            return setBoardOf(p, t, board);
        },
        tr("e.g. 50 lbf or 220 N"), tr("What leans or lies on the edge, as a force")});
}

} // namespace

PropertyForm* boardForm(Session& session) {
    auto* form = new PropertyForm(session, tr("Pull-out board"));
    const QString name = tr("Change the board");
    form->add(specRow(tr("Pulled out by"), name, &BoardSpec::pullOut, tr("as far as is safe"),
                      boardOf, setBoardOf));
    form->add(specRow(tr("Pulled off its middle by"), name, &BoardSpec::pullOffCentre,
                      tr("at a corner"), boardOf, setBoardOf));
    addLoad(*form);
    addSizes(*form, name);
    addRunnerWood(*form);
    addKeepers(*form, tr("Change the keeper strips"));
    return form;
}

} // namespace frontwright
