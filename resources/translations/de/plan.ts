<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>choose one that is there</source>
        <translation>etwas aus dem Katalog wählen</translation>
    </message>
    <message>
        <source>no species &quot;%1&quot; in the catalogue</source>
        <translation>keine Holzart „%1“ im Katalog</translation>
    </message>
    <message>
        <source>no wood screw &quot;%1&quot; in the catalogue</source>
        <translation>keine Holzschraube „%1“ im Katalog</translation>
    </message>
    <message>
        <source>there is no such opening in the case</source>
        <translation>diese Öffnung gibt es im Korpus nicht</translation>
    </message>
    <message>
        <source>board %1</source>
        <translation>Platte %1</translation>
    </message>
    <message>
        <source>the maker&apos;s limit</source>
        <translation>Grenzwert des Möbelbauers</translation>
    </message>
    <message>
        <source>front %1</source>
        <translation>Blende %1</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>Left stile</source>
        <translation>Linker Längsfries</translation>
    </message>
    <message>
        <source>Right stile</source>
        <translation>Rechter Längsfries</translation>
    </message>
    <message>
        <source>Bottom rail</source>
        <translation>Unterer Querfries</translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation>Oberer Querfries</translation>
    </message>
    <message>
        <source>Left side panel</source>
        <translation>Linke Seitenwand</translation>
    </message>
    <message>
        <source>Right side panel</source>
        <translation>Rechte Seitenwand</translation>
    </message>
    <message>
        <source>Bottom panel</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Top panel</source>
        <translation>Oberboden</translation>
    </message>
    <message>
        <source>Division of the face</source>
        <translation>Teilung der Front</translation>
    </message>
    <message>
        <source>Stile</source>
        <translation>Längsfries</translation>
    </message>
    <message>
        <source>Rail</source>
        <translation>Querfries</translation>
    </message>
    <message>
        <source>Divider</source>
        <translation>Mittelwand</translation>
    </message>
    <message>
        <source>Shelf</source>
        <translation>Zwischenboden</translation>
    </message>
    <message>
        <source>Division of the face %1</source>
        <translation>Teilung der Front %1</translation>
    </message>
    <message>
        <source>Stile %1</source>
        <translation>Längsfries %1</translation>
    </message>
    <message>
        <source>Rail %1</source>
        <translation>Querfries %1</translation>
    </message>
    <message>
        <source>Divider %1</source>
        <translation>Mittelwand %1</translation>
    </message>
    <message>
        <source>Shelf %1</source>
        <translation>Zwischenboden %1</translation>
    </message>
    <message>
        <source>behind the frame&apos;s face</source>
        <translation>hinter der Vorderseite des Rahmens</translation>
    </message>
    <message>
        <source>behind the case&apos;s front edge</source>
        <translation>hinter der Vorderkante des Korpus</translation>
    </message>
    <message>
        <source>Front %1</source>
        <translation>Blende %1</translation>
    </message>
    <message>
        <source>Fixed front %1</source>
        <translation>Feste Blende %1</translation>
    </message>
    <message>
        <source>Door %1</source>
        <translation>Tür %1</translation>
    </message>
    <message>
        <source>Open space %1</source>
        <translation>Offenes Fach %1</translation>
    </message>
    <message>
        <source>Pull-out board %1</source>
        <translation>Ausziehplatte %1</translation>
    </message>
    <message>
        <source>no runner kind &quot;%1&quot; in the catalogue</source>
        <translation>keine Art von Führungen „%1“ im Katalog</translation>
    </message>
    <message>
        <source>no hardware form &quot;%1&quot; in the catalogue</source>
        <translation>keine Griffform „%1“ im Katalog</translation>
    </message>
    <message>
        <source>no bolt &quot;%1&quot; in the catalogue</source>
        <translation>keine Gewindeschraube „%1“ im Katalog</translation>
    </message>
    <message>
        <source>%1 = %2</source>
        <translation>%1 = %2</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>front + wall</source>
        <translation>Blende + Vorderstück</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Blende</translation>
    </message>
    <message>
        <source>shortest stocked length from the least to the greatest</source>
        <translation>kürzeste vorrätige Länge zwischen der kleinsten und der größten</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>height of the bolt&apos;s head, so that it lies flush</source>
        <translation>Höhe des Schraubenkopfs, damit er bündig liegt</translation>
    </message>
    <message>
        <source>%1 + least engagement − bolt</source>
        <translation>%1 + kleinste Einschraubtiefe − Gewindeschraube</translation>
    </message>
    <message>
        <source>%1 − the counterbore that makes the bolt long enough</source>
        <translation>%1 − zylindrische Senkung, mit der die Gewindeschraube lang genug ist</translation>
    </message>
    <message>
        <source>%1 − counterbore</source>
        <translation>%1 − zylindrische Senkung</translation>
    </message>
    <message>
        <source>grip + least engagement</source>
        <translation>Klemmdicke + kleinste Einschraubtiefe</translation>
    </message>
    <message>
        <source>grip + thread depth</source>
        <translation>Klemmdicke + Gewindetiefe</translation>
    </message>
    <message>
        <source>opening − 2 × side clearance</source>
        <translation>Öffnung − 2 × Luft an der Seite</translation>
    </message>
    <message>
        <source>opening − clearance below − clearance above</source>
        <translation>Öffnung − Luft unten − Luft oben</translation>
    </message>
    <message>
        <source>front&apos;s thickness, as the front lies in the opening</source>
        <translation>Dicke der Blende, denn sie liegt in der Öffnung</translation>
    </message>
    <message>
        <source>the box wall is flush with the panels&apos; front edges</source>
        <translation>das Vorderstück ist bündig mit den Vorderkanten der Platten</translation>
    </message>
    <message>
        <source>the box wall is flush with the frame&apos;s face</source>
        <translation>das Vorderstück ist bündig mit der Vorderseite des Blendrahmens</translation>
    </message>
    <message>
        <source>groove height + bottom&apos;s thickness</source>
        <translation>Nuthöhe + Dicke des Bodens</translation>
    </message>
    <message>
        <source>as long as the runner</source>
        <translation>so lang wie die Führung</translation>
    </message>
    <message>
        <source>beam on two supports with a load in its middle; stiffness of wood along the grain from the Wood Handbook, chapter 5, from memory; the hand&apos;s push is common practice</source>
        <translation>Balken auf zwei Stützen mit einer Last in der Mitte; Steifigkeit des Holzes längs zur Faser nach dem Wood Handbook, Kapitel 5, aus dem Gedächtnis; der Druck der Hand ist Werkstattbrauch</translation>
    </message>
    <message>
        <source>thinner edge beside the gap − shadow</source>
        <translation>dünnere Kante neben der Fuge − Schattenbreite</translation>
    </message>
    <message>
        <source>F l³ / (4 E w t³), the strip alone between the outermost screws beside the gap, pushed in its middle</source>
        <translation>F l³ / (4 E w t³), die Leiste allein zwischen den äußersten Schrauben neben der Fuge, in der Mitte gedrückt</translation>
    </message>
    <message>
        <source>%1; the limit is %2</source>
        <translation>%1; der Grenzwert ist %2</translation>
    </message>
    <message>
        <source>∛(F l³ / (4 E w b)), at which the strip bends by the limit b</source>
        <translation>∛(F l³ / (4 E w b)), bei der sich die Leiste um den Grenzwert b durchbiegt</translation>
    </message>
    <message>
        <source>the gap between the fronts</source>
        <translation>die Fuge zwischen den Blenden</translation>
    </message>
    <message>
        <source>where the fronts face each other</source>
        <translation>wo die Blenden einander gegenüberliegen</translation>
    </message>
    <message>
        <source>between the outermost screws of the wider row beside the gap</source>
        <translation>zwischen den äußersten Schrauben der weiteren Reihe neben der Fuge</translation>
    </message>
    <message>
        <source>first hole to last, from centre to centre</source>
        <translation>von der ersten Bohrung zur letzten, Mitte zu Mitte</translation>
    </message>
    <message>
        <source>first hole to last: an inch pattern, whole sixteenths</source>
        <translation>von der ersten Bohrung zur letzten: ein Zollmaß, ganze Sechzehntel</translation>
    </message>
    <message>
        <source>first hole to last: a metric pattern, whole millimetres</source>
        <translation>von der ersten Bohrung zur letzten: ein metrisches Maß, ganze Millimeter</translation>
    </message>
    <message>
        <source>half the front&apos;s width</source>
        <translation>halbe Breite der Blende</translation>
    </message>
    <message>
        <source>front&apos;s width − the given distance from its right edge</source>
        <translation>Breite der Blende − der angegebene Abstand von ihrer rechten Kante</translation>
    </message>
    <message>
        <source>the given distance from the front&apos;s left edge</source>
        <translation>der angegebene Abstand von der linken Kante der Blende</translation>
    </message>
    <message>
        <source>front&apos;s height − the fitting&apos;s own distance below its top edge</source>
        <translation>Höhe der Blende − der eigene Abstand des Beschlags von ihrer Oberkante</translation>
    </message>
    <message>
        <source>front&apos;s height − the given distance from its top</source>
        <translation>Höhe der Blende − der angegebene Abstand von ihrer Oberkante</translation>
    </message>
    <message>
        <source>the given distance from the front&apos;s lower edge</source>
        <translation>der angegebene Abstand von der Unterkante der Blende</translation>
    </message>
    <message>
        <source>half the front&apos;s height</source>
        <translation>halbe Höhe der Blende</translation>
    </message>
    <message>
        <source>longest stocked length from plate + least penetration to plate + wood − least tip cover</source>
        <translation>längste vorrätige Länge von Platte + kleinste Eindringtiefe bis Platte + Holz − kleinstes Restholz</translation>
    </message>
    <message>
        <source>screw − the fitting&apos;s plate</source>
        <translation>Schraube − Platte des Beschlags</translation>
    </message>
    <message>
        <source>wood before the screw − penetration</source>
        <translation>Holz vor der Schraube − Eindringtiefe</translation>
    </message>
    <message>
        <source>front behind the mortise − its depth</source>
        <translation>Blende hinter der Ausstemmung − ihre Tiefe</translation>
    </message>
    <message>
        <source>wood beside the mortise in the top edge, to the nearer face</source>
        <translation>Holz neben der Ausstemmung in der Oberkante, bis zur näheren Fläche</translation>
    </message>
    <message>
        <source>left overlay</source>
        <translation>Aufschlag links</translation>
    </message>
    <message>
        <source>left gap</source>
        <translation>Fuge links</translation>
    </message>
    <message>
        <source>right overlay</source>
        <translation>Aufschlag rechts</translation>
    </message>
    <message>
        <source>right gap</source>
        <translation>Fuge rechts</translation>
    </message>
    <message>
        <source>bottom overlay</source>
        <translation>Aufschlag unten</translation>
    </message>
    <message>
        <source>bottom gap</source>
        <translation>Fuge unten</translation>
    </message>
    <message>
        <source>top overlay</source>
        <translation>Aufschlag oben</translation>
    </message>
    <message>
        <source>top gap</source>
        <translation>Fuge oben</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>%1 − %2</source>
        <translation>%1 − %2</translation>
    </message>
    <message>
        <source>%1 + %2</source>
        <translation>%1 + %2</translation>
    </message>
    <message>
        <source>opening&apos;s right edge − its left edge, from the case&apos;s left side</source>
        <translation>rechte Kante der Öffnung − ihre linke Kante, von der linken Seite des Korpus aus</translation>
    </message>
    <message>
        <source>opening&apos;s top − its bottom, from the case&apos;s lower edge</source>
        <translation>obere Kante der Öffnung − ihre untere Kante, von der Unterkante des Korpus aus</translation>
    </message>
    <message>
        <source>thickness, as no profile takes from the edge</source>
        <translation>Dicke, denn kein Profil nimmt etwas von der Kante</translation>
    </message>
    <message>
        <source>thickness − profile&apos;s depth</source>
        <translation>Dicke − Tiefe des Profils</translation>
    </message>
    <message>
        <source>front&apos;s width − profile at the left − profile at the right</source>
        <translation>Breite der Blende − Profil links − Profil rechts</translation>
    </message>
    <message>
        <source>front&apos;s height − profile at the bottom − profile at the top</source>
        <translation>Höhe der Blende − Profil unten − Profil oben</translation>
    </message>
    <message>
        <source>from the opening&apos;s edge to the front&apos;s, where the least gap leaves room</source>
        <translation>von der Kante der Öffnung bis zu der der Blende, soweit die kleinste Fuge Platz lässt</translation>
    </message>
    <message>
        <source>member − gap</source>
        <translation>Rahmenteil − Fuge</translation>
    </message>
    <message>
        <source>half of what the gap leaves of the member: (member − gap) / 2</source>
        <translation>die Hälfte dessen, was die Fuge vom Rahmenteil übrig lässt: (Rahmenteil − Fuge) / 2</translation>
    </message>
    <message>
        <source>member − gap − overlay of the facing front</source>
        <translation>Rahmenteil − Fuge − Aufschlag der Blende gegenüber</translation>
    </message>
    <message>
        <source>least distance to what the front faces</source>
        <translation>kleinster Abstand zu dem, was der Blende gegenüberliegt</translation>
    </message>
    <message>
        <source>member − overlay</source>
        <translation>Rahmenteil − Aufschlag</translation>
    </message>
    <message>
        <source>member − overlay − overlay of the facing front</source>
        <translation>Rahmenteil − Aufschlag − Aufschlag der Blende gegenüber</translation>
    </message>
    <message>
        <source>%1 + hole&apos;s offset from the handle&apos;s centre</source>
        <translation>%1 + Abstand der Bohrung von der Griffmitte</translation>
    </message>
    <message>
        <source>handle&apos;s centre</source>
        <translation>Griffmitte</translation>
    </message>
    <message>
        <source>front&apos;s width × %1 per cent</source>
        <translation>Breite der Blende × %1 Prozent</translation>
    </message>
    <message>
        <source>field&apos;s left edge + half its width</source>
        <translation>linke Kante des Spiegels + seine halbe Breite</translation>
    </message>
    <message>
        <source>field&apos;s lower edge + half its height</source>
        <translation>untere Kante des Spiegels + seine halbe Höhe</translation>
    </message>
    <message>
        <source>half the front&apos;s height + 1/%1 of it</source>
        <translation>halbe Höhe der Blende + 1/%1 ihrer Höhe</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 8: average ultimate load, side grain, specific gravity on volume at 12 % moisture</source>
        <translation>Forest Products Laboratory, Wood Handbook, Kapitel 8: mittlere Bruchlast, Langholz, Dichtezahl auf das Volumen bei 12 % Holzfeuchte bezogen</translation>
    </message>
    <message>
        <source>National Design Specification (NDS): reference design value, side grain only, specific gravity on ovendry volume</source>
        <translation>National Design Specification (NDS): Bemessungswert, nur Langholz, Dichtezahl auf das darrtrockene Volumen bezogen</translation>
    </message>
    <message>
        <source>Architectural Woodwork Standards, 1st ed., 2009: 50 lbf (222 N) on a pull; shared by the statics of a stiff front on equal screws (common practice)</source>
        <translation>Architectural Woodwork Standards, 1. Auflage, 2009: 50 lbf (222 N) Zug am Griff; verteilt nach der Statik einer steifen Blende auf gleichen Schrauben (allgemeine Praxis)</translation>
    </message>
    <message>
        <source>15 700 (108.25 in N, mm) × G² × shank × thread in the front</source>
        <translation>15 700 (108,25 in N, mm) × G² × Schaft × Gewinde in der Blende</translation>
    </message>
    <message>
        <source>2850 (19.65 in N, mm) × G² × shank × thread in the front</source>
        <translation>2850 (19,65 in N, mm) × G² × Schaft × Gewinde in der Blende</translation>
    </message>
    <message>
        <source>%1; gauge and length lie outside the handbook&apos;s tests, so it is likely to be less</source>
        <translation>%1; Stärke und Länge liegen außerhalb der Versuche des Handbuchs, wahrscheinlich ist es weniger</translation>
    </message>
    <message>
        <source>ultimate withdrawal / share of the pull test, at the worst screw</source>
        <translation>Bruchlast beim Herausziehen / Anteil am Prüfzug, an der ungünstigsten Schraube</translation>
    </message>
    <message>
        <source>design value of withdrawal / share of the pull test, at the worst screw</source>
        <translation>Bemessungswert beim Herausziehen / Anteil am Prüfzug, an der ungünstigsten Schraube</translation>
    </message>
    <message>
        <source>pull test × (1 / screws + its part of the turning), at the handle</source>
        <translation>Prüfzug × (1 / Schrauben + ihr Teil an der Drehung), am Griff</translation>
    </message>
    <message>
        <source>%1 on one screw</source>
        <translation>%1 auf einer Schraube</translation>
    </message>
    <message>
        <source>%1 on %2 screws</source>
        <translation>%1 auf %2 Schrauben</translation>
    </message>
    <message>
        <source>trade reference: the thread is two thirds of a wood screw&apos;s length</source>
        <translation>Nachschlagewerk des Handwerks: das Gewinde einer Holzschraube nimmt zwei Drittel ihrer Länge ein</translation>
    </message>
    <message>
        <source>screw + recess − wall, all of it thread</source>
        <translation>Schraube + Kopfversenkung − Vorderstück, alles davon Gewinde</translation>
    </message>
    <message>
        <source>the screw does not reach the front</source>
        <translation>die Schraube reicht nicht bis in die Blende</translation>
    </message>
    <message>
        <source>two thirds of the screw: its thread</source>
        <translation>zwei Drittel der Schraube: ihr Gewinde</translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s bottom edge</source>
        <translation>Bohrung auf dem Vorderstück + Vorderstück von der unteren Kante der Blende</translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s bottom edge</source>
        <translation>Blende − Bohrung auf dem Vorderstück − Vorderstück von der unteren Kante der Blende</translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s bottom end</source>
        <translation>Bohrung auf dem Vorderstück + Vorderstück vom unteren Ende der Blende</translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s bottom end</source>
        <translation>Blende − Bohrung auf dem Vorderstück − Vorderstück vom unteren Ende der Blende</translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s left edge</source>
        <translation>Bohrung auf dem Vorderstück + Vorderstück von der linken Kante der Blende</translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s left edge</source>
        <translation>Blende − Bohrung auf dem Vorderstück − Vorderstück von der linken Kante der Blende</translation>
    </message>
    <message>
        <source>hole on the wall + wall from the front&apos;s left end</source>
        <translation>Bohrung auf dem Vorderstück + Vorderstück vom linken Ende der Blende</translation>
    </message>
    <message>
        <source>front − hole on the wall − wall from the front&apos;s left end</source>
        <translation>Blende − Bohrung auf dem Vorderstück − Vorderstück vom linken Ende der Blende</translation>
    </message>
    <message>
        <source>the catalogue&apos;s for the screw</source>
        <translation>wie im Katalog für die Schraube</translation>
    </message>
    <message>
        <source>nearest drill to %1 % of the screw&apos;s root of %2</source>
        <translation>Bohrer, der %1 % des Kerndurchmessers der Schraube von %2 am nächsten kommt</translation>
    </message>
    <message>
        <source>nearest drill to %1 % of the screw&apos;s root of %2; wood so light needs none</source>
        <translation>Bohrer, der %1 % des Kerndurchmessers der Schraube von %2 am nächsten kommt; so leichtes Holz braucht keine Vorbohrung</translation>
    </message>
    <message>
        <source>National Design Specification (NDS), lead holes by ovendry specific gravity: above 0.60 90 %, above 0.50 70 % of the root; root: appendix L, from memory</source>
        <translation>National Design Specification (NDS), Vorbohrungen nach der darrtrockenen Dichtezahl: über 0,60 90 %, über 0,50 70 % des Kerndurchmessers; Kerndurchmesser: Anhang L, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>(the screw&apos;s head − the clearance hole) / 2</source>
        <translation>(Schraubenkopf − Durchgangsbohrung) / 2</translation>
    </message>
    <message>
        <source>bolt − grip</source>
        <translation>Gewindeschraube − Klemmdicke</translation>
    </message>
    <message>
        <source>the bolt does not reach</source>
        <translation>die Gewindeschraube reicht nicht</translation>
    </message>
    <message>
        <source>all of the handle&apos;s thread</source>
        <translation>das ganze Gewinde des Griffs</translation>
    </message>
    <message>
        <source>one end − the other, from the case&apos;s lower left corner</source>
        <translation>ein Ende − das andere, von der linken unteren Ecke des Korpus aus</translation>
    </message>
    <message>
        <source>member − overlay − overlay, where the fronts are nearest</source>
        <translation>Rahmenteil − Aufschlag − Aufschlag, wo sich die Blenden am nächsten sind</translation>
    </message>
    <message>
        <source>member − overlay, where it is covered most</source>
        <translation>Rahmenteil − Aufschlag, wo es am weitesten bedeckt ist</translation>
    </message>
    <message>
        <source>what the fronts leave of the member</source>
        <translation>was die Blenden vom Rahmenteil übrig lassen</translation>
    </message>
    <message>
        <source>Case width</source>
        <translation>Breite des Korpus</translation>
    </message>
    <message>
        <source>Case height</source>
        <translation>Höhe des Korpus</translation>
    </message>
    <message>
        <source>Total width</source>
        <translation>Gesamtbreite</translation>
    </message>
    <message>
        <source>Total height</source>
        <translation>Gesamthöhe</translation>
    </message>
    <message>
        <source>Wood&apos;s moisture when cut</source>
        <translation>Holzfeuchte beim Zuschnitt</translation>
    </message>
    <message>
        <source>Wood&apos;s moisture at its driest</source>
        <translation>Kleinste Holzfeuchte</translation>
    </message>
    <message>
        <source>Wood&apos;s moisture at its wettest</source>
        <translation>Größte Holzfeuchte</translation>
    </message>
    <message>
        <source>Weight of fronts, boxes and frame</source>
        <translation>Gewicht der Blenden, der Schubkästen und des Rahmens</translation>
    </message>
    <message>
        <source>Weight of what the drawers hold</source>
        <translation>Gewicht des Inhalts der Schubkästen</translation>
    </message>
    <message>
        <source>Enclosed storage of the case</source>
        <translation>Geschlossener Stauraum des Korpus</translation>
    </message>
    <message>
        <source>Member width</source>
        <translation>Breite des Rahmenteils</translation>
    </message>
    <message>
        <source>Member length</source>
        <translation>Länge des Rahmenteils</translation>
    </message>
    <message>
        <source>Reveal</source>
        <translation>Sichtbreite</translation>
    </message>
    <message>
        <source>Reveal over the season</source>
        <translation>Sichtbreite im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Opening width</source>
        <translation>Breite der Öffnung</translation>
    </message>
    <message>
        <source>Opening height</source>
        <translation>Höhe der Öffnung</translation>
    </message>
    <message>
        <source>Front width</source>
        <translation>Breite der Blende</translation>
    </message>
    <message>
        <source>Front height</source>
        <translation>Höhe der Blende</translation>
    </message>
    <message>
        <source>Front thickness</source>
        <translation>Dicke der Blende</translation>
    </message>
    <message>
        <source>Left overlay</source>
        <translation>Aufschlag links</translation>
    </message>
    <message>
        <source>Right overlay</source>
        <translation>Aufschlag rechts</translation>
    </message>
    <message>
        <source>Bottom overlay</source>
        <translation>Aufschlag unten</translation>
    </message>
    <message>
        <source>Top overlay</source>
        <translation>Aufschlag oben</translation>
    </message>
    <message>
        <source>Gap at the left</source>
        <translation>Fuge links</translation>
    </message>
    <message>
        <source>Gap at the right</source>
        <translation>Fuge rechts</translation>
    </message>
    <message>
        <source>Gap below</source>
        <translation>Fuge unten</translation>
    </message>
    <message>
        <source>Gap above</source>
        <translation>Fuge oben</translation>
    </message>
    <message>
        <source>To what stands at the left</source>
        <translation>Bis zu dem, was links steht</translation>
    </message>
    <message>
        <source>To what stands at the right</source>
        <translation>Bis zu dem, was rechts steht</translation>
    </message>
    <message>
        <source>To what stands below</source>
        <translation>Bis zu dem, was unten steht</translation>
    </message>
    <message>
        <source>To what stands above</source>
        <translation>Bis zu dem, was oben steht</translation>
    </message>
    <message>
        <source>Step to the front above</source>
        <translation>Stufe bis zur Blende darüber</translation>
    </message>
    <message>
        <source>Front width over the season</source>
        <translation>Breite der Blende im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Front height over the season</source>
        <translation>Höhe der Blende im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Left overlay over the season</source>
        <translation>Aufschlag links im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Right overlay over the season</source>
        <translation>Aufschlag rechts im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Bottom overlay over the season</source>
        <translation>Aufschlag unten im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Top overlay over the season</source>
        <translation>Aufschlag oben im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Gap at the left over the season</source>
        <translation>Fuge links im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Gap at the right over the season</source>
        <translation>Fuge rechts im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Gap below over the season</source>
        <translation>Fuge unten im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Gap above over the season</source>
        <translation>Fuge oben im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Edge thickness</source>
        <translation>Kantendicke</translation>
    </message>
    <message>
        <source>Field width</source>
        <translation>Breite des Spiegels</translation>
    </message>
    <message>
        <source>Field height</source>
        <translation>Höhe des Spiegels</translation>
    </message>
    <message>
        <source>Box width</source>
        <translation>Breite des Schubkastens</translation>
    </message>
    <message>
        <source>Box height</source>
        <translation>Höhe des Schubkastens</translation>
    </message>
    <message>
        <source>Box depth</source>
        <translation>Tiefe des Schubkastens</translation>
    </message>
    <message>
        <source>Box setback</source>
        <translation>Rücksprung des Schubkastens</translation>
    </message>
    <message>
        <source>Top of the bottom</source>
        <translation>Oberseite des Bodens</translation>
    </message>
    <message>
        <source>Side clearance</source>
        <translation>Seitliche Luft</translation>
    </message>
    <message>
        <source>Runner length</source>
        <translation>Länge der Führung</translation>
    </message>
    <message>
        <source>Runner behind the frame&apos;s face</source>
        <translation>Führung hinter der Vorderseite des Rahmens</translation>
    </message>
    <message>
        <source>Top of the runner</source>
        <translation>Oberkante der Führung</translation>
    </message>
    <message>
        <source>Notch in the box&apos;s back, width</source>
        <translation>Ausklinkung im Rückenstück, Breite</translation>
    </message>
    <message>
        <source>Notch in the box&apos;s back, height</source>
        <translation>Ausklinkung im Rückenstück, Höhe</translation>
    </message>
    <message>
        <source>Notch in the box wall, width</source>
        <translation>Ausklinkung im Vorderstück, Breite</translation>
    </message>
    <message>
        <source>Notch in the box wall, height</source>
        <translation>Ausklinkung im Vorderstück, Höhe</translation>
    </message>
    <message>
        <source>Clear zone in the wall, width</source>
        <translation>Freiraum im Vorderstück, Breite</translation>
    </message>
    <message>
        <source>Clear zone in the wall, height</source>
        <translation>Freiraum im Vorderstück, Höhe</translation>
    </message>
    <message>
        <source>Kicker above the opening&apos;s lower edge</source>
        <translation>Kippleiste über der Unterkante der Öffnung</translation>
    </message>
    <message>
        <source>Furring behind the runner</source>
        <translation>Auffütterung hinter der Führung</translation>
    </message>
    <message>
        <source>Box height gained in the wettest air</source>
        <translation>Höhe, die der Schubkasten in der feuchtesten Luft gewinnt</translation>
    </message>
    <message>
        <source>Screw length</source>
        <translation>Länge der Schrauben</translation>
    </message>
    <message>
        <source>Least screw length</source>
        <translation>Kleinste Länge der Schrauben</translation>
    </message>
    <message>
        <source>Greatest screw length</source>
        <translation>Größte Länge der Schrauben</translation>
    </message>
    <message>
        <source>Screw penetration</source>
        <translation>Eindringtiefe der Schraube</translation>
    </message>
    <message>
        <source>Tip cover</source>
        <translation>Restholz vor der Schraubenspitze</translation>
    </message>
    <message>
        <source>Screw hole from the left</source>
        <translation>Schraubenbohrung von links</translation>
    </message>
    <message>
        <source>Screw hole from below</source>
        <translation>Schraubenbohrung von unten</translation>
    </message>
    <message>
        <source>Least hole height</source>
        <translation>Kleinste Höhe der Bohrungen</translation>
    </message>
    <message>
        <source>Row of screws that holds the front</source>
        <translation>Schraubenreihe, die die Blende hält</translation>
    </message>
    <message>
        <source>Movement at the screws</source>
        <translation>Quellen und Schwinden an den Schrauben</translation>
    </message>
    <message>
        <source>Least clearance hole for the movement</source>
        <translation>Kleinste Durchgangsbohrung für Quellen und Schwinden</translation>
    </message>
    <message>
        <source>Clearance drill for the movement</source>
        <translation>Bohrer der Durchgangsbohrung für Quellen und Schwinden</translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation>Durchgangsbohrung</translation>
    </message>
    <message>
        <source>Screw head round its clearance hole</source>
        <translation>Schraubenkopf rings um seine Durchgangsbohrung</translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>Thread in the front</source>
        <translation>Gewinde in der Blende</translation>
    </message>
    <message>
        <source>Safety against the pull test, ultimate</source>
        <translation>Sicherheit gegen den Prüfzug, Bruchlast</translation>
    </message>
    <message>
        <source>Safety against the pull test, design value</source>
        <translation>Sicherheit gegen den Prüfzug, Bemessungswert</translation>
    </message>
    <message>
        <source>Screw to the front&apos;s edge</source>
        <translation>Schraube bis zur Kante der Blende</translation>
    </message>
    <message>
        <source>Screw to the front&apos;s end</source>
        <translation>Schraube bis zum Ende der Blende</translation>
    </message>
    <message>
        <source>Withdrawal, ultimate</source>
        <translation>Herausziehen, Bruchlast</translation>
    </message>
    <message>
        <source>Withdrawal, design value</source>
        <translation>Herausziehen, Bemessungswert</translation>
    </message>
    <message>
        <source>Share of the pull test</source>
        <translation>Anteil am Prüfzug</translation>
    </message>
    <message>
        <source>Handle hole from the left</source>
        <translation>Griffbohrung von links</translation>
    </message>
    <message>
        <source>Handle hole from below</source>
        <translation>Griffbohrung von unten</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Klemmdicke</translation>
    </message>
    <message>
        <source>Least bolt length</source>
        <translation>Kleinste Länge der Gewindeschraube</translation>
    </message>
    <message>
        <source>Greatest bolt length</source>
        <translation>Größte Länge der Gewindeschraube</translation>
    </message>
    <message>
        <source>Bolt length</source>
        <translation>Länge der Gewindeschraube</translation>
    </message>
    <message>
        <source>Counterbore depth</source>
        <translation>Tiefe der zylindrischen Senkung</translation>
    </message>
    <message>
        <source>Wood under the bolt&apos;s head</source>
        <translation>Holz unter dem Kopf der Gewindeschraube</translation>
    </message>
    <message>
        <source>Thread in the handle</source>
        <translation>Gewinde im Griff</translation>
    </message>
    <message>
        <source>Handle&apos;s holes, centre to centre</source>
        <translation>Lochabstand des Griffs</translation>
    </message>
    <message>
        <source>Fitting from the left</source>
        <translation>Beschlag von links</translation>
    </message>
    <message>
        <source>Fitting from below</source>
        <translation>Beschlag von unten</translation>
    </message>
    <message>
        <source>Fitting&apos;s screws</source>
        <translation>Schrauben des Beschlags</translation>
    </message>
    <message>
        <source>Fitting&apos;s screws in the front</source>
        <translation>Schrauben des Beschlags in der Blende</translation>
    </message>
    <message>
        <source>Wood before a fitting&apos;s screw</source>
        <translation>Restholz vor der Schraube eines Beschlags</translation>
    </message>
    <message>
        <source>Wood left by a mortise</source>
        <translation>Restholz an einer Ausstemmung</translation>
    </message>
    <message>
        <source>Weight of the front</source>
        <translation>Gewicht der Blende</translation>
    </message>
    <message>
        <source>Weight of the box</source>
        <translation>Gewicht des Schubkastens</translation>
    </message>
    <message>
        <source>Weight of the contents</source>
        <translation>Gewicht des Inhalts</translation>
    </message>
    <message>
        <source>Load on the runners</source>
        <translation>Last auf den Führungen</translation>
    </message>
    <message>
        <source>Load that the runners are rated for</source>
        <translation>Tragkraft der Führungen</translation>
    </message>
    <message>
        <source>Runners&apos; rating over their load</source>
        <translation>Tragkraft der Führungen im Verhältnis zu ihrer Last</translation>
    </message>
    <message>
        <source>Enclosed storage</source>
        <translation>Geschlossener Stauraum</translation>
    </message>
    <message>
        <source>Spacer</source>
        <translation>Distanzholz</translation>
    </message>
    <message>
        <source>Filler strip&apos;s width</source>
        <translation>Breite der Füllleiste</translation>
    </message>
    <message>
        <source>Filler strip&apos;s length</source>
        <translation>Länge der Füllleiste</translation>
    </message>
    <message>
        <source>Filler strip&apos;s thickness</source>
        <translation>Dicke der Füllleiste</translation>
    </message>
    <message>
        <source>Filler strip&apos;s span between screws</source>
        <translation>Spannweite der Füllleiste zwischen Schrauben</translation>
    </message>
    <message>
        <source>Filler strip&apos;s bend under a hand&apos;s push</source>
        <translation>Durchbiegung der Füllleiste unter dem Druck einer Hand</translation>
    </message>
    <message>
        <source>Least thickness of the filler strip</source>
        <translation>Kleinste Dicke der Füllleiste</translation>
    </message>
    <message>
        <source>Stop from the member&apos;s far edge</source>
        <translation>Anschlagholz von der fernen Kante des Rahmenteils</translation>
    </message>
    <message>
        <source>Stop from the opening&apos;s edge</source>
        <translation>Anschlagholz von der Kante der Öffnung</translation>
    </message>
    <message>
        <source>Space width</source>
        <translation>Breite des Fachs</translation>
    </message>
    <message>
        <source>Space height</source>
        <translation>Höhe des Fachs</translation>
    </message>
    <message>
        <source>Runner behind the panels&apos; front edges</source>
        <translation>Führung hinter den Vorderkanten der Platten</translation>
    </message>
    <message>
        <source>what the runner asks for</source>
        <translation>was die Führung verlangt</translation>
    </message>
    <message>
        <source>it begins at the panels&apos; front edges</source>
        <translation>sie beginnt an den Vorderkanten der Platten</translation>
    </message>
    <message>
        <source>it begins behind the frame: the frame&apos;s thickness</source>
        <translation>sie beginnt hinter dem Rahmen: Dicke des Rahmens</translation>
    </message>
    <message>
        <source>the box&apos;s setback + the runner&apos;s own behind the box&apos;s face</source>
        <translation>Rücksprung des Schubkastens + der der Führung hinter seiner Vorderseite</translation>
    </message>
    <message>
        <source>cut to the room: frame + case inside − setback</source>
        <translation>auf den Platz zugeschnitten: Rahmen + Korpus innen − Rücksprung</translation>
    </message>
    <message>
        <source>the longest stocked one that is no longer than its room: frame + case inside − setback</source>
        <translation>die längste vorrätige, die nicht länger ist als ihr Platz: Rahmen + Korpus innen − Rücksprung</translation>
    </message>
    <message>
        <source>%1 = %2; the longest stocked up to that: %3</source>
        <translation>%1 = %2; die längste vorrätige bis dahin: %3</translation>
    </message>
    <message>
        <source>the longest stocked one that is no longer than its room (frame + case inside − setback) and than the box</source>
        <translation>die längste vorrätige, die nicht länger ist als ihr Platz (Rahmen + Korpus innen − Rücksprung) und als der Schubkasten</translation>
    </message>
    <message>
        <source>%1 = %2; box %3; the longest stocked up to both: %4</source>
        <translation>%1 = %2; Schubkasten %3; die längste vorrätige bis zu beiden: %4</translation>
    </message>
    <message>
        <source>clearance below + box height + play under the kicker</source>
        <translation>Luft unten + Höhe des Schubkastens + Spiel unter der Kippleiste</translation>
    </message>
    <message>
        <source>from the opening&apos;s edge to the case&apos;s side, so that the runner stands flush with the opening</source>
        <translation>von der Kante der Öffnung bis zur Seite des Korpus, damit die Führung bündig mit der Öffnung steht</translation>
    </message>
    <message>
        <source>box height × change of the wood&apos;s moisture from when it is cut to the wettest air × the wood&apos;s coefficient, sides flat-sawn</source>
        <translation>Höhe des Schubkastens × Änderung der Holzfeuchte vom Zuschnitt bis zur feuchtesten Luft × Beiwert des Holzes, Seiten mit liegenden Jahresringen</translation>
    </message>
    <message>
        <source>%1 × %2 (from %3 % to %4 %)</source>
        <translation>%1 × %2 (von %3 % bis %4 %)</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: change = size × coefficient × change of moisture</source>
        <translation>Forest Products Laboratory, Wood Handbook (GTR-282), Kapitel 13: Änderung = Maß × Beiwert × Änderung der Holzfeuchte</translation>
    </message>
    <message>
        <source>the top of the runner, above the box&apos;s lower edge</source>
        <translation>die Oberkante der Führung über der Unterkante des Schubkastens</translation>
    </message>
    <message>
        <source>what the runner needs free at the back&apos;s lower edge</source>
        <translation>was die Führung unten am Rückenstück frei braucht</translation>
    </message>
    <message>
        <source>what the runner needs free at the wall&apos;s lower edge</source>
        <translation>was die Führung unten am Vorderstück frei braucht</translation>
    </message>
    <message>
        <source>where the runner&apos;s parts lie on the wall: no screw there</source>
        <translation>wo die Teile der Führung am Vorderstück liegen: dort keine Schraube</translation>
    </message>
    <message>
        <source>longest stocked length from the least to the greatest</source>
        <translation>längste vorrätige Länge zwischen der kleinsten und der größten</translation>
    </message>
    <message>
        <source>wall − recess + least penetration</source>
        <translation>Vorderstück − Kopfversenkung + kleinste Eindringtiefe</translation>
    </message>
    <message>
        <source>wall − recess + front behind the thinnest hole − least tip cover</source>
        <translation>Vorderstück − Kopfversenkung + Blende hinter der dünnsten Bohrung − kleinstes Restholz</translation>
    </message>
    <message>
        <source>screw + recess − wall</source>
        <translation>Schraube + Kopfversenkung − Vorderstück</translation>
    </message>
    <message>
        <source>front behind the hole − penetration</source>
        <translation>Blende hinter der Bohrung − Eindringtiefe</translation>
    </message>
    <message>
        <source>half the box&apos;s width</source>
        <translation>halbe Breite des Schubkastens</translation>
    </message>
    <message>
        <source>the given distance from the box&apos;s left side</source>
        <translation>der angegebene Abstand von der linken Seite des Schubkastens</translation>
    </message>
    <message>
        <source>the least allowed distance from the box&apos;s left side</source>
        <translation>der kleinste erlaubte Abstand von der linken Seite des Schubkastens</translation>
    </message>
    <message>
        <source>box&apos;s width − the given distance from its right side</source>
        <translation>Breite des Schubkastens − der angegebene Abstand von seiner rechten Seite</translation>
    </message>
    <message>
        <source>box&apos;s width − the least allowed distance from its right side</source>
        <translation>Breite des Schubkastens − der kleinste erlaubte Abstand von seiner rechten Seite</translation>
    </message>
    <message>
        <source>box&apos;s height − the given distance from its top</source>
        <translation>Höhe des Schubkastens − der angegebene Abstand von seiner Oberkante</translation>
    </message>
    <message>
        <source>box&apos;s height − the least allowed distance from its top</source>
        <translation>Höhe des Schubkastens − der kleinste erlaubte Abstand von seiner Oberkante</translation>
    </message>
    <message>
        <source>the least allowed distance from the box&apos;s lower edge</source>
        <translation>der kleinste erlaubte Abstand von der Unterkante des Schubkastens</translation>
    </message>
    <message>
        <source>top of the bottom + radius of the recess tool, which is more than head radius + margin</source>
        <translation>Oberseite des Bodens + Radius des Werkzeugs für die Kopfversenkung, das mehr braucht als Kopfradius + Zugabe</translation>
    </message>
    <message>
        <source>top of the bottom + head radius + margin</source>
        <translation>Oberseite des Bodens + Kopfradius + Zugabe</translation>
    </message>
    <message>
        <source>where front and members meet, from the front&apos;s left edge</source>
        <translation>wo Blende und Rahmenteile einander decken, von der linken Kante der Blende</translation>
    </message>
    <message>
        <source>where front and members meet, from the front&apos;s lower edge</source>
        <translation>wo Blende und Rahmenteile einander decken, von der Unterkante der Blende</translation>
    </message>
    <message>
        <source>%1 for each 1 % of moisture, from %2 when cut to %3; beyond 6 to 14 % by the wider formula</source>
        <translation>%1 je 1 % Holzfeuchte, von %2 beim Zuschnitt bis %3; außerhalb von 6 bis 14 % nach der weiter reichenden Formel</translation>
    </message>
    <message>
        <source>%1 for each 1 % of moisture, from %2 when cut to %3</source>
        <translation>%1 je 1 % Holzfeuchte, von %2 beim Zuschnitt bis %3</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>when cut + what edges have moved since, away from the row of screws that holds the front</source>
        <translation>beim Zuschnitt + was die Kanten seither gewandert sind, von der Schraubenreihe aus, die die Blende hält</translation>
    </message>
    <message>
        <source>when cut + what edges have moved since, away from the front&apos;s middle</source>
        <translation>beim Zuschnitt + was die Kanten seither gewandert sind, von der Mitte der Blende aus</translation>
    </message>
    <message>
        <source>when cut + what the fronts&apos; edges have moved since</source>
        <translation>beim Zuschnitt + was die Kanten der Blenden seither gewandert sind</translation>
    </message>
    <message>
        <source>as read by a moisture meter</source>
        <translation>wie mit einem Feuchtemesser gemessen</translation>
    </message>
    <message>
        <source>(1800 / W) × (K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)), h = relative humidity; W, K, K1, K2 by temperature</source>
        <translation>(1800 / W) × (K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)), h = relative Luftfeuchte; W, K, K1, K2 nach der Temperatur</translation>
    </message>
    <message>
        <source>in air of %1 and %2 % relative humidity: %3</source>
        <translation>in Luft von %1 und %2 % relativer Luftfeuchte: %3</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), equation 4-5</source>
        <translation>Forest Products Laboratory, Wood Handbook (GTR-282), Gleichung 4-5</translation>
    </message>
    <message>
        <source>width + change</source>
        <translation>Breite + Änderung</translation>
    </message>
    <message>
        <source>height + change</source>
        <translation>Höhe + Änderung</translation>
    </message>
    <message>
        <source>the lowest row, above the box&apos;s lower edge: it carries the front, so that all fronts of a bank go the same way</source>
        <translation>die unterste Reihe, über der Unterkante des Schubkastens: sie trägt die Blende, damit alle Blenden einer Blendenreihe in dieselbe Richtung wandern</translation>
    </message>
    <message>
        <source>the row nearest to the front&apos;s middle, from the box&apos;s left side</source>
        <translation>die Reihe, die der Mitte der Blende am nächsten ist, von der linken Seite des Schubkastens aus</translation>
    </message>
    <message>
        <source>distance from the row that holds the front × change: %1</source>
        <translation>Abstand von der Reihe, die die Blende hält × Änderung: %1</translation>
    </message>
    <message>
        <source>shank + 2 × movement at the screws, which stand in their holes&apos; middles when cut; across the grain a slot of that length does the same</source>
        <translation>Schaft + 2 × Quellen und Schwinden an den Schrauben, die beim Zuschnitt mitten in ihren Bohrungen sitzen; ein Langloch dieser Länge quer zur Faser leistet dasselbe</translation>
    </message>
    <message>
        <source>the screw&apos;s clearance hole, or the next drill above the least hole for the movement</source>
        <translation>Durchgangsbohrung der Schraube oder der nächste Bohrer über der kleinsten Bohrung für Quellen und Schwinden</translation>
    </message>
    <message>
        <source>member − overlay − overlay</source>
        <translation>Rahmenteil − Aufschlag − Aufschlag</translation>
    </message>
    <message>
        <source>the front&apos;s overlay at that side</source>
        <translation>Aufschlag der Blende an dieser Seite</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Moisture of the wood</source>
        <translation>Holzfeuchte</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Rahmenteil</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Blende</translation>
    </message>
    <message>
        <source>Overlays</source>
        <translation>Aufschläge</translation>
    </message>
    <message>
        <source>Gaps</source>
        <translation>Fugen</translation>
    </message>
    <message>
        <source>Over the season</source>
        <translation>Im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Runners</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Beschläge</translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation>Befestigungsschrauben</translation>
    </message>
    <message>
        <source>What the screws hold</source>
        <translation>Was die Schrauben halten</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Weight</source>
        <translation>Gewicht</translation>
    </message>
    <message>
        <source>Spacers, filler strips and stops</source>
        <translation>Abstandhalter, Füllleisten und Anschläge</translation>
    </message>
    <message>
        <source>Pull-out board</source>
        <translation>Ausziehplatte</translation>
    </message>
    <message>
        <source>case + what the top stands out at the left and at the right</source>
        <translation>Korpus + Überstand der Deckplatte links und rechts</translation>
    </message>
    <message>
        <source>plinth or legs + case + top</source>
        <translation>Sockel oder Füße + Korpus + Deckplatte</translation>
    </message>
    <message>
        <source>from the front to the case&apos;s outer edge − what covers that edge</source>
        <translation>von der Blende bis zur Außenkante des Korpus − was diese Kante verdeckt</translation>
    </message>
    <message>
        <source>from the front to the case&apos;s outer edge + from there to what stands beside it</source>
        <translation>von der Blende bis zur Außenkante des Korpus + von dort bis zu dem, was daneben steht</translation>
    </message>
    <message>
        <source>front&apos;s height + gap above it</source>
        <translation>Höhe der Blende + Fuge darüber</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 4, from memory: density at 12 % moisture = specific gravity × 1000 kg/m³ × 1.12</source>
        <translation>Forest Products Laboratory, Wood Handbook, Kapitel 4, aus dem Gedächtnis: Dichte bei 12 % Holzfeuchte = Dichtezahl × 1000 kg/m³ × 1,12</translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23), volume of a drawer: height less 1/8 in × inside width × inside depth</source>
        <translation>16 CFR part 1261 (ASTM F2057-23), Rauminhalt eines Schubkastens: Höhe weniger 1/8 in × lichte Breite × lichte Tiefe</translation>
    </message>
    <message>
        <source>width × height × thickness × density; the edge profile is left on</source>
        <translation>Breite × Höhe × Dicke × Dichte; das Kantenprofil ist nicht abgezogen</translation>
    </message>
    <message>
        <source>two sides, two walls and the bottom × density, all as of the front&apos;s wood</source>
        <translation>zwei Seiten, Vorder- und Hinterstück und der Boden × Dichte, alles wie aus dem Holz der Blende</translation>
    </message>
    <message>
        <source>box %1, %2</source>
        <translation>Schubkasten %1, %2</translation>
    </message>
    <message>
        <source>15 lb for each square foot (718 Pa) of the bottom, inside</source>
        <translation>15 lb je Quadratfuß (718 Pa) des Bodens, innen</translation>
    </message>
    <message>
        <source>ANSI/KCMA A161.1, drawer load</source>
        <translation>ANSI/KCMA A161.1, Last eines Schubkastens</translation>
    </message>
    <message>
        <source>8.5 lb for each cubic foot of enclosed storage</source>
        <translation>8,5 lb je Kubikfuß geschlossenen Stauraums</translation>
    </message>
    <message>
        <source>87 FR 72598 (superseded); the same density recalled for ASTM F2057-23, from memory</source>
        <translation>87 FR 72598 (abgelöst); dieselbe Dichte für ASTM F2057-23 erinnert, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>100 lb</source>
        <translation>100 lb</translation>
    </message>
    <message>
        <source>school and laboratory casework practice, drawer cycling load</source>
        <translation>Praxis für Schul- und Labormöbel, Last im Dauerversuch für Schubkästen</translation>
    </message>
    <message>
        <source>nothing is counted on</source>
        <translation>es wird mit keinem Inhalt gerechnet</translation>
    </message>
    <message>
        <source>front + the other fronts on the box + box + contents</source>
        <translation>Blende + die anderen Blenden am Kasten + Kasten + Inhalt</translation>
    </message>
    <message>
        <source>front + box + contents</source>
        <translation>Blende + Schubkasten + Inhalt</translation>
    </message>
    <message>
        <source>rating as in the catalogue: check the runner&apos;s own sheet</source>
        <translation>Tragkraft wie im Katalog: im Datenblatt der Führung nachsehen</translation>
    </message>
    <message>
        <source>the catalogue&apos;s for the runner, a pair</source>
        <translation>die des Katalogs für die Führung, ein Paar</translation>
    </message>
    <message>
        <source>the runners&apos; rating / their load</source>
        <translation>Tragkraft der Führungen / ihre Last</translation>
    </message>
    <message>
        <source>(opening&apos;s top − bottom&apos;s top − 1/8 in) × inside width × inside depth</source>
        <translation>(Oberkante der Öffnung − Oberseite des Bodens − 1/8 in) × lichte Breite × lichte Tiefe</translation>
    </message>
    <message>
        <source>drawers: %1</source>
        <translation>Schubkästen: %1</translation>
    </message>
    <message>
        <source>fronts + boxes + face frame; sides, back and top of the case are not counted</source>
        <translation>Blenden + Schubkästen + Blendrahmen; Seiten, Rückwand und Platte des Korpus sind nicht mitgezählt</translation>
    </message>
    <message>
        <source>fronts + boxes + panels, as of the fronts&apos; wood; the back and a top that lies on are not counted</source>
        <translation>Blenden + Schubkästen + Platten, wie vom Holz der Blenden; Rückwand und aufliegende Deckplatte sind nicht mitgezählt</translation>
    </message>
    <message>
        <source>sum of the contents</source>
        <translation>Summe der Inhalte</translation>
    </message>
    <message>
        <source>sum of the drawers&apos; enclosed storage</source>
        <translation>Summe des geschlossenen Stauraums der Schubkästen</translation>
    </message>
</context>
</TS>
