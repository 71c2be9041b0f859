<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>face frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>divider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reveal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spacer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawer box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>box wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knob</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre-to-centre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>backplate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mounting screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pilot hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clearance hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>access hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>countersink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>engagement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tip cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>story stick</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>setup block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>filler strip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pull-out board</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>furring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kerf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>board foot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat-sawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>quarter-sawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moisture content</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
