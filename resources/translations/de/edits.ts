<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>the wood, the air and the sizes when cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set case width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set case height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all drawers and the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set member width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the parts that it runs between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the member&apos;s width and the overlays</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set opening width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set opening height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set front width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set front height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set front thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the opening and the side clearance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set box height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set box depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how the front fits and its thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the groove&apos;s height and the bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set screw length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wall, front, recess and the least penetration and cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw, recess, wall and front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move screw hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bottom and the recess tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the screws are</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set clearance hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set pilot hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw, recess and wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screws, wood and handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where the hole lies on the box wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front, wall and counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the grip and the handle&apos;s thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set bolt length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set counterbore depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bolt and the grip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wood and the sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the box and what it is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rule that places two handles on this front: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>follows from %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
