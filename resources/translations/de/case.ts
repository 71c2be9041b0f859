<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>1 member</source>
        <translation>1 Rahmenteil</translation>
    </message>
    <message>
        <source>%1 members</source>
        <translation>%1 Rahmenteile</translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation>%1 und %2</translation>
    </message>
    <message>
        <source>1 fixed size</source>
        <translation>1 festes Maß</translation>
    </message>
    <message>
        <source>%1 fixed sizes</source>
        <translation>%1 feste Maße</translation>
    </message>
    <message>
        <source>a size or a share is not more than 0, or a member is negative</source>
        <translation>ein Maß oder Anteil ist nicht größer als 0, oder ein Rahmenteil ist negativ</translation>
    </message>
    <message>
        <source>give every opening a size over 0</source>
        <translation>jeder Öffnung ein Maß über 0 geben</translation>
    </message>
    <message>
        <source>%1 take %2 of %3</source>
        <translation>%2 von %3 gehen an %1</translation>
    </message>
    <message>
        <source>%1 is left over: %2</source>
        <translation>%1 bleiben übrig: %2</translation>
    </message>
    <message>
        <source>let one of the sizes be a share</source>
        <translation>eines der Maße einen Anteil sein lassen</translation>
    </message>
    <message>
        <source>%1 of room is missing: %2</source>
        <translation>es fehlen %1 Platz: %2</translation>
    </message>
    <message>
        <source>make the case larger or a size smaller</source>
        <translation>den Korpus größer oder ein Maß kleiner machen</translation>
    </message>
    <message>
        <source>rows</source>
        <translation>Zeilen</translation>
    </message>
    <message>
        <source>columns</source>
        <translation>Spalten</translation>
    </message>
    <message>
        <source>a divided face</source>
        <translation>eine geteilte Blende</translation>
    </message>
    <message>
        <source>its openings are not all for drawers, all for doors or all for fixed fronts</source>
        <translation>ihre Öffnungen sind nicht alle für Schubkästen, alle für Türen oder alle für feste Blenden</translation>
    </message>
    <message>
        <source>give them one use</source>
        <translation>ihnen eine gemeinsame Verwendung geben</translation>
    </message>
    <message>
        <source>divisions lie more than %1 deep</source>
        <translation>Teilungen sind mehr als %1-mal geschachtelt</translation>
    </message>
    <message>
        <source>%1 of row %2</source>
        <translation>%1 in Zeile %2</translation>
    </message>
    <message>
        <source>%1 of column %2</source>
        <translation>%1 in Spalte %2</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>a frame member is narrower than 0</source>
        <translation>ein Rahmenteil ist schmaler als 0</translation>
    </message>
    <message>
        <source>give it a width</source>
        <translation>ihm eine Breite geben</translation>
    </message>
    <message>
        <source>%1 of height is missing: the frame leaves nothing open</source>
        <translation>es fehlen %1 Höhe: der Rahmen lässt nichts offen</translation>
    </message>
    <message>
        <source>%1 of width is missing: the frame leaves nothing open</source>
        <translation>es fehlen %1 Breite: der Rahmen lässt nichts offen</translation>
    </message>
    <message>
        <source>make the case larger or its frame narrower</source>
        <translation>den Korpus größer oder seinen Rahmen schmaler machen</translation>
    </message>
    <message>
        <source>%1 of the case</source>
        <translation>%1 im Korpus</translation>
    </message>
</context>
</TS>
