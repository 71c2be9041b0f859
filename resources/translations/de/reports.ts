<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Nothing to heed.</source>
        <translation>Nichts zu beachten.</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>  %1</source>
        <translation>  %1</translation>
    </message>
    <message>
        <source>  Why: %1</source>
        <translation>  Warum: %1</translation>
    </message>
    <message>
        <source>  Rule: %1</source>
        <translation>  Regel: %1</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Spacer between %1 and %2</source>
        <translation>Distanzholz zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Filler strip between %1 and %2</source>
        <translation>Füllleiste zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Stop, %1 of %2</source>
        <translation>Anschlagholz, %1 an %2</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>%1 of %2</source>
        <translation>%1 von %2</translation>
    </message>
    <message>
        <source>screw hole %1</source>
        <translation>Schraubenbohrung %1</translation>
    </message>
    <message>
        <source>handle hole %1</source>
        <translation>Griffbohrung %1</translation>
    </message>
    <message>
        <source>fitting %1</source>
        <translation>Beschlag %1</translation>
    </message>
    <message>
        <source>screw row %1</source>
        <translation>Schraubenreihe %1</translation>
    </message>
    <message>
        <source>least</source>
        <translation>kleinste</translation>
    </message>
    <message>
        <source>greatest</source>
        <translation>größte</translation>
    </message>
</context>
</TS>
