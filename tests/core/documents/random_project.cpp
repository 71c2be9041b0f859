#include "random_project.h"

#include <algorithm>
#include <array>
#include <set>

namespace frontwright::testing {

WrittenLength RandomProject::length(std::int64_t least) {
    // What a document holds is always in a notation of its own.
    const Notation notation = static_cast<Notation>(1 + upTo(5));
    const std::int64_t n = least + upTo(4'000);
    switch (notation) {
    case Notation::OfDocument:
    case Notation::InchFraction:
    case Notation::FeetInches:
        return {Length::fromSixtyFourths(n), notation};
    case Notation::InchDecimal:
        return {Length::fromNanometres(n * 25'400), notation}; // 0.001 in
    case Notation::Millimetre:
    case Notation::Centimetre:
    case Notation::Metre:
        break;
    }
    return {Length::fromMicrometres(n * 37), notation};
}

std::string RandomProject::text() {
    static constexpr std::array<std::string_view, 8> pieces{"drawer",     " ",    "\"",   "\\",
                                                            "Größe 3/4″", "\n\t", "\x01", "木"};
    std::string result;
    for (std::int64_t n = upTo(4); n > 0; --n)
        result += pieces[static_cast<std::size_t>(upTo(7))];
    return result;
}

void RandomProject::addUnknowns(Unknowns& to, const std::string& path) {
    static constexpr std::array<std::string_view, 5> values{"1.50", "\"a \\u00fc b\"",
                                                            "[1,[2,{\"x\":null}],\"y\"]",
                                                            "{\"inner\":{\"deep\":[true]}}", "{}"};
    if (!chance(30))
        return;
    to.emplace_back(path + "future", values[static_cast<std::size_t>(upTo(4))]);
    to.emplace_back(path + "a~1b~0 \"ü\"", values[static_cast<std::size_t>(upTo(4))]);
}

PerSide<WrittenLength> RandomProject::lengthsPerSide() {
    return chance(30) ? PerSide<WrittenLength>::all(length())
                      : PerSide<WrittenLength>{length(), length(), length(), length()};
}

FrontFit RandomProject::frontFit() {
    return chance(30) ? FrontFit::all(sideFit())
                      : FrontFit{sideFit(), sideFit(), sideFit(), sideFit()};
}

Profile RandomProject::profile() {
    Profile p{anyOf(ProfileFamily::Cove), length(), length(), {}, PerSide<bool>::all(true)};
    if (p.family == ProfileFamily::Raised || chance(50))
        p.step = p.depth;
    for (const Side side : allSides)
        p.sides[side] = chance(70);
    return p;
}

BoxSpec RandomProject::box() {
    BoxSpec b;
    b.runner = text();
    for (auto* optional : {&b.sideClearance, &b.clearanceBelow, &b.clearanceAbove, &b.height})
        maybe(*optional, [this] { return length(); });
    for (auto* given :
         {&b.depth, &b.wallThickness, &b.sideThickness, &b.grooveHeight, &b.bottomThickness})
        *given = length();
    b.purpose = anyOf(DrawerPurpose::Empty);
    maybe(b.load, [this] { return mass(); });
    b.depthRule = anyOf(BoxDepthRule::AsRunner);
    for (auto* optional : {&b.runnerLength, &b.toCaseSide})
        maybe(*optional, [this] { return length(); });
    if (chance(50))
        b.wood = text();
    return b;
}

MountingSpec RandomProject::mounting() {
    MountingSpec m;
    m.screw = text();
    m.recess = length();
    m.toolDiameter = length();
    m.pattern = anyOf(ScrewPattern::ByHand);
    for (auto* optional :
         {&m.length, &m.fromSides, &m.fromBottom, &m.fromTop, &m.pilotHole, &m.clearanceHole})
        maybe(*optional, [this] { return length(); });
    for (std::int64_t n = upTo(3); n > 0; --n)
        m.placed.push_back(point<WallFrame>());
    return m;
}

HardwareSpec RandomProject::hardware() {
    HardwareSpec h;
    h.form = text();
    h.placing = anyOf(Placing::OpticalCentre);
    if (h.placing == Placing::FromTop || chance(50))
        h.distance = length();
    h.opticalPart = 2 + upTo(60);
    h.twoAtPercent = 1 + upTo(49);
    h.way = anyOf(MountingWay::FrontAccessHole);
    for (auto* optional :
         {&h.twoPast, &h.boltLength, &h.counterbore, &h.counterboreDiameter, &h.accessDiameter})
        maybe(*optional, [this] { return length(); });
    maybe(h.placedAt, [this] { return point<FrontFrame>(); });
    maybe(h.threePast, [this] { return length(); });
    for (std::int64_t n = upTo(2); n > 0; --n) {
        FittingSpec& fitting = h.fittings.emplace_back();
        fitting.form = text();
        fitting.across = anyOf(FittingAcross::BothSides);
        fitting.upright = anyOf(FittingUpright::FromBottom);
        fitting.fromSide = length();
        fitting.fromEdge = length();
        maybe(fitting.screwLength, [this] { return length(); });
    }
    return h;
}

BoardSpec RandomProject::board() {
    BoardSpec b;
    b.thickness = positive();
    b.depth = positive();
    for (auto* given : {&b.sidePanel, &b.sidePlay, &b.playInHeight, &b.workingAllowance,
                        &b.runnerHeight, &b.bradLength, &b.bradSet})
        if (chance(50))
            *given = length();
    b.furred = anyOf(Furred::No);
    for (auto* optional : {&b.runnerRise, &b.pullOut, &b.pullOffCentre, &b.rightBradLength})
        maybe(*optional, [this] { return length(); });
    maybe(b.load, [this] { return Force::fromMicronewtons(upTo(999'999'999)); });
    b.runnerWood = text();
    KeeperSpec& k = b.keeper;
    for (auto* given : {&k.width, &k.height, &k.allowance, &k.leastPiece, &k.screwFromEnd,
                        &k.screwLength, &k.screwRecess})
        if (chance(50))
            *given = length();
    maybe(k.rightScrewLength, [this] { return length(); });
    k.screwSpacing = positive();
    k.fastening = anyOf(KeeperFastening::Down);
    k.screw = text();
    for (std::int64_t n = upTo(3); n > 0; --n)
        k.fasteners.push_back({anyOf(Side::Right), length(), length()});
    return b;
}

Presets RandomProject::presets() {
    Presets p;
    for (std::int64_t n = upTo(2); n > 0; --n) {
        p.hardware.push_back({"handle " + std::to_string(n) + text(), hardware(), {}});
        p.profile.push_back({"\"edge\" " + std::to_string(n), profile(), {}});
        p.box.push_back({"Kiste/" + std::to_string(n), box(), {}});
        p.mounting.push_back({"screws " + std::to_string(n), mounting(), {}});
        addUnknowns(p.hardware.back().unknowns);
    }
    addUnknowns(p.unknowns);
    return p;
}

FrontChoices RandomProject::choices(Unknowns& unknowns) {
    FrontChoices c;
    for (const Side side : allSides)
        maybe(c.fit[side], [this] { return sideFit(); });
    maybe(c.thickness, [this] { return length(); });
    maybe(c.stock, [this] { return stockOfFronts(); });
    maybe(c.profile, [this] { return profile(); });
    maybe(c.box, [this] { return box(); });
    maybe(c.mounting, [this] { return mounting(); });
    maybe(c.hardware, [this] { return hardware(); });
    for (const PresetKind kind : allPresetKinds)
        withPlaces(kind, [&](auto places) {
            if (auto& own = c.*places.ofOpening)
                setPresetName(c, kind, nameFor(m_presets.*places.list, *own));
        });
    if (!(c.fit == FrontChoices{}.fit))
        addUnknowns(unknowns, "fit/");
    if (c.profile)
        addUnknowns(unknowns, "profile/");
    if (c.hardware)
        addUnknowns(unknowns, "hardware/");
    return c;
}

std::vector<Length> RandomProject::stock() {
    std::set<Length> lengths;
    for (std::int64_t n = upTo(5); n > 0; --n)
        lengths.insert(plain());
    return {lengths.begin(), lengths.end()};
}

RunnerKind RandomProject::runnerKind(std::string id) {
    RunnerKind kind{std::move(id),
                    text(),
                    plain(),
                    plain(),
                    plain(),
                    source(),
                    chance(50) ? std::optional(mass()) : std::nullopt};
    kind.form = anyOf(RunnerForm::Centre);
    kind.lengths = stock();
    for (auto* optional : {&kind.setback, &kind.forSides, &kind.tolerance, &kind.guideHeight})
        maybe(*optional, [this] { return plain(); });
    if (chance(70))
        kind.section = {plain(), plain()};
    if (chance(70))
        kind.top = plain();
    for (auto* optional : {&kind.backNotch, &kind.wallNotch, &kind.clearZone, &kind.kicker})
        maybe(*optional, [this] { return UprightSize{plain(), plain()}; });
    return kind;
}

FittingForm RandomProject::fitting(const std::string& id) {
    FittingForm f;
    f.id = id;
    f.name = text();
    f.kind = anyOf(FittingKind::Lock);
    f.bearsOn = anyOf(FrontFace::TopEdge);
    f.footprint = {anyOf(FootprintShape::Rectangle), plain(), plain()};
    f.projection = plain();
    f.plate = plain();
    f.screw = text();
    f.screws = {point<FrontFrame>()};
    f.bores = {{point<FrontFrame>(), plain(), chance(50) ? std::optional(plain()) : std::nullopt,
                anyOf(FrontFace::TopEdge)}};
    const FrontPoint low = point<FrontFrame>();
    f.mortises = {
        {anyOf(FrontFace::TopEdge), {low.x, low.y, low.x + plain(), low.y + plain()}, plain()}};
    maybe(f.belowTop, [this] { return plain(); });
    f.source = source();
    return f;
}

Catalogue RandomProject::catalogue(Unknowns& unknowns) {
    Catalogue c;
    for (std::int64_t n = upTo(2); n > 0; --n) {
        const std::string id = "own/screw " + std::to_string(n);
        c.woodScrews.push_back({id, text(), plain(), plain(), plain(), plain(), plain(), stock(),
                                source(), chance(50) ? std::optional(plain()) : std::nullopt});
        addUnknowns(unknowns, "own/woodScrews/own~1screw " + std::to_string(n) + "/source/");
        addUnknowns(unknowns, "own/woodScrews/own~1screw " + std::to_string(n) + "/");
    }
    for (std::int64_t n = upTo(2); n > 0; --n)
        c.bolts.push_back({"bolt" + std::to_string(n), text(), text(), plain(), plain(), plain(),
                           plain(), stock(), source()});
    for (std::int64_t n = upTo(2); n > 0; --n)
        c.hardware.push_back({"handle" + std::to_string(n),
                              text(),
                              anyOf(HardwareKind::RingPull),
                              {point<FrontFrame>(), point<FrontFrame>()},
                              {anyOf(FootprintShape::Rectangle), plain(), plain()},
                              plain(),
                              text(),
                              plain(),
                              plain(),
                              chance(50) ? std::optional(plain()) : std::nullopt,
                              source()});
    for (std::int64_t n = upTo(2); n > 0; --n)
        c.runners.push_back(runnerKind("runner" + std::to_string(n)));
    for (std::int64_t n = upTo(2); n > 0; --n)
        c.species.push_back(
            {"wood" + std::to_string(n), text(), anyOf(WoodKind::Softwood),
             chance(50)
                 ? std::optional(SpecificGravity{50 + upTo(1450), anyOf(GravityBasis::Green)})
                 : std::nullopt,
             chance(50)
                 ? std::optional(WoodTone{
                       static_cast<std::int32_t>(upTo(255)), static_cast<std::int32_t>(upTo(255)),
                       static_cast<std::int32_t>(upTo(255)), static_cast<std::int32_t>(upTo(100))})
                 : std::nullopt,

             text(), woodFigures(), text()});
    for (std::int64_t n = upTo(2); n > 0; --n) {
        const Air range = air();
        c.airs.push_back({"air" + std::to_string(n), text(), range.whenCut, range.driest,
                          range.wettest, source()});
    }
    for (std::int64_t n = upTo(2); n > 0; --n) {
        c.fittings.push_back(fitting("fitting" + std::to_string(n)));
        addUnknowns(unknowns, "own/fittings/fitting" + std::to_string(n) + "/bores/0/");
    }
    addUnknowns(unknowns, "own/");
    return c;
}

FrontDefaults RandomProject::fronts() {
    FrontDefaults f{frontFit(), length(), stockOfFronts(), profile(), box(), mounting(), hardware(),
                    {},         {}};
    for (const PresetKind kind : allPresetKinds)
        withPlaces(kind, [&](auto places) {
            f.presets[kind] = nameFor(m_presets.*places.list, f.*places.ofCase);
        });
    addUnknowns(f.unknowns, "fit/");
    addUnknowns(f.unknowns, "box/");
    addUnknowns(f.unknowns, "mounting/");
    addUnknowns(f.unknowns);
    return f;
}

SizeRule RandomProject::rule() {
    switch (upTo(2)) {
    case 0:
        return FixedSize{length()};
    case 1:
        return Share{1 + upTo(1000)};
    default:
        return GraduatedPlace{};
    }
}

RegionPtr RandomProject::region(int depth) {
    if (depth == 0 || chance(30)) {
        Opening opening;
        opening.id = {m_nextId++};
        opening.name = text();
        opening.use = anyOf(OpeningUse::Board);
        if (opening.use == OpeningUse::Board) {
            opening.board = board();
            addUnknowns(opening.unknowns, "board/keeper/");
            addUnknowns(opening.unknowns, "board/");
        }
        opening.choices = choices(opening.unknowns);
        opening.hinge = anyOf(HingeSide::Right);
        addUnknowns(opening.unknowns);
        return std::make_shared<Region>(Region{opening});
    }
    Split split;
    split.direction = anyOf(Direction::Rows);
    split.divides = anyOf(Divides::Face);
    const auto count = static_cast<std::size_t>(2 + upTo(2));
    for (std::size_t i = 0; i < count; ++i) {
        const SizeRule size = rule();
        split.children.push_back({size, region(depth - 1)});
        if (i + 1 < count)
            split.members.push_back({{m_nextId++}, length()});
    }
    split.graduation = chance(50) ? Graduation(ArithmeticRun{length()})
                                  : Graduation(GeometricRun{10'000 + upTo(99'990'000)});
    split.remainderChild = static_cast<std::size_t>(upTo(static_cast<std::int64_t>(count) - 1));
    addUnknowns(split.unknowns, "graduation/");
    addUnknowns(split.unknowns);
    return std::make_shared<Region>(Region{split});
}

Surround RandomProject::surround(Side side) {
    const auto kinds = kindsAt(side);
    const auto last = static_cast<std::int64_t>(kinds.size()) - 1;
    Surround any = surroundOf(kinds[static_cast<std::size_t>(upTo(last))]);
    for (const SurroundMeasure measure : allSurroundMeasures)
        if (WrittenLength* l = lengthOf(any, measure))
            *l = length();
    return any;
}

SystemHoles RandomProject::systemHoles() {
    SystemHoles holes;
    holes.datum = anyOf(HoleDatum::InsideBottom);
    holes.first = length();
    holes.pitch = positive();
    if (holes.pitch.length < Length::millimetres(1))
        holes.pitch = {Length::millimetres(1), Notation::Millimetre};
    holes.setback = length();
    if (chance(50))
        holes.rear = length();
    holes.diameter = positive();
    if (!isPossiblePitch(holes))
        holes.diameter = {holes.pitch.length.half(), Notation::Millimetre};
    return holes;
}

Case RandomProject::casework() {
    Case c;
    c.width = positive();
    c.height = positive();
    c.depth = length();
    c.frame = lengthsPerSide();
    c.frameThickness = length();
    c.construction = anyOf(Construction::Frameless);
    for (const Side side : allSides)
        c.surroundings[side] = surround(side);
    if (chance(50))
        c.systemHoles = systemHoles();
    c.grid = positive();
    c.divisions = region(3);
    addUnknowns(c.unknowns, "frame/");
    addUnknowns(c.unknowns);
    return c;
}

Limits RandomProject::limits() {
    Limits l;
    for (auto* limit :
         {&l.leastPenetration, &l.leastTipCover, &l.screwMargin, &l.leastWallUnderHead,
          &l.leastWoodUnderHead, &l.headAllowance, &l.leastGap, &l.leastOpening, &l.holeToHole,
          &l.unevenGaps, &l.leastHeadBearing, &l.fillerShadow, &l.fillerBend})
        *limit = length();
    return l;
}

Project RandomProject::project() {
    static constexpr std::array<int, 4> denominators{8, 16, 32, 64};
    Project p;
    p.title = text();
    p.note = text();
    p.style = {anyOf(Unit::Millimetre), denominators[static_cast<std::size_t>(upTo(3))]};
    p.presets = m_presets = presets();
    p.casework = casework();
    p.fronts = fronts();
    if (chance(50)) {
        p.air = air();
        addUnknowns(p.unknowns, "air/driest/");
    }
    p.limits = limits();
    addUnknowns(p.unknowns, "limits/");
    p.own = catalogue(p.unknowns);
    addUnknowns(p.unknowns);
    p.nextId = m_nextId;
    return p;
}

} // namespace frontwright::testing
