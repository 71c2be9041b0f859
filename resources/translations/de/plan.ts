<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>front %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2</source>
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
</context>
</TS>
