<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), equation 4-5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: change = size × coefficient × change of moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13; the wider formula from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the maker decided</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the maker&apos;s limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no species &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose one that is there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no runner kind &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no hardware form &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no bolt &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no wood screw &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 = %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as given</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front + wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shortest stocked length from the least to the greatest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height of the bolt&apos;s head, so that it lies flush</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 + least engagement − bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − the counterbore that makes the bolt long enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grip + least engagement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grip + thread depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening − 2 × side clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening − clearance below − clearance above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front&apos;s thickness, as the front lies in the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the box wall is flush with the frame&apos;s face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>groove height + bottom&apos;s thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 − %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness, as no profile takes from the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>thickness − profile&apos;s depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening&apos;s right edge − its left edge, from the case&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening&apos;s top − its bottom, from the case&apos;s lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front&apos;s width − profile at the left − profile at the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front&apos;s height − profile at the bottom − profile at the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the opening&apos;s edge to the front&apos;s, where the least gap leaves room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half of what the gap leaves of the member: (member − gap) / 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − gap − overlay of the facing front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least distance to what the front faces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − overlay − overlay of the facing front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 + hole&apos;s offset from the handle&apos;s centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle&apos;s centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the front&apos;s width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front&apos;s width × %1 per cent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field&apos;s left edge + half its width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field&apos;s lower edge + half its height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the front&apos;s height + 1/%1 of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front&apos;s height − the given distance from its top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the front&apos;s height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 8: average ultimate load, side grain, specific gravity on volume at 12 % moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>National Design Specification (NDS): reference design value, side grain only, specific gravity on ovendry volume</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Architectural Woodwork Standards, 1st ed., 2009: 50 lbf (222 N) on a pull; shared by the statics of a stiff front on equal screws (common practice)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>15 700 (108.25 in N, mm) × G² × shank × thread in the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2850 (19.65 in N, mm) × G² × shank × thread in the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1; gauge and length lie outside the handbook&apos;s tests, so it is likely to be less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ultimate withdrawal / share of the pull test, at the worst screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>design value of withdrawal / share of the pull test, at the worst screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull test × (1 / screws + its part of the turning), at the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on one screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 on %2 screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade reference: the thread is two thirds of a wood screw&apos;s length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw + recess − wall, all of it thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the screw does not reach the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two thirds of the screw: its thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s left end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s bottom edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s left end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the catalogue&apos;s for the screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest drill to %1 % of the screw&apos;s root of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nearest drill to %1 % of the screw&apos;s root of %2; wood so light needs none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>National Design Specification (NDS), lead holes by ovendry specific gravity: above 0.60 90 %, above 0.50 70 % of the root; root: appendix L, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bolt − grip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bolt does not reach</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of the handle&apos;s thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one end − the other, from the case&apos;s lower left corner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − overlay − overlay, where the fronts are nearest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − overlay, where it is covered most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the fronts leave of the member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood&apos;s moisture when cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood&apos;s moisture at its driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood&apos;s moisture at its wettest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of fronts, boxes and frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of what the drawers hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosed storage of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reveal over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front width over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front height over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left overlay over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right overlay over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom overlay over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top overlay over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the left over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap at the right over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap below over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap above over the season</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Field height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box setback</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top of the bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least screw length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greatest screw length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw penetration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tip cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw hole from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw hole from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least hole height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Row of screws that holds the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Movement at the screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least clearance hole for the movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance drill for the movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread in the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety against the pull test, ultimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Safety against the pull test, design value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw to the front&apos;s edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw to the front&apos;s end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdrawal, ultimate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Withdrawal, design value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Share of the pull test</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle hole from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle hole from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least bolt length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greatest bolt length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counterbore depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood under the bolt&apos;s head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread in the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weight of the contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load on the runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runners&apos; rating over their load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enclosed storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop from the member&apos;s far edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop from the opening&apos;s edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest stocked length from the least to the greatest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall − recess + least penetration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall − recess + front behind the thinnest hole − least tip cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw + recess − wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front behind the hole − penetration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half the box&apos;s width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the given distance from the box&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least allowed distance from the box&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box&apos;s width − the given distance from its right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box&apos;s width − the least allowed distance from its right side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box&apos;s height − the given distance from its top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box&apos;s height − the least allowed distance from its top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the least allowed distance from the box&apos;s lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top of the bottom + radius of the recess tool, which is more than head radius + margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>top of the bottom + head radius + margin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for each 1 % of moisture, from %2 when cut to %3; beyond 6 to 14 % by the wider formula</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 for each 1 % of moisture, from %2 when cut to %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when cut + what edges have moved since, away from the row of screws that holds the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when cut + what edges have moved since, away from the front&apos;s middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when cut + what the fronts&apos; edges have moved since</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as read by a moisture meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(1800 / W) × (K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)), h = relative humidity; W, K, K1, K2 by temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in air of %1 and %2 % relative humidity: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width + change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>height + change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the lowest row, above the box&apos;s lower edge: it carries the front, so that all fronts of a bank go the same way</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the row nearest to the front&apos;s middle, from the box&apos;s left side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>distance from the row that holds the front × change: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shank + 2 × movement at the screws, which stand in their holes&apos; middles when cut; across the grain a slot of that length does the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the screw&apos;s clearance hole, or the next drill above the least hole for the movement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>member − overlay − overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the front&apos;s overlay at that side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 4, from memory: density at 12 % moisture = specific gravity × 1000 kg/m³ × 1.12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23), volume of a drawer: height less 1/8 in × inside width × inside depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>width × height × thickness × density; the edge profile is left on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two sides, two walls and the bottom × density, all as of the front&apos;s wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>15 lb for each square foot (718 Pa) of the bottom, inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ANSI/KCMA A161.1, drawer load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8.5 lb for each cubic foot of enclosed storage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>87 FR 72598 (superseded); the same density recalled for ASTM F2057-23, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>school and laboratory casework practice, drawer cycling load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is counted on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front + box + contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the runners&apos; rating / their load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rating as in the catalogue: check the runner&apos;s own sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(opening&apos;s top − bottom&apos;s top − 1/8 in) × inside width × inside depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawers: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fronts + boxes + face frame; sides, back and top of the case are not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of the contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sum of the drawers&apos; enclosed storage</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
