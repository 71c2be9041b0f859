<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>&quot;%1&quot; is not a weight</source>
        <translation>„%1“ ist kein Gewicht</translation>
    </message>
    <message>
        <source>write it like 25 lb, 11.3 kg or 500 g</source>
        <translation>es wie 25 lb, 11,3 kg oder 500 g schreiben</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is more than 100 000 kg</source>
        <translation>„%1“ ist mehr als 100 000 kg</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a force</source>
        <translation>„%1“ ist keine Kraft</translation>
    </message>
    <message>
        <source>write it like 50 lbf or 220 N</source>
        <translation>so schreiben: 50 lbf oder 220 N</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is more than 100 kN</source>
        <translation>„%1“ ist mehr als 100 kN</translation>
    </message>
</context>
</TS>
