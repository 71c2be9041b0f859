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
        <source>3 mm countersunk wood screw</source>
        <translation>Senkkopf-Holzschraube 3 mm</translation>
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
        <source>ASME B18.6.1 (diameter 0.060 in + 0.013 in × gauge, flat head); drills from a common shop chart, lengths from memory; root NDS appendix L, from memory</source>
        <translation>ASME B18.6.1 (Durchmesser 0,060 in + 0,013 in × Stärke, Senkkopf); Bohrer nach einer verbreiteten Werkstatttabelle, Längen aus dem Gedächtnis; Kerndurchmesser NDS Anhang L, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASME B18.6.1 (diameter 0.060 in + 0.013 in × gauge, flat head); lengths and drills from memory</source>
        <translation>ASME B18.6.1 (Durchmesser 0,060 in + 0,013 in × Stärke, Senkkopf); Längen und Bohrer aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASME B18.6.1 (diameter 0.060 in + 0.013 in × gauge, flat head); pilot drill No. 25 from a shop chart, clearance (gauge + 3)/64 in, lengths from memory; root NDS appendix L, from memory</source>
        <translation>ASME B18.6.1 (Durchmesser 0,060 in + 0,013 in × Stärke, Senkkopf); Bohrer Nr. 25 der Vorbohrung nach einer Werkstatttabelle, Durchgangsbohrung (Stärke + 3)/64 in, Längen aus dem Gedächtnis; Kerndurchmesser NDS Anhang L, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASME B18.6.1 (diameter 0.060 in + 0.013 in × gauge, flat head); pilot from a common shop chart, clearance (gauge + 3)/64 in, lengths from memory; root NDS appendix L, from memory</source>
        <translation>ASME B18.6.1 (Durchmesser 0,060 in + 0,013 in × Stärke, Senkkopf); Vorbohrung nach einer verbreiteten Werkstatttabelle, Durchgangsbohrung (Stärke + 3)/64 in, Längen aus dem Gedächtnis; Kerndurchmesser NDS Anhang L, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASME B18.6.3 (recessed pan head, greatest sizes), ASME B18.2.8 normal clearance hole; lengths: trade steps, from memory</source>
        <translation>ASME B18.6.3 (Flachkopf mit Kreuzschlitz, größte Maße), ASME B18.2.8 normales Durchgangsloch; Längen: im Handel übliche Stufen, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ASME B18.6.3 (truss head, greatest sizes), ASME B18.2.8 normal clearance hole; lengths: trade steps, from memory</source>
        <translation>ASME B18.6.3 (Flachrundkopf, größte Maße), ASME B18.2.8 normales Durchgangsloch; Längen: im Handel übliche Stufen, aus dem Gedächtnis</translation>
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
        <source>Cup pull, 3 1/2 in, screwed from the face</source>
        <translation>Muschelgriff, 3 1/2 in, von vorn geschraubt</translation>
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
        <source>Cup pull, 95 mm, screwed from the face</source>
        <translation>Muschelgriff, 95 mm, von vorn geschraubt</translation>
    </message>
    <message>
        <source>Eastern white pine</source>
        <translation>Weymouthskiefer</translation>
    </message>
    <message>
        <source>Edge pull, 100 mm, in the top edge</source>
        <translation>Kantengriff, 100 mm, in der Oberkante</translation>
    </message>
    <message>
        <source>Edge pull, 4 in, in the top edge</source>
        <translation>Kantengriff, 4 in, in der Oberkante</translation>
    </message>
    <message>
        <source>Flush pull, 100 × 36 mm, let into the face</source>
        <translation>Griffschale, 100 × 36 mm, in die Fläche eingelassen</translation>
    </message>
    <message>
        <source>Flush ring pull, 50 mm, let in</source>
        <translation>Einlassring, 50 mm</translation>
    </message>
    <message>
        <source>Half-mortise lock, 2 in, key 3/4 in below its selvedge</source>
        <translation>Einlassschloss, 2 in, Schlüssel 3/4 in unter dem Stulp</translation>
    </message>
    <message>
        <source>Half-mortise lock, 50 mm, key 20 mm below its selvedge</source>
        <translation>Einlassschloss, 50 mm, Schlüssel 20 mm unter dem Stulp</translation>
    </message>
    <message>
        <source>Heated home in mid-Sweden</source>
        <translation>Geheizte Wohnung in Mittelschweden</translation>
    </message>
    <message>
        <source>ISO 7045 (greatest head sizes), ISO 273 medium clearance hole; lengths: ISO 888 steps, from memory</source>
        <translation>ISO 7045 (größte Kopfmaße), ISO 273 Durchgangsloch mittel; Längen: Stufen der ISO 888, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>ISO 7045 (greatest head sizes), ISO 273 medium clearance hole; lengths: ISO 888 steps, from memory; 45 and 50 mm as sold for handles, common practice</source>
        <translation>ISO 7045 (größte Kopfmaße), ISO 273 Durchgangsloch mittel; Längen: Stufen der ISO 888, aus dem Gedächtnis; 45 und 50 mm, wie sie für Griffe verkauft werden, allgemeine Praxis</translation>
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
        <source>Label holder, 3 × 1 1/4 in</source>
        <translation>Etikettenrahmen, 3 × 1 1/4 in</translation>
    </message>
    <message>
        <source>Label holder, 70 × 35 mm</source>
        <translation>Etikettenrahmen, 70 × 35 mm</translation>
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
        <source>No. 2 flat-head wood screw</source>
        <translation>Senkkopf-Holzschraube Nr. 2</translation>
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
        <source>Ring pull on a 1 3/4 in backplate, screwed</source>
        <translation>Ringgriff auf Griffunterlage 1 3/4 in, geschraubt</translation>
    </message>
    <message>
        <source>Ring pull on a 45 mm backplate, screwed</source>
        <translation>Ringgriff auf Griffunterlage 45 mm, geschraubt</translation>
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
        <source>Side-mounted metal runners, metric</source>
        <translation>Seitliche Metallführungen, metrisch</translation>
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
        <source>Swedish timber trade guide: winter 2 to 6 %, summer 7 to 12 %, 7.5 % over the year</source>
        <translation>Leitfaden des schwedischen Holzhandels: im Winter 2 bis 6 %, im Sommer 7 bis 12 %, 7,5 % übers Jahr</translation>
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
        <source>Under-mounted runners, metric</source>
        <translation>Unterflurführungen, metrisch</translation>
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
        <source>Wood Handbook, table 13-1, from memory</source>
        <translation>Wood Handbook, Tabelle 13-1, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Wood Handbook, table 13-5</source>
        <translation>Wood Handbook, Tabelle 13-5</translation>
    </message>
    <message>
        <source>Wood Handbook, table 13-5, from memory</source>
        <translation>Wood Handbook, Tabelle 13-5, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Wood Handbook, table 4-3</source>
        <translation>Wood Handbook, Tabelle 4-3</translation>
    </message>
    <message>
        <source>Wood Handbook, table 4-3, from memory</source>
        <translation>Wood Handbook, Tabelle 4-3, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Wood Handbook, table 4-4</source>
        <translation>Wood Handbook, Tabelle 4-4</translation>
    </message>
    <message>
        <source>Wood Handbook, table 4-4, from memory</source>
        <translation>Wood Handbook, Tabelle 4-4, aus dem Gedächtnis</translation>
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
        <source>common practice for countersunk screws (head twice the diameter), from memory</source>
        <translation>allgemeine Praxis bei Senkkopfschrauben (Kopf doppelt so groß wie der Durchmesser), aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>common practice, no source: box 1 in narrower than its opening; check the runner&apos;s own sheet; sizes and rating of a pair: common practice too</source>
        <translation>allgemeine Praxis, ohne Quelle: Schubkasten 1 in schmaler als seine Öffnung; im Datenblatt der Führung nachsehen; Maße und Tragkraft eines Paars: ebenfalls allgemeine Praxis</translation>
    </message>
    <message>
        <source>common practice, no source: check the runner&apos;s own sheet; sizes, notches, clear zone and rating: common practice too</source>
        <translation>allgemeine Praxis, ohne Quelle: im Datenblatt der Führung nachsehen; Maße, Ausklinkungen, Freiraum und Tragkraft: ebenfalls allgemeine Praxis</translation>
    </message>
    <message>
        <source>common practice, no source: for box sides of 16 mm; check the runner&apos;s own sheet; sizes, notches, clear zone and rating of a pair: common practice too</source>
        <translation>allgemeine Praxis, ohne Quelle: für Schubkastenseiten von 16 mm; im Datenblatt der Führung nachsehen; Maße, Ausklinkungen, Freiraum und Tragkraft eines Paars: ebenfalls allgemeine Praxis</translation>
    </message>
    <message>
        <source>common practice, no source: for box sides of 5/8 in; check the runner&apos;s own sheet; sizes, notches, clear zone and rating of a pair: common practice too</source>
        <translation>allgemeine Praxis, ohne Quelle: für Schubkastenseiten von 5/8 in; im Datenblatt der Führung nachsehen; Maße, Ausklinkungen, Freiraum und Tragkraft eines Paars: ebenfalls allgemeine Praxis</translation>
    </message>
    <message>
        <source>common practice, no source: play that a wooden drawer runs with; rails, guides and kickers of 3/4 in stuff</source>
        <translation>allgemeine Praxis, ohne Quelle: Spiel, mit dem ein hölzerner Schubkasten läuft; Lauf-, Streich- und Kippleisten von 3/4 in</translation>
    </message>
    <message>
        <source>Binding bench</source>
        <translation>Bindetisch</translation>
    </message>
    <message>
        <source>Look at the row of system holes: all fronts step by whole pitches of 32 mm, and the left bank keeps 5 mm from the wall.</source>
        <translation>Die Lochreihe ansehen: Alle Blenden stufen um ganze Lochabstände von 32 mm, und die linke Reihe hält 5 mm Abstand von der Wand.</translation>
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
        <source>Linen cupboard</source>
        <translation>Wäscheschrank</translation>
    </message>
    <message>
        <source>Look at the doors beside the drawers: sized and spaced alike, and an open space for baskets.</source>
        <translation>Türen neben Schubkästen ansehen: gleich bemessen und mit gleichen Fugen, dazu ein offenes Fach für Körbe.</translation>
    </message>
    <message>
        <source>Plan chest</source>
        <translation>Planschrank</translation>
    </message>
    <message>
        <source>Look at the even 2 mm gaps, open all through the year: eight inset fronts share one template.</source>
        <translation>Die gleichmäßigen Fugen von 2 mm, das ganze Jahr offen: Acht einliegende Blenden teilen sich eine Schablone.</translation>
    </message>
    <message>
        <source>Shell collector&apos;s cabinet</source>
        <translation>Muschelschrank</translation>
    </message>
    <message>
        <source>Look at the fittings: labels and rings held by screws, two let-in rings and a lock below.</source>
        <translation>Zu den Beschlägen: Etikettenrahmen und Ringe, von Schrauben gehalten, unten zwei eingelassene Ringe und ein Schloss.</translation>
    </message>
    <message>
        <source>Sink base</source>
        <translation>Spülenunterschrank</translation>
    </message>
    <message>
        <source>Look at the bin: two fronts on one deep box, a filler strip in their gap. The sink&apos;s front is fixed to the frame.</source>
        <translation>Der Abfall: zwei Blenden auf einem tiefen Kasten, eine Füllleiste in ihrer Fuge. Die Blende der Spüle sitzt fest am Rahmen.</translation>
    </message>
    <message>
        <source>Tool cabinet</source>
        <translation>Werkzeugschrank</translation>
    </message>
    <message>
        <source>Look at what each drawer runs on: wooden rails, one runner in the middle, metal at the sides, metal under the bottom.</source>
        <translation>Worauf jeder Schubkasten läuft: Holzleisten, eine Führung in der Mitte, Metall an den Seiten, Metall unter dem Boden.</translation>
    </message>
    <message>
        <source>Writing chest</source>
        <translation>Schreibkommode</translation>
    </message>
    <message>
        <source>A board to write on over each bank; their keeper strips leave the top&apos;s screws within reach.</source>
        <translation>Über jeder Reihe eine Platte zum Schreiben; ihre Halteleisten lassen die Schrauben der Deckplatte erreichbar.</translation>
    </message>
</context>
</TS>
