<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Least penetration of a screw in the front</source>
        <translation>Kleinste Eindringtiefe einer Schraube in die Blende</translation>
    </message>
    <message>
        <source>which screw lengths fit; whether a screw reaches far enough</source>
        <translation>welche Schraubenlängen passen; ob eine Schraube weit genug reicht</translation>
    </message>
    <message>
        <source>Least wood between a screw&apos;s tip and the show face</source>
        <translation>Kleinstes Restholz zwischen Schraubenspitze und Sichtseite</translation>
    </message>
    <message>
        <source>which screw lengths fit; whether enough wood is left before the tip</source>
        <translation>welche Schraubenlängen passen; ob vor der Spitze genug Holz bleibt</translation>
    </message>
    <message>
        <source>Margin between a screw&apos;s head and the bottom or the wall&apos;s edge</source>
        <translation>Abstand zwischen Schraubenkopf und Boden oder Kante des Vorderstücks</translation>
    </message>
    <message>
        <source>least hole height; screw holes at the bottom and at the wall&apos;s upper edge</source>
        <translation>kleinste Lochhöhe; Schraubenlöcher am Boden und an der Oberkante des Vorderstücks</translation>
    </message>
    <message>
        <source>Least wall under a screw&apos;s head</source>
        <translation>Kleinste Dicke des Vorderstücks unter einem Schraubenkopf</translation>
    </message>
    <message>
        <source>whether the wall under a screw&apos;s head holds</source>
        <translation>ob das Vorderstück unter dem Schraubenkopf hält</translation>
    </message>
    <message>
        <source>Least wood under a bolt&apos;s head</source>
        <translation>Kleinste Holzdicke unter dem Kopf einer Gewindeschraube</translation>
    </message>
    <message>
        <source>counterbores and how deep they may be</source>
        <translation>Senkungen und wie tief sie sein dürfen</translation>
    </message>
    <message>
        <source>Room round a bolt&apos;s head</source>
        <translation>Raum um den Kopf einer Gewindeschraube</translation>
    </message>
    <message>
        <source>counterbore and access hole diameters</source>
        <translation>Durchmesser von Senkungen und Zugangsbohrungen</translation>
    </message>
    <message>
        <source>Least gap between fronts</source>
        <translation>Kleinste Fuge zwischen Blenden</translation>
    </message>
    <message>
        <source>gaps between fronts</source>
        <translation>Fugen zwischen Blenden</translation>
    </message>
    <message>
        <source>Smallest useful opening</source>
        <translation>Kleinste brauchbare Öffnung</translation>
    </message>
    <message>
        <source>divisions, dragging</source>
        <translation>Teilungen, Ziehen</translation>
    </message>
    <message>
        <source>Wood between two holes</source>
        <translation>Holz zwischen zwei Bohrungen</translation>
    </message>
    <message>
        <source>where screws may go; holes that crowd each other</source>
        <translation>wo Schrauben sitzen dürfen; Löcher, die einander zu nahe kommen</translation>
    </message>
    <message>
        <source>Difference between gaps of one bank that still look alike</source>
        <translation>Unterschied zwischen Fugen einer Blendenreihe, die noch gleich aussehen</translation>
    </message>
    <message>
        <source>gaps down a bank, when cut and over the season</source>
        <translation>Fugen einer Blendenreihe, beim Zuschnitt und im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Least wood under a screw&apos;s head, all round its hole</source>
        <translation>Kleinste Auflage eines Schraubenkopfs rings um seine Bohrung</translation>
    </message>
    <message>
        <source>screw heads over their clearance holes</source>
        <translation>Schraubenköpfe über ihren Durchgangsbohrungen</translation>
    </message>
    <message>
        <source>How far a filler strip lies back behind the edges of its fronts</source>
        <translation>Wie weit eine Füllleiste hinter den Kanten ihrer Blenden zurückliegt</translation>
    </message>
    <message>
        <source>thickness of filler strips</source>
        <translation>Dicke der Füllleisten</translation>
    </message>
    <message>
        <source>Greatest bend of a filler strip under a hand&apos;s push</source>
        <translation>Größte Durchbiegung einer Füllleiste unter dem Druck einer Hand</translation>
    </message>
    <message>
        <source>least thickness of filler strips</source>
        <translation>Mindestdicke der Füllleisten</translation>
    </message>
    <message>
        <source>Case: width</source>
        <translation>Korpus: Breite</translation>
    </message>
    <message>
        <source>Case: height</source>
        <translation>Korpus: Höhe</translation>
    </message>
    <message>
        <source>Case: depth</source>
        <translation>Korpus: Tiefe</translation>
    </message>
    <message>
        <source>Case: construction</source>
        <translation>Korpus: Bauart</translation>
    </message>
    <message>
        <source>Case: frame: all</source>
        <translation>Korpus: Rahmen: alle</translation>
    </message>
    <message>
        <source>Case: frame thickness</source>
        <translation>Korpus: Rahmendicke</translation>
    </message>
    <message>
        <source>Case: grid</source>
        <translation>Korpus: Raster</translation>
    </message>
    <message>
        <source>Fronts: fit: all</source>
        <translation>Blenden: Sitz: alle Seiten</translation>
    </message>
    <message>
        <source>Fronts: thickness</source>
        <translation>Blenden: Dicke</translation>
    </message>
    <message>
        <source>Fronts: species</source>
        <translation>Blenden: Holzart</translation>
    </message>
    <message>
        <source>Fronts: profile: family</source>
        <translation>Blenden: Profil: Art</translation>
    </message>
    <message>
        <source>Fronts: profile: width</source>
        <translation>Blenden: Profil: Breite</translation>
    </message>
    <message>
        <source>Fronts: profile: depth</source>
        <translation>Blenden: Profil: Tiefe</translation>
    </message>
    <message>
        <source>Fronts: box: runner</source>
        <translation>Blenden: Schubkasten: Führung</translation>
    </message>
    <message>
        <source>Fronts: box: side clearance</source>
        <translation>Blenden: Schubkasten: seitliche Luft</translation>
    </message>
    <message>
        <source>Fronts: box: depth</source>
        <translation>Blenden: Schubkasten: Tiefe</translation>
    </message>
    <message>
        <source>Fronts: box: wall thickness</source>
        <translation>Blenden: Schubkasten: Dicke des Vorderstücks</translation>
    </message>
    <message>
        <source>Fronts: box: side thickness</source>
        <translation>Blenden: Schubkasten: Dicke der Seiten</translation>
    </message>
    <message>
        <source>Fronts: box: groove height</source>
        <translation>Blenden: Schubkasten: Nuthöhe</translation>
    </message>
    <message>
        <source>Fronts: box: bottom thickness</source>
        <translation>Blenden: Schubkasten: Dicke des Bodens</translation>
    </message>
    <message>
        <source>Fronts: mounting: screw</source>
        <translation>Blenden: Befestigung: Schraube</translation>
    </message>
    <message>
        <source>Fronts: mounting: recess</source>
        <translation>Blenden: Befestigung: Kopfversenkung</translation>
    </message>
    <message>
        <source>Fronts: mounting: tool diameter</source>
        <translation>Blenden: Befestigung: Werkzeugdurchmesser</translation>
    </message>
    <message>
        <source>Fronts: mounting: pattern</source>
        <translation>Blenden: Befestigung: Lochbild</translation>
    </message>
    <message>
        <source>Fronts: hardware: form</source>
        <translation>Blenden: Beschlag: Form</translation>
    </message>
    <message>
        <source>Fronts: hardware: placing</source>
        <translation>Blenden: Beschlag: Lage</translation>
    </message>
    <message>
        <source>Fronts: hardware: two past</source>
        <translation>Blenden: Beschlag: zwei ab Breite</translation>
    </message>
    <message>
        <source>Fronts: hardware: way</source>
        <translation>Blenden: Beschlag: Befestigungsart</translation>
    </message>
    <message>
        <source>face-frame</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>cherry</source>
        <translation>Kirsche</translation>
    </message>
    <message>
        <source>eased</source>
        <translation>gebrochene Kante</translation>
    </message>
    <message>
        <source>side-mounted</source>
        <translation>seitlich montiert</translation>
    </message>
    <message>
        <source>side-mounted-mm</source>
        <translation>seitlich montiert, metrisch</translation>
    </message>
    <message>
        <source>wood-screw-8</source>
        <translation>Holzschraube Nr. 8</translation>
    </message>
    <message>
        <source>wood-screw-4mm</source>
        <translation>Holzschraube 4 mm</translation>
    </message>
    <message>
        <source>four-corners</source>
        <translation>vier Ecken</translation>
    </message>
    <message>
        <source>knob-32</source>
        <translation>Knopf 32</translation>
    </message>
    <message>
        <source>knob-32-m4</source>
        <translation>Knopf 32, M4</translation>
    </message>
    <message>
        <source>centred-on-front</source>
        <translation>mittig auf der Blende</translation>
    </message>
    <message>
        <source>through-wall</source>
        <translation>durch Vorderstück und Blende</translation>
    </message>
    <message>
        <source>overlay %1</source>
        <translation>Aufschlag %1</translation>
    </message>
    <message>
        <source>findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>a new case</source>
        <translation>ein neuer Korpus</translation>
    </message>
    <message>
        <source>%1; in millimetres %2</source>
        <translation>%1; in Millimetern %2</translation>
    </message>
    <message>
        <source>shank %1, head %2 × %3, clearance %4, pilot %5</source>
        <translation>Schaft %1, Kopf %2 × %3, Durchgangsbohrung %4, Vorbohrung %5</translation>
    </message>
    <message>
        <source>shank %1, head %2 × %3, clearance %4, pilot %5, root %6</source>
        <translation>Schaft %1, Kopf %2 × %3, Durchgangsbohrung %4, Vorbohrung %5, Kern %6</translation>
    </message>
    <message>
        <source>%1, head %2 × %3, clearance %4</source>
        <translation>%1, Kopf %2 × %3, Durchgangsbohrung %4</translation>
    </message>
    <message>
        <source>base %1 × %2, bolt %3, thread %4, at least %5</source>
        <translation>Griffsockel %1 × %2, Gewindeschraube %3, Gewindetiefe %4, mindestens %5</translation>
    </message>
    <message>
        <source>plate %1 × %2, %3 screws, %4 bores, %5 mortises</source>
        <translation>Platte %1 × %2, %3 Schrauben, %4 Bohrungen, %5 Ausstemmungen</translation>
    </message>
    <message>
        <source>%1; section %2 × %3, its top %4 above the box&apos;s lower edge</source>
        <translation>%1; Querschnitt %2 × %3, Oberkante %4 über der Unterkante des Schubkastens</translation>
    </message>
    <message>
        <source>specific gravity not known</source>
        <translation>Rohdichtezahl nicht bekannt</translation>
    </message>
    <message>
        <source>specific gravity %1, green volume</source>
        <translation>Rohdichtezahl %1, Volumen grün</translation>
    </message>
    <message>
        <source>specific gravity %1, ovendry volume</source>
        <translation>Rohdichtezahl %1, Volumen darrtrocken</translation>
    </message>
    <message>
        <source>specific gravity %1, volume at 12 % moisture</source>
        <translation>Rohdichtezahl %1, Volumen bei 12 % Holzfeuchte</translation>
    </message>
    <message>
        <source>side %1, below %2, above %3, rating none</source>
        <translation>seitlich %1, unten %2, oben %3, ohne Traglast</translation>
    </message>
    <message>
        <source>side %1, below %2, above %3, rating %4</source>
        <translation>seitlich %1, unten %2, oben %3, Traglast %4</translation>
    </message>
    <message>
        <source>mounting screws</source>
        <translation>Befestigungsschrauben</translation>
    </message>
    <message>
        <source>bolts of handles</source>
        <translation>Gewindeschrauben der Griffe</translation>
    </message>
    <message>
        <source>handles</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>fittings</source>
        <translation>Beschläge</translation>
    </message>
    <message>
        <source>boxes, weights</source>
        <translation>Schubkästen, Gewichte</translation>
    </message>
    <message>
        <source>Wood Handbook, table 5-3</source>
        <translation>Wood Handbook, Tabelle 5-3</translation>
    </message>
    <message>
        <source>Wood Handbook, table 5-3, from memory</source>
        <translation>Wood Handbook, Tabelle 5-3, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>withdrawal, pilot holes, weights</source>
        <translation>Ausziehen, Vorbohrungen, Gewichte</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>Moisture content of wood in air of temperature T and humidity h</source>
        <translation>Holzfeuchte in Luft der Temperatur T und der Luftfeuchte h</translation>
    </message>
    <message>
        <source>M = (1800 / W) [K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)]; W, K, K1, K2 by T, a set each for °C and °F; about 0.1 % at best, species differ</source>
        <translation>M = (1800 / W) [K h / (1 − K h) + (K1 K h + 2 K1 K2 K² h²) / (1 + K1 K h + K1 K2 K² h²)]; W, K, K1, K2 nach T, je ein Satz für °C und °F; bestenfalls auf etwa 0,1 %, Holzarten weichen ab</translation>
    </message>
    <message>
        <source>moisture of the wood; all that changes over the season</source>
        <translation>Holzfeuchte; alles, was sich im Lauf des Jahres ändert</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, equation 4-5</source>
        <translation>Forest Products Laboratory, Wood Handbook, Gleichung 4-5</translation>
    </message>
    <message>
        <source>Change of size across the grain</source>
        <translation>Maßänderung quer zur Faser</translation>
    </message>
    <message>
        <source>ΔD = D C (M2 − M1), for moisture of 6 to 14 %; C tangential (flat-sawn) or radial (quarter-sawn)</source>
        <translation>ΔD = D C (M2 − M1), für Holzfeuchten von 6 bis 14 %; C tangential (Seitenbrett) oder radial (Riftbrett)</translation>
    </message>
    <message>
        <source>sizes, overlays and gaps over the season; movement at the screws</source>
        <translation>Maße, Aufschläge und Fugen im Lauf des Jahres; Bewegung an den Schrauben</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 13</source>
        <translation>Forest Products Laboratory, Wood Handbook, Kapitel 13</translation>
    </message>
    <message>
        <source>Change of size beyond 6 to 14 % moisture</source>
        <translation>Maßänderung außerhalb von 6 bis 14 % Holzfeuchte</translation>
    </message>
    <message>
        <source>ΔD = D (M2 − M1) / (100 FSP / S − FSP + M1), FSP 30 %, S total shrinkage in %</source>
        <translation>ΔD = D (M2 − M1) / (100 FSP / S − FSP + M1), FSP (Fasersättigung) 30 %, S Gesamtschwindmaß in %</translation>
    </message>
    <message>
        <source>moisture outside 6 to 14 %</source>
        <translation>Holzfeuchte außerhalb von 6 bis 14 %</translation>
    </message>
    <message>
        <source>Coefficient where only the total shrinkage is known</source>
        <translation>Koeffizient, wenn nur das Gesamtschwindmaß bekannt ist</translation>
    </message>
    <message>
        <source>C = 1 / (100 FSP / S − FSP + 10)</source>
        <translation>C = 1 / (100 FSP / S − FSP + 10)</translation>
    </message>
    <message>
        <source>species of the maker&apos;s own</source>
        <translation>eigene Holzarten</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, table 13-5&apos;s own rule</source>
        <translation>Forest Products Laboratory, Wood Handbook, eigene Regel der Tabelle 13-5</translation>
    </message>
    <message>
        <source>Coefficient of a rift-sawn board</source>
        <translation>Koeffizient eines Halbriftbretts</translation>
    </message>
    <message>
        <source>the mean of tangential and radial</source>
        <translation>das Mittel aus tangential und radial</translation>
    </message>
    <message>
        <source>sizes, overlays and gaps over the season</source>
        <translation>Maße, Aufschläge und Fugen im Lauf des Jahres</translation>
    </message>
    <message>
        <source>Which row of screws holds the front</source>
        <translation>Welche Schraubenreihe die Blende hält</translation>
    </message>
    <message>
        <source>the lowest; of upright grain the column nearest the middle</source>
        <translation>die unterste; bei aufrechter Faser die Spalte, die der Mitte am nächsten liegt</translation>
    </message>
    <message>
        <source>the row of screws that holds the front</source>
        <translation>die Schraubenreihe, die die Blende hält</translation>
    </message>
    <message>
        <source>Withdrawal of a wood screw from side grain, average ultimate</source>
        <translation>Ausziehwiderstand einer Holzschraube quer zur Faser, mittlerer Bruchwert</translation>
    </message>
    <message>
        <source>15 700 G² D L (lb, in) = 108.25 G² D L (N, mm); G on volume at 12 % moisture</source>
        <translation>15 700 G² D L (lb, in) = 108,25 G² D L (N, mm); G auf das Volumen bei 12 % Holzfeuchte bezogen</translation>
    </message>
    <message>
        <source>what screws hold at most; whether they stand the pull test</source>
        <translation>was Schrauben höchstens halten; ob sie die Zugprüfung bestehen</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 8</source>
        <translation>Forest Products Laboratory, Wood Handbook, Kapitel 8</translation>
    </message>
    <message>
        <source>Withdrawal of a wood screw from side grain, design value</source>
        <translation>Ausziehwiderstand einer Holzschraube quer zur Faser, Bemessungswert</translation>
    </message>
    <message>
        <source>2850 G² D L (lb, in) = 19.65 G² D L (N, mm); G on ovendry volume; about 1/5 of the ultimate</source>
        <translation>2850 G² D L (lb, in) = 19,65 G² D L (N, mm); G auf das darrtrockene Volumen bezogen; etwa 1/5 des Bruchwerts</translation>
    </message>
    <message>
        <source>what screws hold by design values; whether they stand the pull test</source>
        <translation>was Schrauben nach Bemessungswerten halten; ob sie die Zugprüfung bestehen</translation>
    </message>
    <message>
        <source>National Design Specification (NDS)</source>
        <translation>National Design Specification (NDS)</translation>
    </message>
    <message>
        <source>Bend of a filler strip between two fronts on one box</source>
        <translation>Durchbiegung einer Füllleiste zwischen zwei Blenden an einem Kasten</translation>
    </message>
    <message>
        <source>F l³ / (4 E w t³); F 10 lbf (44.5 N) in the middle of l between the outermost screws beside the gap, E 10 000 N/mm²; the wall behind it not counted</source>
        <translation>F l³ / (4 E w t³); F 10 lbf (44,5 N) in der Mitte von l zwischen den äußersten Schrauben neben der Fuge, E 10 000 N/mm²; das Vorderstück dahinter zählt nicht mit</translation>
    </message>
    <message>
        <source>bend and least thickness of a filler strip; whether it bends too much</source>
        <translation>Durchbiegung und kleinste Dicke einer Füllleiste; ob sie sich zu weit durchbiegt</translation>
    </message>
    <message>
        <source>beam on two supports with a load in its middle; stiffness of wood along the grain from the Wood Handbook, chapter 5, from memory; the hand&apos;s push is common practice</source>
        <translation>Balken auf zwei Stützen mit einer Last in der Mitte; Steifigkeit des Holzes längs zur Faser nach dem Wood Handbook, Kapitel 5, aus dem Gedächtnis; der Druck der Hand ist Werkstattbrauch</translation>
    </message>
    <message>
        <source>Gauges and lengths for which the ultimate equation was tested</source>
        <translation>Schraubennummern und Längen, für die die Bruchgleichung geprüft wurde</translation>
    </message>
    <message>
        <source>1/2 in: 1–6; 3/4 in: 2–11; 1 in: 3–12; 1 1/2 in: 5–14; 2 in: 7–16; 2 1/2 in: 9–18; 3 in: 12–20</source>
        <translation>1/2 in: 1–6; 3/4 in: 2–11; 1 in: 3–12; 1 1/2 in: 5–14; 2 in: 7–16; 2 1/2 in: 9–18; 3 in: 12–20</translation>
    </message>
    <message>
        <source>what screws hold at most</source>
        <translation>was Schrauben höchstens halten</translation>
    </message>
    <message>
        <source>Wood Handbook, chapter 8, from memory</source>
        <translation>Wood Handbook, Kapitel 8, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Thread of a wood screw</source>
        <translation>Gewinde einer Holzschraube</translation>
    </message>
    <message>
        <source>2/3 of its length (a British text: 0.6)</source>
        <translation>2/3 ihrer Länge (ein britischer Text: 0,6)</translation>
    </message>
    <message>
        <source>thread in the front</source>
        <translation>Gewinde in der Blende</translation>
    </message>
    <message>
        <source>trade reference (encyclopaedic)</source>
        <translation>Nachschlagewerk des Handwerks</translation>
    </message>
    <message>
        <source>Diameter of an inch wood screw by its gauge n</source>
        <translation>Durchmesser einer Zoll-Holzschraube nach ihrer Nummer n</translation>
    </message>
    <message>
        <source>0.060 in + 0.013 in × n</source>
        <translation>0,060 in + 0,013 in × n</translation>
    </message>
    <message>
        <source>the catalogue; what screws hold at most</source>
        <translation>der Katalog; was Schrauben höchstens halten</translation>
    </message>
    <message>
        <source>ASME B18.6.1</source>
        <translation>ASME B18.6.1</translation>
    </message>
    <message>
        <source>Specific gravity from one volume to another</source>
        <translation>Rohdichtezahl von einem Volumen auf ein anderes</translation>
    </message>
    <message>
        <source>G_M = G_b / (1 − 0.265 a G_b), a = (30 − M) / 30</source>
        <translation>G_M = G_b / (1 − 0,265 a G_b), a = (30 − M) / 30</translation>
    </message>
    <message>
        <source>withdrawal, lead holes, weights</source>
        <translation>Ausziehen, Vorbohrungen, Gewichte</translation>
    </message>
    <message>
        <source>Wood Handbook, chapter 4, from memory</source>
        <translation>Wood Handbook, Kapitel 4, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Pull on a drawer&apos;s handle</source>
        <translation>Zug am Griff eines Schubkastens</translation>
    </message>
    <message>
        <source>50 lbf (222 N)</source>
        <translation>50 lbf (222 N)</translation>
    </message>
    <message>
        <source>each screw&apos;s share of the pull test; whether the screws stand it</source>
        <translation>Anteil jeder Schraube an der Zugprüfung; ob die Schrauben sie bestehen</translation>
    </message>
    <message>
        <source>Architectural Woodwork Standards, 1st ed., 2009</source>
        <translation>Architectural Woodwork Standards, 1. Auflage, 2009</translation>
    </message>
    <message>
        <source>Least distance of the rows of screws that hold a tall solid front</source>
        <translation>Kleinster Abstand der Schraubenreihen, die eine hohe Blende aus Massivholz halten</translation>
    </message>
    <message>
        <source>a quarter of its height, from 8 in (203 mm) high, grain from left to right</source>
        <translation>ein Viertel ihrer Höhe, ab 203 mm (8 in) Höhe, Faser von links nach rechts</translation>
    </message>
    <message>
        <source>rows of screws too near each other</source>
        <translation>Schraubenreihen zu nah beieinander</translation>
    </message>
    <message>
        <source>Share of a pull that falls to one screw</source>
        <translation>Anteil eines Zugs, der auf eine Schraube entfällt</translation>
    </message>
    <message>
        <source>1/n + turning about the screws&apos; middle, as of a stiff front on equal screws</source>
        <translation>1/n + Drehung um die Mitte der Schrauben, wie bei einer steifen Blende auf gleichen Schrauben</translation>
    </message>
    <message>
        <source>each screw&apos;s share of the pull test</source>
        <translation>Anteil jeder Schraube an der Zugprüfung</translation>
    </message>
    <message>
        <source>Pilot hole, ovendry specific gravity above 0.60</source>
        <translation>Vorbohrung, darrtrockene Rohdichtezahl über 0,60</translation>
    </message>
    <message>
        <source>0.90 × root diameter</source>
        <translation>0,90 × Kerndurchmesser</translation>
    </message>
    <message>
        <source>pilot holes: whether one is needed, and of what size</source>
        <translation>Vorbohrungen: ob eine nötig ist und wie groß</translation>
    </message>
    <message>
        <source>National Design Specification (NDS), lead holes for withdrawal</source>
        <translation>National Design Specification (NDS), Vorbohrungen gegen Ausziehen</translation>
    </message>
    <message>
        <source>Pilot hole, ovendry specific gravity above 0.50 up to 0.60</source>
        <translation>Vorbohrung, darrtrockene Rohdichtezahl über 0,50 bis 0,60</translation>
    </message>
    <message>
        <source>0.70 × root diameter</source>
        <translation>0,70 × Kerndurchmesser</translation>
    </message>
    <message>
        <source>Pilot hole, ovendry specific gravity 0.50 or less</source>
        <translation>Vorbohrung, darrtrockene Rohdichtezahl 0,50 oder weniger</translation>
    </message>
    <message>
        <source>none required; 0.70 × root diameter is advised</source>
        <translation>keine verlangt; 0,70 × Kerndurchmesser wird empfohlen</translation>
    </message>
    <message>
        <source>pilot holes</source>
        <translation>Vorbohrungen</translation>
    </message>
    <message>
        <source>National Design Specification (NDS); advised by the older rule for softwoods</source>
        <translation>National Design Specification (NDS); nach der älteren Regel für Nadelhölzer empfohlen</translation>
    </message>
    <message>
        <source>Pilot hole by the older rule</source>
        <translation>Vorbohrung nach der älteren Regel</translation>
    </message>
    <message>
        <source>hardwoods 0.90 × root diameter, softwoods 0.70 × root diameter</source>
        <translation>Laubhölzer 0,90 × Kerndurchmesser, Nadelhölzer 0,70 × Kerndurchmesser</translation>
    </message>
    <message>
        <source>pilot holes that are too large or too small</source>
        <translation>Vorbohrungen, die zu groß oder zu klein sind</translation>
    </message>
    <message>
        <source>NDS before 1962, Wood Handbook</source>
        <translation>NDS vor 1962, Wood Handbook</translation>
    </message>
    <message>
        <source>How far a pilot drill may be off its rule</source>
        <translation>Wie weit ein Vorbohrer von seiner Regel abweichen darf</translation>
    </message>
    <message>
        <source>half of 1/64 in</source>
        <translation>die Hälfte von 1/64 in</translation>
    </message>
    <message>
        <source>Root diameter where the catalogue gives none</source>
        <translation>Kerndurchmesser, wenn der Katalog keinen nennt</translation>
    </message>
    <message>
        <source>2/3 of the shank</source>
        <translation>2/3 des Schafts</translation>
    </message>
    <message>
        <source>Wood Handbook: about two thirds for most sizes</source>
        <translation>Wood Handbook: bei den meisten Größen etwa zwei Drittel</translation>
    </message>
    <message>
        <source>Clearance hole of a screw or bolt</source>
        <translation>Durchgangsbohrung einer Schraube oder Gewindeschraube</translation>
    </message>
    <message>
        <source>not less than its diameter</source>
        <translation>nicht kleiner als ihr Durchmesser</translation>
    </message>
    <message>
        <source>holes that a screw or a bolt does not go through</source>
        <translation>Löcher, durch die eine Schraube nicht geht</translation>
    </message>
    <message>
        <source>ISO 273 and ASME B18.2.8 give more in every class</source>
        <translation>ISO 273 und ASME B18.2.8 geben in jeder Klasse mehr</translation>
    </message>
    <message>
        <source>Least distance of a screw to the front&apos;s edge, across the grain</source>
        <translation>Kleinster Abstand einer Schraube zum Rand der Blende, quer zur Faser</translation>
    </message>
    <message>
        <source>2.5 D</source>
        <translation>2,5 D</translation>
    </message>
    <message>
        <source>screws near the front&apos;s edges and ends</source>
        <translation>Schrauben nahe an Kanten und Hirnenden der Blende</translation>
    </message>
    <message>
        <source>NDS commentary, from memory</source>
        <translation>Kommentar zur NDS, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Least distance of a screw to the front&apos;s end, along the grain</source>
        <translation>Kleinster Abstand einer Schraube zum Ende der Blende, längs zur Faser</translation>
    </message>
    <message>
        <source>5 D with a pilot hole, 10 D without</source>
        <translation>5 D mit Vorbohrung, 10 D ohne</translation>
    </message>
    <message>
        <source>Least spacing of screws in a row along the grain</source>
        <translation>Kleinster Abstand von Schrauben einer Reihe längs zur Faser</translation>
    </message>
    <message>
        <source>10 D with a pilot hole, 15 D without</source>
        <translation>10 D mit Vorbohrung, 15 D ohne</translation>
    </message>
    <message>
        <source>screws near each other</source>
        <translation>Schrauben nahe beieinander</translation>
    </message>
    <message>
        <source>Screws count as in one row where they are nearer across the grain than</source>
        <translation>Schrauben gelten als eine Reihe, wenn sie quer zur Faser näher liegen als</translation>
    </message>
    <message>
        <source>3 D with a pilot hole, 5 D without</source>
        <translation>3 D mit Vorbohrung, 5 D ohne</translation>
    </message>
    <message>
        <source>Least thread of a bolt in the handle</source>
        <translation>Kleinste Einschraubtiefe einer Gewindeschraube im Griff</translation>
    </message>
    <message>
        <source>1 × the bolt&apos;s diameter</source>
        <translation>1 × Durchmesser der Gewindeschraube</translation>
    </message>
    <message>
        <source>thread in the handle</source>
        <translation>Gewinde im Griff</translation>
    </message>
    <message>
        <source>machine design practice, from memory</source>
        <translation>Praxis des Maschinenbaus, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Weight of wood at 12 % moisture</source>
        <translation>Gewicht von Holz bei 12 % Holzfeuchte</translation>
    </message>
    <message>
        <source>G × 1000 kg/m³ × 1.12</source>
        <translation>G × 1000 kg/m³ × 1,12</translation>
    </message>
    <message>
        <source>weights of front, box and case</source>
        <translation>Gewichte von Blende, Schubkasten und Korpus</translation>
    </message>
    <message>
        <source>Load of a drawer, household</source>
        <translation>Last eines Schubkastens, Haushalt</translation>
    </message>
    <message>
        <source>15 lb/ft² (718 Pa) of the bottom, inside</source>
        <translation>15 lb/ft² (718 Pa) des Bodens, innen</translation>
    </message>
    <message>
        <source>weight of what a drawer holds</source>
        <translation>Gewicht dessen, was ein Schubkasten aufnimmt</translation>
    </message>
    <message>
        <source>ANSI/KCMA A161.1, drawer load</source>
        <translation>ANSI/KCMA A161.1, Last eines Schubkastens</translation>
    </message>
    <message>
        <source>Load of a drawer for clothing</source>
        <translation>Last eines Schubkastens für Kleidung</translation>
    </message>
    <message>
        <source>8.5 lb/ft³ of enclosed storage</source>
        <translation>8,5 lb/ft³ des umschlossenen Stauraums</translation>
    </message>
    <message>
        <source>87 FR 72598, superseded before it took effect; recalled for ASTM F2057-23</source>
        <translation>87 FR 72598, vor Inkrafttreten ersetzt; für ASTM F2057-23 aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Load of a drawer in school and laboratory</source>
        <translation>Last eines Schubkastens in Schule und Labor</translation>
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
        <source>Load of the runners</source>
        <translation>Last der Führungen</translation>
    </message>
    <message>
        <source>front + box + contents, at most the rating</source>
        <translation>Blende + Schubkasten + Inhalt, höchstens die Traglast</translation>
    </message>
    <message>
        <source>load on the runners, beside their rating</source>
        <translation>Last auf den Führungen, neben ihrer Tragkraft</translation>
    </message>
    <message>
        <source>rating as in the catalogue; check the runner&apos;s own sheet</source>
        <translation>Traglast wie im Katalog; das Datenblatt der Führung prüfen</translation>
    </message>
    <message>
        <source>Enclosed storage of a drawer</source>
        <translation>Umschlossener Stauraum eines Schubkastens</translation>
    </message>
    <message>
        <source>(bottom to lowest obstruction − 1/8 in) × inside width × inside depth</source>
        <translation>(Boden bis zum tiefsten Hindernis − 1/8 in) × innere Breite × innere Tiefe</translation>
    </message>
    <message>
        <source>enclosed storage</source>
        <translation>geschlossener Stauraum</translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23)</source>
        <translation>16 CFR, Teil 1261 (ASTM F2057-23)</translation>
    </message>
    <message>
        <source>Clothing storage in the scope of the stability rule</source>
        <translation>Kleidermöbel im Geltungsbereich der Standsicherheitsregel</translation>
    </message>
    <message>
        <source>27 in (686 mm) tall, 30 lb (13.6 kg) and 3.2 ft³ (90.6 dm³) or more, all three</source>
        <translation>27 in (686 mm) hoch, 30 lb (13,6 kg) und 3,2 ft³ (90,6 dm³) oder mehr, alle drei</translation>
    </message>
    <message>
        <source>the caution to anchor the case</source>
        <translation>die Mahnung, den Korpus an der Wand zu sichern</translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23), for units made after 2023-09-01</source>
        <translation>16 CFR, Teil 1261 (ASTM F2057-23), für Möbel, die nach dem 2023-09-01 gebaut sind</translation>
    </message>
    <message>
        <source>When the caution to anchor a case is told</source>
        <translation>Wann gemahnt wird, einen Korpus an der Wand zu sichern</translation>
    </message>
    <message>
        <source>27 in tall or more; or 30 lb and 3.2 ft³ or more of what is known</source>
        <translation>27 in hoch oder höher; oder 30 lb und 3,2 ft³ oder mehr von dem, was bekannt ist</translation>
    </message>
    <message>
        <source>common practice, no source: more cautious than the rule&apos;s scope</source>
        <translation>allgemeine Praxis, ohne Quelle: vorsichtiger als der Geltungsbereich der Regel</translation>
    </message>
    <message>
        <source>common practice, no source; check the runner&apos;s own sheet</source>
        <translation>allgemeine Praxis, ohne Quelle; im Datenblatt der Führung nachsehen</translation>
    </message>
    <message>
        <source>Length of a runner</source>
        <translation>Länge einer Führung</translation>
    </message>
    <message>
        <source>the longest stocked one up to frame + case inside − setback, and up to the box where its depth is given; wooden ones are cut to the case</source>
        <translation>die längste vorrätige bis Rahmen + Korpus innen − Rücksprung, und bis zum Schubkasten, wenn seine Tiefe angegeben ist; hölzerne werden auf den Korpus zugeschnitten</translation>
    </message>
    <message>
        <source>length of a runner; whether one fits the case and the box</source>
        <translation>Länge einer Führung; ob eine in Korpus und Schubkasten passt</translation>
    </message>
    <message>
        <source>Depth of a box on under-mounted runners</source>
        <translation>Tiefe eines Schubkastens auf Unterflurführungen</translation>
    </message>
    <message>
        <source>the runner&apos;s length: hooks hold the box&apos;s back</source>
        <translation>die Länge der Führung: Haken halten das Rückenstück</translation>
    </message>
    <message>
        <source>whether the box&apos;s back is where the runner&apos;s hooks are</source>
        <translation>ob das Hinterstück dort ist, wo die Haken der Führung sind</translation>
    </message>
    <message>
        <source>Side clearance beside sides of another thickness</source>
        <translation>Seitliche Luft neben Seiten anderer Dicke</translation>
    </message>
    <message>
        <source>the kind&apos;s side clearance + sides that it is for − sides</source>
        <translation>seitliche Luft der Art + Seiten, für die sie gedacht ist − Seiten</translation>
    </message>
    <message>
        <source>whether the box leaves its runners their side clearance</source>
        <translation>ob der Schubkasten seinen Führungen ihr seitliches Spiel lässt</translation>
    </message>
    <message>
        <source>Clear zone of a runner in the box wall</source>
        <translation>Freiraum einer Führung im Vorderstück</translation>
    </message>
    <message>
        <source>no screw within the zone + the radius of the recess tool</source>
        <translation>keine Schraube im Freiraum + Halbmesser des Senkwerkzeugs</translation>
    </message>
    <message>
        <source>where screws are allowed; holes that meet a runner</source>
        <translation>wo Schrauben zulässig sind; Bohrungen, die eine Führung treffen</translation>
    </message>
    <message>
        <source>Bottom over a runner</source>
        <translation>Boden über einer Führung</translation>
    </message>
    <message>
        <source>its underside no lower than the runner&apos;s top and the notches</source>
        <translation>seine Unterseite nicht tiefer als die Oberkante der Führung und die Ausklinkungen</translation>
    </message>
    <message>
        <source>whether the bottom lies in a runner&apos;s way</source>
        <translation>ob der Boden einer Führung im Weg ist</translation>
    </message>
    <message>
        <source>Kicker over a wooden drawer</source>
        <translation>Kippleiste über einem hölzernen Schubkasten</translation>
    </message>
    <message>
        <source>underside = clearance below + box + play, above the opening&apos;s lower edge</source>
        <translation>Unterseite = Luft unten + Schubkasten + Spiel, über der Unterkante der Öffnung</translation>
    </message>
    <message>
        <source>height of the kicker</source>
        <translation>Höhe der Kippleiste</translation>
    </message>
    <message>
        <source>A box that sticks in damp air</source>
        <translation>Ein Schubkasten, der in feuchter Luft klemmt</translation>
    </message>
    <message>
        <source>box height × change of its sides up to the wettest air, flat-sawn, is less than the play above</source>
        <translation>Höhe des Schubkastens × Änderung seiner Seiten bis zur feuchtesten Luft, liegende Jahresringe, ist weniger als das Spiel darüber</translation>
    </message>
    <message>
        <source>what a box gains in height; whether it sticks in damp air</source>
        <translation>was ein Schubkasten an Höhe gewinnt; ob er in feuchter Luft klemmt</translation>
    </message>
    <message>
        <source>Length at which a pull-out board jams</source>
        <translation>Länge, bei der eine Ausziehplatte verkantet</translation>
    </message>
    <message>
        <source>2 × friction × distance of the pull from its middle; friction 0.5</source>
        <translation>2 × Reibung × Abstand des Zuges von ihrer Mitte; Reibung 0,5</translation>
    </message>
    <message>
        <source>whether a board jams; how far out it is safe</source>
        <translation>ob eine Platte verkantet; wie weit ihr Auszug sicher ist</translation>
    </message>
    <message>
        <source>statics; friction of dry wood 0.5, the upper end of 0.3 to 0.5: Wood Handbook, 1999, chapter 4, from memory</source>
        <translation>Statik; Reibung trockenen Holzes 0,5, das obere Ende von 0,3 bis 0,5: Wood Handbook, 1999, Kapitel 4, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>What a board is guided over at least when it is out</source>
        <translation>Worüber eine herausgezogene Platte mindestens geführt ist</translation>
    </message>
    <message>
        <source>5/4 × the length at which it jams</source>
        <translation>5/4 × die Länge, bei der sie verkantet</translation>
    </message>
    <message>
        <source>how far out a board is safe</source>
        <translation>wie weit der Auszug einer Platte sicher ist</translation>
    </message>
    <message>
        <source>How far a board&apos;s front edge may sink</source>
        <translation>Wie weit die Vorderkante einer Platte absinken darf</translation>
    </message>
    <message>
        <source>1/4 in (6.35 mm) by play in height × (pull-out + frame) / lever</source>
        <translation>6,35 mm (1/4 in) nach Spiel in der Höhe × (Auszug + Rahmendicke) / Hebelarm</translation>
    </message>
    <message>
        <source>Furring that keeper strips are screwed down into</source>
        <translation>Auffütterung, in die Halteleisten von oben geschraubt sind</translation>
    </message>
    <message>
        <source>at least 2 × 2.5 D thick</source>
        <translation>mindestens 2 × 2,5 D dick</translation>
    </message>
    <message>
        <source>whether the screws may split the furring</source>
        <translation>ob die Schrauben die Auffütterung spalten können</translation>
    </message>
    <message>
        <source>Overlay front</source>
        <translation>Aufliegende Blende</translation>
    </message>
    <message>
        <source>opening + overlay at each side</source>
        <translation>Öffnung + Aufschlag an jeder Seite</translation>
    </message>
    <message>
        <source>width and height of a front</source>
        <translation>Breite und Höhe einer Blende</translation>
    </message>
    <message>
        <source>A front with a flat back</source>
        <translation>Eine Blende mit ebener Rückseite</translation>
    </message>
    <message>
        <source>all sides in the opening or all on the frame, unless rabbeted</source>
        <translation>alle Seiten in der Öffnung oder alle auf dem Rahmen, wenn nicht gefälzt</translation>
    </message>
    <message>
        <source>fronts both in the opening and on the frame</source>
        <translation>Blenden teils in der Öffnung, teils auf dem Rahmen</translation>
    </message>
    <message>
        <source>Edge profiles</source>
        <translation>Kantenprofile</translation>
    </message>
    <message>
        <source>square, straight, quarter ellipses: see core/fronts</source>
        <translation>scharfkantig, gerade, Viertelellipsen: siehe core/fronts</translation>
    </message>
    <message>
        <source>edge thickness, field, tip cover</source>
        <translation>Kantendicke, Spiegel, Restholz</translation>
    </message>
    <message>
        <source>plain geometry</source>
        <translation>reine Geometrie</translation>
    </message>
    <message>
        <source>Optical centre of a handle</source>
        <translation>Optische Mitte eines Griffs</translation>
    </message>
    <message>
        <source>1/20 of the height above the middle</source>
        <translation>1/20 der Höhe über der Mitte</translation>
    </message>
    <message>
        <source>height of handles</source>
        <translation>Höhe der Griffe</translation>
    </message>
    <message>
        <source>Two handles on a wide front</source>
        <translation>Zwei Griffe auf einer breiten Blende</translation>
    </message>
    <message>
        <source>each at 25 % of the width from its side</source>
        <translation>jeder bei 25 % der Breite von seiner Seite aus</translation>
    </message>
    <message>
        <source>place of handles across the front</source>
        <translation>Platz der Griffe in der Breite der Blende</translation>
    </message>
    <message>
        <source>plan, number panel, drawings</source>
        <translation>Plan, Zahlenfeld, Zeichnungen</translation>
    </message>
    <message>
        <source>published</source>
        <translation>veröffentlicht</translation>
    </message>
    <message>
        <source>from memory</source>
        <translation>aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>the maker&apos;s</source>
        <translation>vom Möbelbauer</translation>
    </message>
    <message>
        <source>Equations and fixed values</source>
        <translation>Gleichungen und feste Werte</translation>
    </message>
    <message>
        <source>How each number follows</source>
        <translation>Wie jede Zahl folgt</translation>
    </message>
    <message>
        <source>Limits that the maker can change</source>
        <translation>Grenzwerte, die Sie ändern können</translation>
    </message>
    <message>
        <source>What a new case begins with</source>
        <translation>Womit ein neuer Korpus beginnt</translation>
    </message>
    <message>
        <source>The program&apos;s catalogue</source>
        <translation>Der Katalog des Programms</translation>
    </message>
</context>
</TS>
