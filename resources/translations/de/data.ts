<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>10-24 pan head</source>
        <translation>10-24 Flachkopf</translation>
    </message>
    <message>
        <source>3.5 mm countersunk wood screw</source>
        <translation>Senkkopf-Holzschraube 3,5 mm</translation>
    </message>
    <message>
        <source>4 mm countersunk wood screw</source>
        <translation>Senkkopf-Holzschraube 4 mm</translation>
    </message>
    <message>
        <source>4.5 mm countersunk wood screw</source>
        <translation>Senkkopf-Holzschraube 4,5 mm</translation>
    </message>
    <message>
        <source>6-32 pan head</source>
        <translation>6-32 Flachkopf</translation>
    </message>
    <message>
        <source>8-32 pan head</source>
        <translation>8-32 Flachkopf</translation>
    </message>
    <message>
        <source>8-32 truss head</source>
        <translation>8-32 Flachrundkopf</translation>
    </message>
    <message>
        <source>American basswood</source>
        <translation>Amerikanische Linde</translation>
    </message>
    <message>
        <source>American beech</source>
        <translation>Amerikanische Buche</translation>
    </message>
    <message>
        <source>Black cherry</source>
        <translation>Amerikanische Kirsche</translation>
    </message>
    <message>
        <source>Black walnut</source>
        <translation>Amerikanischer Nussbaum</translation>
    </message>
    <message>
        <source>Butternut</source>
        <translation>Butternuss</translation>
    </message>
    <message>
        <source>Centre runner</source>
        <translation>Mittelführung</translation>
    </message>
    <message>
        <source>Coast Douglas-fir</source>
        <translation>Douglasie (Küste)</translation>
    </message>
    <message>
        <source>Cup pull, 3 in between centres</source>
        <translation>Muschelgriff, Lochabstand 3 in</translation>
    </message>
    <message>
        <source>Cup pull, 64 mm between centres</source>
        <translation>Muschelgriff, Lochabstand 64 mm</translation>
    </message>
    <message>
        <source>Eastern white pine</source>
        <translation>Weymouthskiefer</translation>
    </message>
    <message>
        <source>Heated home in mid-Sweden</source>
        <translation>Geheizte Wohnung in Mittelschweden</translation>
    </message>
    <message>
        <source>Indoors, damp southern coast of the United States</source>
        <translation>Innenraum, feuchte Südküste der USA</translation>
    </message>
    <message>
        <source>Indoors, dry southwest of the United States</source>
        <translation>Innenraum, trockener Südwesten der USA</translation>
    </message>
    <message>
        <source>Indoors, most of the United States</source>
        <translation>Innenraum, größter Teil der USA</translation>
    </message>
    <message>
        <source>M3 pan head</source>
        <translation>M3 Flachkopf</translation>
    </message>
    <message>
        <source>M4 pan head</source>
        <translation>M4 Flachkopf</translation>
    </message>
    <message>
        <source>M5 pan head</source>
        <translation>M5 Flachkopf</translation>
    </message>
    <message>
        <source>No. 10 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 10</translation>
    </message>
    <message>
        <source>No. 12 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 12</translation>
    </message>
    <message>
        <source>No. 4 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 4</translation>
    </message>
    <message>
        <source>No. 6 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 6</translation>
    </message>
    <message>
        <source>No. 8 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 8</translation>
    </message>
    <message>
        <source>Northern red oak</source>
        <translation>Roteiche</translation>
    </message>
    <message>
        <source>Ponderosa pine</source>
        <translation>Gelbkiefer</translation>
    </message>
    <message>
        <source>Pull, 128 mm between centres</source>
        <translation>Bügelgriff, Lochabstand 128 mm</translation>
    </message>
    <message>
        <source>Pull, 160 mm between centres</source>
        <translation>Bügelgriff, Lochabstand 160 mm</translation>
    </message>
    <message>
        <source>Pull, 3 in between centres</source>
        <translation>Bügelgriff, Lochabstand 3 in</translation>
    </message>
    <message>
        <source>Pull, 4 in between centres</source>
        <translation>Bügelgriff, Lochabstand 4 in</translation>
    </message>
    <message>
        <source>Pull, 96 mm between centres</source>
        <translation>Bügelgriff, Lochabstand 96 mm</translation>
    </message>
    <message>
        <source>Quaking aspen</source>
        <translation>Amerikanische Espe</translation>
    </message>
    <message>
        <source>Red alder</source>
        <translation>Roterle</translation>
    </message>
    <message>
        <source>Red maple (soft)</source>
        <translation>Rotahorn (weich)</translation>
    </message>
    <message>
        <source>Ring pull on a 50 mm backplate</source>
        <translation>Ringgriff auf Griffunterlage 50 mm</translation>
    </message>
    <message>
        <source>Round knob on a 1 1/2 in backplate</source>
        <translation>Runder Knopf auf Griffunterlage 1 1/2 in</translation>
    </message>
    <message>
        <source>Round knob, 1 1/4 in</source>
        <translation>Runder Knopf, 1 1/4 in</translation>
    </message>
    <message>
        <source>Round knob, 32 mm</source>
        <translation>Runder Knopf, 32 mm</translation>
    </message>
    <message>
        <source>Side-mounted metal runners</source>
        <translation>Seitliche Metallführungen</translation>
    </message>
    <message>
        <source>Silver maple (soft)</source>
        <translation>Silberahorn (weich)</translation>
    </message>
    <message>
        <source>Sugar maple (hard)</source>
        <translation>Zuckerahorn (hart)</translation>
    </message>
    <message>
        <source>Sweet birch</source>
        <translation>Zuckerbirke</translation>
    </message>
    <message>
        <source>Sweetgum</source>
        <translation>Amerikanischer Amberbaum</translation>
    </message>
    <message>
        <source>Teak</source>
        <translation>Teak</translation>
    </message>
    <message>
        <source>True mahogany</source>
        <translation>Echtes Mahagoni</translation>
    </message>
    <message>
        <source>Under-mounted runners</source>
        <translation>Unterflurführungen</translation>
    </message>
    <message>
        <source>Western redcedar</source>
        <translation>Riesenlebensbaum</translation>
    </message>
    <message>
        <source>White ash</source>
        <translation>Weißesche</translation>
    </message>
    <message>
        <source>White fir</source>
        <translation>Koloradotanne</translation>
    </message>
    <message>
        <source>White oak</source>
        <translation>Weißeiche</translation>
    </message>
    <message>
        <source>Wooden runners</source>
        <translation>Holzführungen</translation>
    </message>
    <message>
        <source>Yellow birch</source>
        <translation>Gelbbirke</translation>
    </message>
    <message>
        <source>Yellow-poplar</source>
        <translation>Tulpenbaum</translation>
    </message>
    <message>
        <source>First try</source>
        <translation>Erster Versuch</translation>
    </message>
    <message>
        <source>Five honest mistakes, each in a drawer named after it: find them in the list below the drawing.</source>
        <translation>Fünf ehrliche Fehler, jeder in einem nach ihm benannten Schubkasten: Die Liste unter der Zeichnung nennt sie.</translation>
    </message>
    <message>
        <source>Glaze chest</source>
        <translation>Glasurenschrank</translation>
    </message>
    <message>
        <source>Look at the two cup pulls: the 1 in bolts that came with them do not reach through box wall and front.</source>
        <translation>Zu den beiden Muschelgriffen: Die mitgelieferten Gewindeschrauben von 1 in reichen nicht durch Vorderstück und Blende.</translation>
    </message>
    <message>
        <source>Plan chest</source>
        <translation>Planschrank</translation>
    </message>
    <message>
        <source>Look at the even 2 mm gaps, open all through the year: eight inset fronts share one template.</source>
        <translation>Die gleichmäßigen Fugen von 2 mm, das ganze Jahr offen: Acht einliegende Blenden teilen sich eine Schablone.</translation>
    </message>
</context>
</TS>
