<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Nothing to heed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Why: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>  Rule: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stile %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spacer between %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop, %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw hole %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle hole %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screw row %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>least</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greatest</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
