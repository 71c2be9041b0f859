<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Would ruin a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Will not work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outside good practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To know</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fronts %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1, screw hole %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1, handle hole %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front that this was about is no longer in the case.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than 1/64 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>less than 0.1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>= %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolt is %1 too short: %2 bolt, %3 of wood to go through, at least %4 to hold in the handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least length = grip + least engagement %1 + %2 %3; the bolt is %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolt bottoms out, %1 too long: %2 bolt, %3 of wood to go through, thread %4 deep; a shorter bolt or %1 of washers under its head cures it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greatest length = grip + thread depth %1 + %2 %3; the bolt is %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stocked bolt fits: it has to be from %1 to %2 long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least = grip + least engagement %1 + %2 %3; greatest = grip + thread depth %1 + %4 %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The counterbore leaves only %1 of wood under the bolt&apos;s head, less than %2: %3 deep in %4 of wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The counterbore goes right through: %1 deep in %2 of wood.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood under the head = wood − counterbore %1 − %2 %3; at least %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the left edge profile and would rock: base %2, field %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the right edge profile and would rock: base %2, field %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the bottom edge profile and would rock: base %2, field %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the top edge profile and would rock: base %2, field %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the field&apos;s left edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the field&apos;s right edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the field&apos;s bottom edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the field&apos;s top edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s left edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s right edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s bottom edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s top edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s left edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s right edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s bottom edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s top edge: base %2, front %3 that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the front&apos;s left edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the front&apos;s right edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the front&apos;s bottom edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the front&apos;s top edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the box&apos;s left side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the box&apos;s right side.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 past the wall&apos;s top edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the free part of the wall = hole / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front&apos;s two handles overlap by %1: their centres are only %2 apart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance of centres = width of a handle&apos;s base %1; they are %2 apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no room for a drawer box: it would be %1 wide, %2 high and %3 deep, with sides %4 thick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width = opening − 2 × side clearance %1; between the sides %2 − 2 × %3 %4; height = opening − clearances %5; each must be more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawer box is %1 too tall: %2, and the opening leaves %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room = opening − clearance below − clearance above %1 − %2 − %3 %4; the box is %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawer box is %1 too deep: %2, and the case leaves %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>room = frame + case inside − setback %1 + %2 − %3 %4; the box is %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bottom does not lie in the box wall: it reaches from %1 to %2 above the box&apos;s lower edge, and the wall is %3 high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top of the bottom = groove height + its thickness %1 + %2 %3; it must be 0 or more, and less than %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case is %1 tall (%2 without sides, back and top, %3 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case is %1 tall (weight not known, %2 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case is heavy (%1 without sides, back and top, %2 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case is heavy (weight not known, %1 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clothing storage is in the published scope from %1 tall, %2 and %3 on, all three at once; here height %4, %5 without sides, back and top, storage %6; nothing has been tested here, and local codes decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clothing storage is in the published scope from %1 tall, %2 and %3 on, all three at once; here height %4, weight not known, storage %5; nothing has been tested here, and local codes decide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23), scope</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap = member − overlay − overlay %1 − %2 − %3 %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fronts touch: there is no gap between them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap between the fronts is only %1, less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s left edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s right edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s bottom edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s top edge.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap at the left is only %1, less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap at the right is only %1, less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap at the bottom is only %1, less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gap at the top is only %1, less than %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fronts overlap on a part %1 wide and %2 high: they cannot both close.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common part of the two fronts %1 × %2; there must be none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gaps down bank %1 differ by %2: %3 here, %4 at the widest; their rails are alike, so an overlay is not.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The gaps down bank %1 differ by %2: %3 here, %4 at the widest; the rail is %5 at the one and %6 at the other.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference = widest − narrowest gap %1 − %2 %3; here %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the left.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the bottom.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>past the case = overlay − from the opening to the case&apos;s edge %1 − %2 %3; it should be 0 or less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s left edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s right edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s bottom edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s top edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s left edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s right edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s bottom edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s top edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overlay %1; an overlay front needs more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front has no size: %1 × %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front = opening + overlays (− gaps) %1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge profiles meet: nothing flat is left of a front %1 × %2 with a profile %3 wide.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field = front − profile at both sides: %1 − 2 × %2 %3 wide, %4 − 2 × %2 %5 high, where all four carry it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The edge profile leaves no edge: it is %1 deep in a front %2 thick.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge = thickness − profile&apos;s depth %1 − %2 %3; it must be more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>National Design Specification (NDS) commentary, least distances of wood screws, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>National Design Specification (NDS), lead holes for withdrawal by ovendry specific gravity; the older rule of NDS and Wood Handbook by hardwood and softwood; root diameters of NDS appendix L, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>withdrawal: Wood Handbook, chapter 8 (ultimate), NDS (design value, about a fifth); pull: Architectural Woodwork Standards 2009, 50 lbf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mounting screws would be drawn out when the handle is pulled with %1: of that, %2 falls to this screw, which holds %3 at the most and %4 to design with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The mounting screws hold less than they should for a pull of %1 at the handle: of that, %2 falls to this screw, which holds %3 at the most and %4 to design with.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>safety = withdrawal / share of the pull = %1 / %2 = %3 ultimate, %4 / %2 = %5 by design value; at least 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s left end, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s right end, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s bottom edge, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s top edge, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s left edge, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s right edge, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s bottom end, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s top end, less than %2: it may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance to the end, along the grain = %1 × the shank of %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance to the edge, across the grain = %1 × the shank of %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two screws stand %1 apart in one row along the grain, less than %2: they may split the front.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least spacing along the grain = %1 × the shank of %2 %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No pilot hole is drilled, and the wood (%1) is dense enough to need one of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>specific gravity, ovendry, %1 &gt; 0.50; from %2 to %3 at a root of %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pilot hole of %1 leaves the screw&apos;s thread too little to hold in: at most %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pilot hole of %1 is too small for wood so dense: at least %2, or the screw may break or split it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from %1 to %2 at a root of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at most the root, %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The clearance hole of %1 is smaller than the screw&apos;s shank of %2: the thread holds in the wall and does not draw the front up.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance hole %1; at least %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bolt&apos;s hole of %1 is smaller than its thread of %2: it does not go through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hole %1; at least %2 (ISO 273 and ASME B18.2.8 give more)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 of thread is in the handle, less than the bolt&apos;s diameter of %2: %3 bolt, %4 of wood to go through.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engagement = bolt − grip %1 − %2 %3; at least one diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>machine design practice, from memory: one diameter of thread in steel, more in softer metal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The drawer loads its runners with %1, more than the %2 that they are rated for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load = front + box + contents = %1 + %2 + %3 = %4; at most %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rating as in the catalogue: check the runner&apos;s own sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front lies in the opening (%1) and on the frame (%2) at once: with a flat back it can do only one of them, unless it is rabbeted.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an inset side lies %1, the front&apos;s thickness, behind the frame&apos;s face; an overlay side lies on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw hole goes %1 into the bottom: hole %2 above the box&apos;s lower edge, bottom&apos;s top %3, radius of the head %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw hole stays only %1 clear of the bottom, less than %2: hole %3 above the box&apos;s lower edge, bottom&apos;s top %4, radius of the head %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least height = bottom&apos;s top + head&apos;s radius + margin %1 + %2 + %3 %4; the hole is at %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hole clears the bottom, but the tool for its recess meets it by %1: hole %2 above the box&apos;s lower edge, bottom&apos;s top %3, radius of the tool %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least height = bottom&apos;s top + tool&apos;s radius %1 + %2 %3; the hole is at %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tool for the screw&apos;s recess meets the box&apos;s left side by %1: hole %2 from it, side %3 thick, radius of the tool %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tool for the screw&apos;s recess meets the box&apos;s right side by %1: hole %2 from it, side %3 thick, radius of the tool %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance = side + tool&apos;s radius %1 + %2 %3; the hole is at %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw&apos;s head breaks out of the wall&apos;s top edge by %1: its centre is %2 below it; %3 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw hole is too near the wall&apos;s top edge: its centre is %1 below it; %2 is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance = the larger of tool&apos;s radius and head&apos;s radius + margin %1; the hole is at %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw hole runs %1 into what is drilled for handle hole %2: %3 from centre to centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw hole runs %1 into what is drilled for a handle hole: %2 from centre to centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 of wood is left between the screw hole and what is drilled for handle hole %2, less than %3: %4 from centre to centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 of wood is left between the screw hole and what is drilled for a handle hole, less than %2: %3 from centre to centre.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance = both radii + wood between %1 + %2 %3; the holes are %4 apart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no front behind the screw hole: the box wall reaches past it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The front is only %1 thick behind the screw hole; a screw needs %2 there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least thickness = least penetration + least tip cover %1 + %2 %3; behind the hole it is %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A part of the runner is in the way of the screw hole at %1 across and %2 up the box wall.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hole, at %1 and %2 from the wall&apos;s lower left corner, lies under the runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 screw, %2 wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 screw, set %2 deep, %3 wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip cover = front behind the hole − (screw + recess − wall) %1 − (%2 + %3 − %4) %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw comes %1 through the show face: %2, %3 front behind the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw&apos;s tip is level with the show face: %1, %2 front behind the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; it must be more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 of wood is left before the screw&apos;s tip, less than %2: %3, %4 front behind the hole.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw goes only %1 into the front, less than %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The screw does not reach the front: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>penetration = screw + recess − wall %1 + %2 − %3 %4; at least %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long. The nearest are %3 and %4.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long. The nearest is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least = wall − recess + least penetration %1 − %2 + %3 %4; greatest = wall − recess + front − least tip cover %1 − %2 + %5 − %6 %7</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No screw can fit: it has to be at least %1 long to hold and at most %2 not to come too near the show face.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only %1 of wall is left under the screw&apos;s head, less than %2: %3 wall, %4 recess, head %5 high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The recess leaves no wall under the screw&apos;s head: %1 wall, %2 recess, head %3 high.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall under the head = wall − recess − head %1 − %2 − %3 %4; at least %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A solid front moves: between screw rows %1 apart by about %2 from dry air to damp, and the clearance holes give only %3; drill one row %4 or make its holes slots, up and down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>movement ≈ rows apart / %1 %2 / %1 %3 (1/8 in for each foot across the grain, grain running from left to right); play = clearance hole − shank %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: change = size × coefficient × change of moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood cut at %1 moisture goes from %2 to %3 in this room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gap at the wettest = gap when cut − movement %1 − %2 %3; %4; at least %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the fronts touch: their gap of %1 when cut closes, and %2 is missing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the fronts touch: their gap of %1 when cut closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap between the fronts is only %1, less than %2; when cut it is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the left is only %1, less than %2; when cut it is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the right is only %1, less than %2; when cut it is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the bottom is only %1, less than %2; when cut it is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the top is only %1, less than %2; when cut it is %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s left edge: its gap of %1 when cut closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s right edge: its gap of %1 when cut closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s bottom edge: its gap of %1 when cut closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s top edge: its gap of %1 when cut closes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s left edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s right edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s bottom edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s top edge and does not cover it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s left edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s right edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s bottom edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s top edge, which it should cover.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overlay at the driest = overlay when cut − movement %1 − %2 %3; %4; it needs more than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Over the year the gaps down bank %1 come to differ by %2, which an eye sees: %3 here, %4 at the widest. Fronts of different heights move differently.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference = widest − narrowest gap %1 − %2 %3, when cut %4; at most %5; %6</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screws that do not hold the front need room: over the year it moves %1 at them, and the clearance holes leave %2. Let the column of screws nearest to the middle hold; drill the others %3, or make slots of that length, left to right.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screws that do not hold the front need room: over the year it moves %1 at them, and the clearance holes leave %2. Let the lowest row of screws hold; drill the others %3, or make slots of that length, up and down.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance hole ≥ shank + 2 × movement %1 + 2 × %2 %3; it is %4; %5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood&apos;s moisture leaves the range of 6 to 14 % for which its coefficient of movement is stated: %1. What lies beyond is worked out by a wider formula.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change = size × (M2 − M1) / (1 / C − 10 + M1) beyond 6 to 14 %, which is size × C × (M2 − M1) at 10 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13; the wider formula from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No wood is chosen, so its movement over the year cannot be told; the front is taken to stay as it was cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is known of how &quot;%1&quot; shrinks and swells, so its movement over the year cannot be told; the front is taken to stay as it was cut.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give the wood&apos;s coefficients per 1 % of moisture or its shrinkage from green to ovendry, or choose stock that does not move</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
