<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>Fit furring beside board %1</source>
        <translation>Neben Platte %1 auffüttern</translation>
    </message>
    <message>
        <source>Use brads of %1 beside board %2</source>
        <translation>Neben Platte %2 Stifte von %1 nehmen</translation>
    </message>
    <message>
        <source>Use brads of %1 at the left and %2 at the right of board %3</source>
        <translation>Stifte von %1 links und %2 rechts der Platte %3 nehmen</translation>
    </message>
    <message>
        <source>Use screws of %1 in the keeper strips over board %2</source>
        <translation>In den Halteleisten über Platte %2 Schrauben von %1 nehmen</translation>
    </message>
    <message>
        <source>Use screws of %1 in the left and %2 in the right keeper strip over board %3</source>
        <translation>Schrauben von %1 in der linken und %2 in der rechten Halteleiste über Platte %3 nehmen</translation>
    </message>
    <message>
        <source>Screw the keeper strips over board %1 sideways through the furring</source>
        <translation>Die Halteleisten über Platte %1 seitlich durch die Auffütterung schrauben</translation>
    </message>
    <message>
        <source>Let board %1 lie in the middle of its opening&apos;s height</source>
        <translation>Platte %1 in die Mitte ihrer Öffnungshöhe legen</translation>
    </message>
    <message>
        <source>Make board %1 %2 deep</source>
        <translation>Platte %1 %2 tief machen</translation>
    </message>
    <message>
        <source>Make the keeper strips over board %1 %2 wide</source>
        <translation>Die Halteleisten über Platte %1 %2 breit machen</translation>
    </message>
    <message>
        <source>Stop board %1 at %2</source>
        <translation>Platte %1 bei %2 anhalten</translation>
    </message>
    <message>
        <source>Leave %1 of play on each side of board %2</source>
        <translation>Auf jeder Seite von Platte %2 %1 Spiel lassen</translation>
    </message>
    <message>
        <source>Leave %1 of play over board %2</source>
        <translation>Über Platte %2 %1 Spiel lassen</translation>
    </message>
    <message>
        <source>Make the runners of board %1 of the board&apos;s own wood</source>
        <translation>Die Führungen von Platte %1 aus dem Holz der Platte machen</translation>
    </message>
    <message>
        <source>Bolt the handle of %1 without a counterbore, with %2 bolts</source>
        <translation>Den Griff von %1 ohne Senkung anschrauben, mit Gewindeschrauben von %2</translation>
    </message>
    <message>
        <source>Bolt the handle of the whole case without a counterbore, with %1 bolts</source>
        <translation>Alle Griffe des Korpus ohne Senkung anschrauben, mit Gewindeschrauben von %1</translation>
    </message>
    <message>
        <source>Counterbore %1 %2 deep for %3 bolts</source>
        <translation>%1 mit einer zylindrischen Senkung von %2 Tiefe für Gewindeschrauben von %3 versehen</translation>
    </message>
    <message>
        <source>Counterbore the whole case %1 deep for %2 bolts</source>
        <translation>Den ganzen Korpus mit zylindrischen Senkungen von %1 Tiefe für Gewindeschrauben von %2 versehen</translation>
    </message>
    <message>
        <source>Choose the bolts of %1 from stock</source>
        <translation>Die Gewindeschrauben von %1 aus dem Vorrat wählen</translation>
    </message>
    <message>
        <source>Choose the bolts of the whole case from stock</source>
        <translation>Die Gewindeschrauben des ganzen Korpus aus dem Vorrat wählen</translation>
    </message>
    <message>
        <source>Choose bolts and counterbore of %1 from stock</source>
        <translation>Gewindeschrauben und Senkung von %1 nach dem Vorrat wählen</translation>
    </message>
    <message>
        <source>Choose bolts and counterbore of the whole case from stock</source>
        <translation>Gewindeschrauben und Senkung des ganzen Korpus nach dem Vorrat wählen</translation>
    </message>
    <message>
        <source>Use %1 bolts in %2</source>
        <translation>In %2 Gewindeschrauben von %1 nehmen</translation>
    </message>
    <message>
        <source>Use %1 bolts in the whole case</source>
        <translation>Im ganzen Korpus Gewindeschrauben von %1 nehmen</translation>
    </message>
    <message>
        <source>Bolt the handle of %1 through wall and front</source>
        <translation>Den Griff von %1 durch Vorderstück und Blende schrauben</translation>
    </message>
    <message>
        <source>Bolt the handle of the whole case through wall and front</source>
        <translation>Alle Griffe des Korpus durch Vorderstück und Blende schrauben</translation>
    </message>
    <message>
        <source>Bolt the handle of %1 to the front alone, the head in a counterbore</source>
        <translation>Den Griff von %1 nur an die Blende schrauben, den Kopf in zylindrischer Senkung</translation>
    </message>
    <message>
        <source>Bolt the handle of the whole case to the front alone, the head in a counterbore</source>
        <translation>Alle Griffe des Korpus nur an die Blenden schrauben, den Kopf in zylindrischer Senkung</translation>
    </message>
    <message>
        <source>Bolt the handle of %1 to the front alone, with an access hole in the wall</source>
        <translation>Den Griff von %1 nur an die Blende schrauben, mit Zugangsbohrung im Vorderstück</translation>
    </message>
    <message>
        <source>Bolt the handle of the whole case to the front alone, with an access hole in the wall</source>
        <translation>Alle Griffe des Korpus nur an die Blenden schrauben, mit Zugangsbohrung im Vorderstück</translation>
    </message>
    <message>
        <source>Leave the edges of %1 square</source>
        <translation>Die Kanten von %1 scharf lassen</translation>
    </message>
    <message>
        <source>Leave the edges of the whole case square</source>
        <translation>Im ganzen Korpus die Kanten scharf lassen</translation>
    </message>
    <message>
        <source>Give the box of %1 the runner&apos;s own clearances</source>
        <translation>Dem Schubkasten von %1 die Luft geben, die seine Führung verlangt</translation>
    </message>
    <message>
        <source>Give the box of the whole case the runner&apos;s own clearances</source>
        <translation>Allen Schubkästen des Korpus die Luft geben, die ihre Führung verlangt</translation>
    </message>
    <message>
        <source>Give the box of %1 the runner&apos;s own clearances and the height they leave</source>
        <translation>Dem Schubkasten von %1 die Luft geben, die seine Führung verlangt, und die Höhe, die dann bleibt</translation>
    </message>
    <message>
        <source>Give the box of the whole case the runner&apos;s own clearances and the height they leave</source>
        <translation>Allen Schubkästen des Korpus die Luft geben, die ihre Führung verlangt, und die Höhe, die dann bleibt</translation>
    </message>
    <message>
        <source>Make the box of %1 %2 deep</source>
        <translation>Den Schubkasten von %1 %2 tief machen</translation>
    </message>
    <message>
        <source>Make the box of the whole case %1 deep</source>
        <translation>Alle Schubkästen des Korpus %1 tief machen</translation>
    </message>
    <message>
        <source>Groove the box of %1 %2 up</source>
        <translation>Den Schubkasten von %1 in %2 Höhe nuten</translation>
    </message>
    <message>
        <source>Groove the box of the whole case %1 up</source>
        <translation>Alle Schubkästen des Korpus in %1 Höhe nuten</translation>
    </message>
    <message>
        <source>Make the box of %1 as tall as its opening allows</source>
        <translation>Den Schubkasten von %1 so hoch machen, wie die Öffnung zulässt</translation>
    </message>
    <message>
        <source>Make the box of the whole case as tall as its opening allows</source>
        <translation>Alle Schubkästen des Korpus so hoch machen, wie ihre Öffnung zulässt</translation>
    </message>
    <message>
        <source>Make the edge profile of %1 %2 wide</source>
        <translation>Das Kantenprofil von %1 %2 breit machen</translation>
    </message>
    <message>
        <source>Make the edge profile of the whole case %1 wide</source>
        <translation>Im ganzen Korpus das Kantenprofil %1 breit machen</translation>
    </message>
    <message>
        <source>Make the edge profile of %1 %2 deep</source>
        <translation>Das Kantenprofil von %1 %2 tief machen</translation>
    </message>
    <message>
        <source>Make the edge profile of the whole case %1 deep</source>
        <translation>Im ganzen Korpus das Kantenprofil %1 tief machen</translation>
    </message>
    <message>
        <source>Let filler strips lie only %1 back</source>
        <translation>Füllleisten nur %1 zurücksetzen</translation>
    </message>
    <message>
        <source>One front again over the box of %1</source>
        <translation>Wieder eine Blende vor dem Kasten von %1</translation>
    </message>
    <message>
        <source>Make the overlays of %1 at left and right %2</source>
        <translation>Die Aufschläge von %1 links und rechts %2 groß machen</translation>
    </message>
    <message>
        <source>Make the overlays of %1 at bottom and top %2</source>
        <translation>Die Aufschläge von %1 unten und oben %2 groß machen</translation>
    </message>
    <message>
        <source>Make a drawer of %1</source>
        <translation>Aus %1 eine Schublade machen</translation>
    </message>
    <message>
        <source>Make a door of %1</source>
        <translation>Aus %1 eine Tür machen</translation>
    </message>
    <message>
        <source>Leave the opening of %1 open</source>
        <translation>Die Öffnung von %1 offen lassen</translation>
    </message>
    <message>
        <source>Make the front of %1 %2 thick</source>
        <translation>Die Blende von %1 %2 dick machen</translation>
    </message>
    <message>
        <source>Leave the fitting of %1 away: %2</source>
        <translation>Den Beschlag von %1 weglassen: %2</translation>
    </message>
    <message>
        <source>Leave the fitting of the whole case away: %1</source>
        <translation>Den Beschlag des ganzen Korpus weglassen: %1</translation>
    </message>
    <message>
        <source>Place the fitting of %1 %2 below the top edge</source>
        <translation>Den Beschlag von %1 %2 unter der Oberkante anordnen</translation>
    </message>
    <message>
        <source>Place the fitting of the whole case %1 below the top edge</source>
        <translation>Den Beschlag des ganzen Korpus %1 unter der Oberkante anordnen</translation>
    </message>
    <message>
        <source>Place the fitting of %1 %2 from the side</source>
        <translation>Den Beschlag von %1 %2 von der Seite anordnen</translation>
    </message>
    <message>
        <source>Place the fitting of the whole case %1 from the side</source>
        <translation>Den Beschlag des ganzen Korpus %1 von der Seite anordnen</translation>
    </message>
    <message>
        <source>Place the fitting of %1 in the middle</source>
        <translation>Den Beschlag von %1 in der Mitte anordnen</translation>
    </message>
    <message>
        <source>Place the fitting of the whole case in the middle</source>
        <translation>Den Beschlag des ganzen Korpus in der Mitte anordnen</translation>
    </message>
    <message>
        <source>Hold the fitting of %1 with %2 screws</source>
        <translation>Den Beschlag von %1 mit Schrauben von %2 halten</translation>
    </message>
    <message>
        <source>Hold the fitting of the whole case with %1 screws</source>
        <translation>Den Beschlag des ganzen Korpus mit Schrauben von %1 halten</translation>
    </message>
    <message>
        <source>Use one handle everywhere instead of %1: %2</source>
        <translation>Überall einen Griff statt %1 verwenden: %2</translation>
    </message>
    <message>
        <source>Make the overlays between %1 and %2 %3</source>
        <translation>Zwischen %1 und %2 einen Aufschlag von je %3 geben</translation>
    </message>
    <message>
        <source>Make all such overlays of the case %1</source>
        <translation>Allen solchen Aufschlägen des Korpus %1 geben</translation>
    </message>
    <message>
        <source>Leave a gap of %1 between %2 and %3</source>
        <translation>Zwischen %2 und %3 eine Fuge von %1 lassen</translation>
    </message>
    <message>
        <source>Let the gaps of bank %1 follow the case</source>
        <translation>Die Fugen der Blendenreihe %1 dem Korpus folgen lassen</translation>
    </message>
    <message>
        <source>Make all gaps of bank %1 %2</source>
        <translation>Alle Fugen der Blendenreihe %1 auf %2 bringen</translation>
    </message>
    <message>
        <source>Centre the handle of %1 in the field</source>
        <translation>Den Griff von %1 mittig in den Spiegel setzen</translation>
    </message>
    <message>
        <source>Centre the handle of the whole case in the field</source>
        <translation>Alle Griffe des Korpus mittig in den Spiegel setzen</translation>
    </message>
    <message>
        <source>Centre the handle of %1 on the front</source>
        <translation>Den Griff von %1 mittig auf die Blende setzen</translation>
    </message>
    <message>
        <source>Centre the handle of the whole case on the front</source>
        <translation>Alle Griffe des Korpus mittig auf die Blende setzen</translation>
    </message>
    <message>
        <source>Place the handle of %1 at the optical centre</source>
        <translation>Den Griff von %1 in die optische Mitte setzen</translation>
    </message>
    <message>
        <source>Place the handle of the whole case at the optical centre</source>
        <translation>Alle Griffe des Korpus in die optische Mitte setzen</translation>
    </message>
    <message>
        <source>Place the handle of %1 %2 below the top edge</source>
        <translation>Den Griff von %1 %2 unter die Oberkante setzen</translation>
    </message>
    <message>
        <source>Place the handle of the whole case %1 below the top edge</source>
        <translation>Alle Griffe des Korpus %1 unter die Oberkante setzen</translation>
    </message>
    <message>
        <source>Place the two handles of %1 at a quarter of the width</source>
        <translation>Die zwei Griffe von %1 in die Viertel der Breite setzen</translation>
    </message>
    <message>
        <source>Place the two handles of the whole case at a quarter of the width</source>
        <translation>Im ganzen Korpus die zwei Griffe in die Viertel der Breite setzen</translation>
    </message>
    <message>
        <source>Use two handles on %1</source>
        <translation>Zwei Griffe an %1 verwenden</translation>
    </message>
    <message>
        <source>Use two handles on the whole case</source>
        <translation>Zwei Griffe am ganzen Korpus verwenden</translation>
    </message>
    <message>
        <source>Use one handle on %1</source>
        <translation>Auf %1 nur einen Griff nehmen</translation>
    </message>
    <message>
        <source>Use one handle on the whole case</source>
        <translation>Im ganzen Korpus nur einen Griff je Blende nehmen</translation>
    </message>
    <message>
        <source>Use another handle on %1: %2</source>
        <translation>Auf %1 einen anderen Griff nehmen: %2</translation>
    </message>
    <message>
        <source>Use another handle on the whole case: %1</source>
        <translation>Im ganzen Korpus einen anderen Griff nehmen: %1</translation>
    </message>
    <message>
        <source>Use %1s in %2</source>
        <translation>In %2 dickere Schrauben nehmen: %1</translation>
    </message>
    <message>
        <source>Use %1s in the whole case</source>
        <translation>Im ganzen Korpus dickere Schrauben nehmen: %1</translation>
    </message>
    <message>
        <source>Move the screws of %1 away from edges and ends</source>
        <translation>Die Schrauben von %1 von Kanten und Enden wegrücken</translation>
    </message>
    <message>
        <source>Hold %1 with six screws</source>
        <translation>%1 mit sechs Schrauben befestigen</translation>
    </message>
    <message>
        <source>Hold the whole case with six screws</source>
        <translation>Im ganzen Korpus mit sechs Schrauben je Blende befestigen</translation>
    </message>
    <message>
        <source>Bolt the handle of %1 through wall and front, so that the bolts carry the pull</source>
        <translation>Den Griff von %1 durch Vorderstück und Blende schrauben, damit die Gewindeschrauben den Zug aufnehmen</translation>
    </message>
    <message>
        <source>Bolt the handle of the whole case through wall and front, so that the bolts carry the pull</source>
        <translation>Alle Griffe des Korpus durch Vorderstück und Blende schrauben, damit die Gewindeschrauben den Zug aufnehmen</translation>
    </message>
    <message>
        <source>Hold %1 with four screws</source>
        <translation>%1 mit vier Schrauben befestigen</translation>
    </message>
    <message>
        <source>Hold the whole case with four screws</source>
        <translation>Im ganzen Korpus mit vier Schrauben je Blende befestigen</translation>
    </message>
    <message>
        <source>Drill clearance holes in %1 that let the screws through</source>
        <translation>In %1 Durchgangsbohrungen bohren, durch die die Schrauben frei hindurchgehen</translation>
    </message>
    <message>
        <source>Drill clearance holes in the whole case that let the screws through</source>
        <translation>Im ganzen Korpus Durchgangsbohrungen bohren, durch die die Schrauben frei hindurchgehen</translation>
    </message>
    <message>
        <source>Drill the pilot holes of %1 as its wood asks</source>
        <translation>In %1 so vorbohren, wie das Holz es verlangt</translation>
    </message>
    <message>
        <source>Drill the pilot holes of the whole case as its wood asks</source>
        <translation>Im ganzen Korpus so vorbohren, wie das Holz es verlangt</translation>
    </message>
    <message>
        <source>Drill pilot holes of %1 in %2</source>
        <translation>In %2 mit %1 vorbohren</translation>
    </message>
    <message>
        <source>Drill pilot holes of %1 in the whole case</source>
        <translation>Im ganzen Korpus mit %1 vorbohren</translation>
    </message>
    <message>
        <source>Drill all clearance holes of %1 %2, as its screws ask</source>
        <translation>Alle Durchgangsbohrungen von %1 mit %2 bohren, wie die Schrauben es verlangen</translation>
    </message>
    <message>
        <source>Drill all clearance holes of the whole case %1, as its screws ask</source>
        <translation>Alle Durchgangsbohrungen des ganzen Korpus mit %1 bohren, wie die Schrauben es verlangen</translation>
    </message>
    <message>
        <source>Run %1 on: %2</source>
        <translation>%1 laufen lassen auf: %2</translation>
    </message>
    <message>
        <source>Run the whole case on: %1</source>
        <translation>Alle Schubkästen laufen lassen auf: %1</translation>
    </message>
    <message>
        <source>Set %1 into its opening on all sides, by %2</source>
        <translation>%1 auf allen Seiten in die Öffnung einlassen, mit %2 Fuge</translation>
    </message>
    <message>
        <source>Let %1 cover the frame on all sides, by %2</source>
        <translation>%1 auf allen Seiten den Rahmen decken lassen, um %2</translation>
    </message>
    <message>
        <source>Move the screw hole of %1 to its nearest allowed place</source>
        <translation>Die Schraubenbohrung von %1 an die nächste zulässige Stelle rücken</translation>
    </message>
    <message>
        <source>Move the screw holes of %1 to their nearest allowed places</source>
        <translation>Die Schraubenbohrungen von %1 an die nächsten zulässigen Stellen rücken</translation>
    </message>
    <message>
        <source>Let the screw rows of %1 find their allowed places</source>
        <translation>Die Schraubenreihen von %1 ihre zulässigen Stellen finden lassen</translation>
    </message>
    <message>
        <source>Let the screw rows of the whole case find their allowed places</source>
        <translation>Alle Schraubenreihen des Korpus ihre zulässigen Stellen finden lassen</translation>
    </message>
    <message>
        <source>Move the lower screw row of %1 up to %2</source>
        <translation>Die untere Schraubenreihe von %1 auf %2 hochsetzen</translation>
    </message>
    <message>
        <source>Move the lower screw row of the whole case up to %1</source>
        <translation>Im ganzen Korpus die untere Schraubenreihe auf %1 hochsetzen</translation>
    </message>
    <message>
        <source>Move the upper screw row of %1 down to %2 below the edge</source>
        <translation>Die obere Schraubenreihe von %1 auf %2 unter die Kante heruntersetzen</translation>
    </message>
    <message>
        <source>Move the upper screw row of the whole case down to %1 below the edge</source>
        <translation>Im ganzen Korpus die obere Schraubenreihe auf %1 unter die Kante heruntersetzen</translation>
    </message>
    <message>
        <source>Move the screws of %1 in to %2 from the box&apos;s sides</source>
        <translation>Die Schrauben von %1 bis auf %2 von den Schubkastenseiten nach innen rücken</translation>
    </message>
    <message>
        <source>Move the screws of the whole case in to %1 from the box&apos;s sides</source>
        <translation>Alle Schrauben des Korpus bis auf %1 von den Schubkastenseiten nach innen rücken</translation>
    </message>
    <message>
        <source>Cut the recesses of %1 with a tool of at most %2</source>
        <translation>Die Kopfversenkungen von %1 mit einem Senker von höchstens %2 bohren</translation>
    </message>
    <message>
        <source>Cut the recesses of the whole case with a tool of at most %1</source>
        <translation>Alle Kopfversenkungen des Korpus mit einem Senker von höchstens %1 bohren</translation>
    </message>
    <message>
        <source>%1, with washers under the heads</source>
        <translation>%1, mit Unterlegscheiben unter den Köpfen</translation>
    </message>
    <message>
        <source>%1 and %2 other fronts</source>
        <translation>%1 und %2 weiteren Blenden</translation>
    </message>
    <message>
        <source>Drill all clearance holes of %1 %2</source>
        <translation>Alle Durchgangsbohrungen von %1 mit %2 bohren</translation>
    </message>
    <message>
        <source>Let the screw rows of %1 stand as far apart as they can</source>
        <translation>Die Schraubenreihen von %1 so weit auseinander setzen, wie es geht</translation>
    </message>
    <message>
        <source>Let the screw rows of the whole case stand as far apart as they can</source>
        <translation>Die Schraubenreihen des ganzen Korpus so weit auseinander setzen, wie es geht</translation>
    </message>
    <message>
        <source>Drill all clearance holes of the whole case %1</source>
        <translation>Alle Durchgangsbohrungen des ganzen Korpus mit %1 bohren</translation>
    </message>
    <message>
        <source>Run %1 on the longest stocked runners that fit</source>
        <translation>%1 auf den längsten vorrätigen Führungen laufen lassen, die passen</translation>
    </message>
    <message>
        <source>Run the whole case on the longest stocked runners that fit</source>
        <translation>Den ganzen Korpus auf den längsten vorrätigen Führungen laufen lassen, die passen</translation>
    </message>
    <message>
        <source>Make the box of %1 as deep as its runners are long</source>
        <translation>Den Schubkasten von %1 so tief machen, wie seine Führungen lang sind</translation>
    </message>
    <message>
        <source>Make the box of the whole case as deep as its runners are long</source>
        <translation>Die Schubkästen des ganzen Korpus so tief machen, wie ihre Führungen lang sind</translation>
    </message>
    <message>
        <source>Give %1 the longest stocked runners that the case takes, and a box as deep</source>
        <translation>%1 die längsten vorrätigen Führungen geben, die in den Korpus passen, und einen ebenso tiefen Schubkasten</translation>
    </message>
    <message>
        <source>Give the whole case the longest stocked runners that it takes, and boxes as deep</source>
        <translation>Dem ganzen Korpus die längsten vorrätigen Führungen geben, die hineinpassen, und ebenso tiefe Schubkästen</translation>
    </message>
    <message>
        <source>Leave %1 at each side of the box of %2</source>
        <translation>Auf jeder Seite des Schubkastens von %2 %1 lassen</translation>
    </message>
    <message>
        <source>Leave %1 at each side of the box of the whole case</source>
        <translation>Auf jeder Seite der Schubkästen des ganzen Korpus %1 lassen</translation>
    </message>
    <message>
        <source>Make the box&apos;s sides of %1 %2 thick</source>
        <translation>Die Seiten des Schubkastens von %1 %2 dick machen</translation>
    </message>
    <message>
        <source>Make the box&apos;s sides of the whole case %1 thick</source>
        <translation>Die Seiten der Schubkästen des ganzen Korpus %1 dick machen</translation>
    </message>
    <message>
        <source>Leave below the box of %1 what the runner asks for</source>
        <translation>Unter dem Schubkasten von %1 so viel lassen, wie die Führung verlangt</translation>
    </message>
    <message>
        <source>Leave below the box of the whole case what the runner asks for</source>
        <translation>Unter den Schubkästen des ganzen Korpus so viel lassen, wie die Führung verlangt</translation>
    </message>
    <message>
        <source>Make the box of %1 %2 high</source>
        <translation>Den Schubkasten von %1 %2 hoch machen</translation>
    </message>
    <message>
        <source>Make the box of the whole case %1 high</source>
        <translation>Die Schubkästen des ganzen Korpus %1 hoch machen</translation>
    </message>
    <message>
        <source>Use %1 screws in %2</source>
        <translation>In %2 Schrauben von %1 nehmen</translation>
    </message>
    <message>
        <source>Use %1 screws in the whole case</source>
        <translation>Im ganzen Korpus Schrauben von %1 nehmen</translation>
    </message>
    <message>
        <source>Set the screws of %1 flush</source>
        <translation>Die Schrauben von %1 bündig setzen</translation>
    </message>
    <message>
        <source>Set the screws of the whole case flush</source>
        <translation>Alle Schrauben des Korpus bündig setzen</translation>
    </message>
    <message>
        <source>Set the screws of %1 %2 deep</source>
        <translation>Die Schrauben von %1 %2 tief versenken</translation>
    </message>
    <message>
        <source>Set the screws of the whole case %1 deep</source>
        <translation>Alle Schrauben des Korpus %1 tief versenken</translation>
    </message>
    <message>
        <source>Set the screws of %1 flush, their length from stock</source>
        <translation>Die Schrauben von %1 bündig setzen, ihre Länge aus dem Vorrat</translation>
    </message>
    <message>
        <source>Set the screws of the whole case flush, their length from stock</source>
        <translation>Alle Schrauben des Korpus bündig setzen, ihre Länge aus dem Vorrat</translation>
    </message>
    <message>
        <source>Set the screws of %1 %2 deep, their length from stock</source>
        <translation>Die Schrauben von %1 %2 tief versenken, ihre Länge aus dem Vorrat</translation>
    </message>
    <message>
        <source>Set the screws of the whole case %1 deep, their length from stock</source>
        <translation>Alle Schrauben des Korpus %1 tief versenken, ihre Länge aus dem Vorrat</translation>
    </message>
    <message>
        <source>Cut the screws of %1 to %2</source>
        <translation>Die Schrauben von %1 auf %2 kürzen</translation>
    </message>
    <message>
        <source>Cut the screws of the whole case to %1</source>
        <translation>Alle Schrauben des Korpus auf %1 kürzen</translation>
    </message>
    <message>
        <source>Leave a gap of %1 between %2 and %3 when cut</source>
        <translation>Beim Zuschnitt zwischen %2 und %3 eine Fuge von %1 lassen</translation>
    </message>
    <message>
        <source>Leave a gap of %1 there in all the case</source>
        <translation>Dort im ganzen Korpus eine Fuge von %1 lassen</translation>
    </message>
    <message>
        <source>Cut %1 from quarter-sawn boards</source>
        <translation>%1 aus Riftbrettern schneiden</translation>
    </message>
    <message>
        <source>Cut the whole case from quarter-sawn boards</source>
        <translation>Alle Blenden des Korpus aus Riftbrettern schneiden</translation>
    </message>
    <message>
        <source>screw row %1, %2 from the box&apos;s left side</source>
        <translation>Schraubenreihe %1, %2 von der linken Seite des Schubkastens</translation>
    </message>
    <message>
        <source>screw row %1, %2 above the box&apos;s lower edge</source>
        <translation>Schraubenreihe %1, %2 über der Unterkante des Schubkastens</translation>
    </message>
    <message>
        <source>Drill all clearance holes of %1 %2 instead of %3, for %4</source>
        <translation>Alle Durchgangsbohrungen von %1 mit %2 statt %3 bohren, wegen: %4</translation>
    </message>
    <message>
        <source>Drill all clearance holes of the whole case %1 instead of %2, for %3, %4</source>
        <translation>Alle Durchgangsbohrungen des ganzen Korpus mit %1 statt %2 bohren, wegen: %3, %4</translation>
    </message>
    <message>
        <source>Keep the fronts at the case&apos;s left side %1 inside its edge</source>
        <translation>Die Blenden an der linken Seite des Korpus %1 innerhalb seiner Kante halten</translation>
    </message>
    <message>
        <source>Keep the fronts at the case&apos;s right side %1 inside its edge</source>
        <translation>Die Blenden an der rechten Seite des Korpus %1 innerhalb seiner Kante halten</translation>
    </message>
    <message>
        <source>Keep the fronts at the case&apos;s bottom %1 inside its edge</source>
        <translation>Die unteren Blenden des Korpus %1 innerhalb seiner Kante halten</translation>
    </message>
    <message>
        <source>Keep the fronts at the case&apos;s top %1 inside its edge</source>
        <translation>Die oberen Blenden des Korpus %1 innerhalb seiner Kante halten</translation>
    </message>
    <message>
        <source>Step the fronts of bank %1 by whole pitches of %2</source>
        <translation>Die Blenden der Reihe %1 um ganze Lochabstände von %2 stufen</translation>
    </message>
    <message>
        <source>Make the left overlay of %1 %2</source>
        <translation>Von %1 den linken Aufschlag auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the right overlay of %1 %2</source>
        <translation>Von %1 den rechten Aufschlag auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the bottom overlay of %1 %2</source>
        <translation>Von %1 den unteren Aufschlag auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the top overlay of %1 %2</source>
        <translation>Von %1 den oberen Aufschlag auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the left overlay of all fronts %1</source>
        <translation>Von allen Blenden den linken Aufschlag auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the right overlay of all fronts %1</source>
        <translation>Von allen Blenden den rechten Aufschlag auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the bottom overlay of all fronts %1</source>
        <translation>Von allen Blenden den unteren Aufschlag auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the top overlay of all fronts %1</source>
        <translation>Von allen Blenden den oberen Aufschlag auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the left overlay of %1 %2 when cut</source>
        <translation>Von %1 den linken Aufschlag beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the right overlay of %1 %2 when cut</source>
        <translation>Von %1 den rechten Aufschlag beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the bottom overlay of %1 %2 when cut</source>
        <translation>Von %1 den unteren Aufschlag beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the top overlay of %1 %2 when cut</source>
        <translation>Von %1 den oberen Aufschlag beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the left overlay of all fronts %1 when cut</source>
        <translation>Von allen Blenden den linken Aufschlag beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the right overlay of all fronts %1 when cut</source>
        <translation>Von allen Blenden den rechten Aufschlag beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the bottom overlay of all fronts %1 when cut</source>
        <translation>Von allen Blenden den unteren Aufschlag beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the top overlay of all fronts %1 when cut</source>
        <translation>Von allen Blenden den oberen Aufschlag beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the left of %1 %2</source>
        <translation>Die Fuge links an %1 auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the right of %1 %2</source>
        <translation>Die Fuge rechts an %1 auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the bottom of %1 %2</source>
        <translation>Die Fuge unten an %1 auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the top of %1 %2</source>
        <translation>Die Fuge oben an %1 auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the left of all fronts %1</source>
        <translation>Die Fuge links an allen Blenden auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the right of all fronts %1</source>
        <translation>Die Fuge rechts an allen Blenden auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the bottom of all fronts %1</source>
        <translation>Die Fuge unten an allen Blenden auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the top of all fronts %1</source>
        <translation>Die Fuge oben an allen Blenden auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the left of %1 %2 when cut</source>
        <translation>Die Fuge links an %1 beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the right of %1 %2 when cut</source>
        <translation>Die Fuge rechts an %1 beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the bottom of %1 %2 when cut</source>
        <translation>Die Fuge unten an %1 beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the top of %1 %2 when cut</source>
        <translation>Die Fuge oben an %1 beim Zuschnitt auf %2 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the left of all fronts %1 when cut</source>
        <translation>Die Fuge links an allen Blenden beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the right of all fronts %1 when cut</source>
        <translation>Die Fuge rechts an allen Blenden beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the bottom of all fronts %1 when cut</source>
        <translation>Die Fuge unten an allen Blenden beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Make the gap at the top of all fronts %1 when cut</source>
        <translation>Die Fuge oben an allen Blenden beim Zuschnitt auf %1 bringen</translation>
    </message>
    <message>
        <source>Would ruin a part</source>
        <translation>Ein Teil wäre verdorben</translation>
    </message>
    <message>
        <source>Will not work</source>
        <translation>Es geht nicht</translation>
    </message>
    <message>
        <source>Outside good practice</source>
        <translation>Gegen gute Praxis</translation>
    </message>
    <message>
        <source>To know</source>
        <translation>Zu wissen</translation>
    </message>
    <message>
        <source>The case</source>
        <translation>Der Korpus</translation>
    </message>
    <message>
        <source>Fronts %1 and %2</source>
        <translation>Blenden %1 und %2</translation>
    </message>
    <message>
        <source>Front %1, screw hole %2</source>
        <translation>Blende %1, Schraubenbohrung %2</translation>
    </message>
    <message>
        <source>Front %1, fitting %2</source>
        <translation>Blende %1, Beschlag %2</translation>
    </message>
    <message>
        <source>Front %1, handle hole %2</source>
        <translation>Blende %1, Griffbohrung %2</translation>
    </message>
    <message>
        <source>Front %1, %2</source>
        <translation>Blende %1, %2</translation>
    </message>
    <message>
        <source>The front that this was about is no longer in the case.</source>
        <translation>Die Blende, um die es ging, gibt es im Korpus nicht mehr.</translation>
    </message>
    <message>
        <source>less than %1</source>
        <translation>weniger als %1</translation>
    </message>
    <message>
        <source>= %1</source>
        <translation>= %1</translation>
    </message>
    <message>
        <source>%1.</source>
        <translation>%1.</translation>
    </message>
    <message>
        <source>%1. What helps: %2</source>
        <translation>%1. Abhilfe: %2</translation>
    </message>
    <message>
        <source>The bolt is %1 too short: %2 bolt, %3 of wood to go through, at least %4 to hold in the handle.</source>
        <translation>Die Gewindeschraube ist %1 zu kurz: Gewindeschraube %2, Klemmdicke %3, dazu mindestens %4 im Griff, um zu halten.</translation>
    </message>
    <message>
        <source>least length = grip + least engagement %1 + %2 %3; the bolt is %4</source>
        <translation>kleinste Länge = Klemmdicke + kleinste Einschraubtiefe %1 + %2 %3; die Gewindeschraube hat %4</translation>
    </message>
    <message>
        <source>The bolt bottoms out, %1 too long: %2 bolt, %3 of wood to go through, thread %4 deep; a shorter bolt or %1 of washers under its head cures it.</source>
        <translation>Die Gewindeschraube sitzt auf Grund auf, sie ist %1 zu lang: Gewindeschraube %2, Klemmdicke %3, Gewindetiefe %4; eine kürzere oder %1 Unterlegscheiben unter dem Kopf helfen ab.</translation>
    </message>
    <message>
        <source>greatest length = grip + thread depth %1 + %2 %3; the bolt is %4</source>
        <translation>größte Länge = Klemmdicke + Gewindetiefe %1 + %2 %3; die Gewindeschraube hat %4</translation>
    </message>
    <message>
        <source>No stocked bolt fits: it has to be from %1 to %2 long.</source>
        <translation>Keine vorrätige Gewindeschraube passt: Sie muss %1 bis %2 lang sein.</translation>
    </message>
    <message>
        <source>least = grip + least engagement %1 + %2 %3; greatest = grip + thread depth %1 + %4 %5</source>
        <translation>kleinste = Klemmdicke + kleinste Einschraubtiefe %1 + %2 %3; größte = Klemmdicke + Gewindetiefe %1 + %4 %5</translation>
    </message>
    <message>
        <source>The counterbore leaves only %1 of wood under the bolt&apos;s head, less than %2: %3 deep in %4 of wood.</source>
        <translation>Die zylindrische Senkung ist zu tief: Sie lässt nur %1 Holz unter dem Kopf der Gewindeschraube, weniger als %2; sie geht %3 tief in %4 Holz.</translation>
    </message>
    <message>
        <source>The counterbore goes right through: %1 deep in %2 of wood.</source>
        <translation>Die zylindrische Senkung geht ganz durch: %1 tief in %2 Holz.</translation>
    </message>
    <message>
        <source>wood under the head = wood − counterbore %1 − %2 %3; at least %4</source>
        <translation>Holz unter dem Kopf = Holz − Senkung %1 − %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the left edge profile and would rock: base %2, field %3 that way.</source>
        <translation>Der Griffsockel ragt %1 über den Spiegel hinaus auf das linke Kantenprofil und würde wackeln: Sockel %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the right edge profile and would rock: base %2, field %3 that way.</source>
        <translation>Der Griffsockel ragt %1 über den Spiegel hinaus auf das rechte Kantenprofil und würde wackeln: Sockel %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the bottom edge profile and would rock: base %2, field %3 that way.</source>
        <translation>Der Griffsockel ragt %1 über den Spiegel hinaus auf das untere Kantenprofil und würde wackeln: Sockel %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle&apos;s base reaches %1 past the field onto the top edge profile and would rock: base %2, field %3 that way.</source>
        <translation>Der Griffsockel ragt %1 über den Spiegel hinaus auf das obere Kantenprofil und würde wackeln: Sockel %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>past the field&apos;s left edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den linken Rand des Spiegels hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the field&apos;s right edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den rechten Rand des Spiegels hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the field&apos;s bottom edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den unteren Rand des Spiegels hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the field&apos;s top edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den oberen Rand des Spiegels hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s left edge: base %2, front %3 that way.</source>
        <translation>Eine Griffbohrung liegt neben der Blende; der Sockel ragt %1 über die linke Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s right edge: base %2, front %3 that way.</source>
        <translation>Eine Griffbohrung liegt neben der Blende; der Sockel ragt %1 über die rechte Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s bottom edge: base %2, front %3 that way.</source>
        <translation>Eine Griffbohrung liegt neben der Blende; der Sockel ragt %1 über die untere Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>A handle hole lies off the front; the base reaches %1 past the front&apos;s top edge: base %2, front %3 that way.</source>
        <translation>Eine Griffbohrung liegt neben der Blende; der Sockel ragt %1 über die obere Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s left edge: base %2, front %3 that way.</source>
        <translation>Der Griff ragt %1 über die linke Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s right edge: base %2, front %3 that way.</source>
        <translation>Der Griff ragt %1 über die rechte Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s bottom edge: base %2, front %3 that way.</source>
        <translation>Der Griff ragt %1 über die untere Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The handle reaches %1 past the front&apos;s top edge: base %2, front %3 that way.</source>
        <translation>Der Griff ragt %1 über die obere Kante der Blende hinaus: Sockel %2, Blende %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>past the front&apos;s left edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über die linke Kante der Blende hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the front&apos;s right edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über die rechte Kante der Blende hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the front&apos;s bottom edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über die untere Kante der Blende hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>past the front&apos;s top edge = base / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über die obere Kante der Blende hinaus = Sockel / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the box&apos;s left side.</source>
        <translation>Die Bohrung von %2 durch das Vorderstück, für die Gewindeschraube des Griffs, läuft %1 in die linke Schubkastenseite.</translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the box&apos;s right side.</source>
        <translation>Die Bohrung von %2 durch das Vorderstück, für die Gewindeschraube des Griffs, läuft %1 in die rechte Schubkastenseite.</translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 into the bottom.</source>
        <translation>Die Bohrung von %2 durch das Vorderstück, für die Gewindeschraube des Griffs, läuft %1 in den Boden.</translation>
    </message>
    <message>
        <source>The %2 hole through the box wall for the handle&apos;s bolt runs %1 past the wall&apos;s top edge.</source>
        <translation>Die Bohrung von %2 durch das Vorderstück, für die Gewindeschraube des Griffs, läuft %1 über die Oberkante des Vorderstücks hinaus.</translation>
    </message>
    <message>
        <source>past the free part of the wall = hole / 2 − centre to it %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den freien Teil des Vorderstücks hinaus = Bohrung / 2 − Mitte bis dorthin %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>The front&apos;s two handles overlap by %1: their centres are only %2 apart.</source>
        <translation>Die zwei Griffe der Blende überschneiden sich um %1: Ihre Mitten liegen nur %2 auseinander.</translation>
    </message>
    <message>
        <source>least distance of centres = width of a handle&apos;s base %1; they are %2 apart</source>
        <translation>kleinster Abstand der Mitten = Breite eines Griffsockels %1; sie liegen %2 auseinander</translation>
    </message>
    <message>
        <source>There is no room for a drawer box: it would be %1 wide, %2 high and %3 deep, with sides %4 thick.</source>
        <translation>Für einen Schubkasten ist kein Platz: Er wäre %1 breit, %2 hoch und %3 tief, mit %4 dicken Seiten.</translation>
    </message>
    <message>
        <source>width = opening − 2 × side clearance %1; between the sides %2 − 2 × %3 %4; height = opening − clearances %5; each must be more than 0</source>
        <translation>Breite = Öffnung − 2 × seitliche Luft %1; zwischen den Seiten %2 − 2 × %3 %4; Höhe = Öffnung − Luft unten und oben %5; jedes muss mehr als 0 sein</translation>
    </message>
    <message>
        <source>The drawer box is %1 too tall: %2, and the opening leaves %3.</source>
        <translation>Der Schubkasten ist um %1 zu hoch: Er misst %2, und die Öffnung lässt %3.</translation>
    </message>
    <message>
        <source>room = opening − clearance below − clearance above %1 − %2 − %3 %4; the box is %5</source>
        <translation>Platz = Öffnung − Luft unten − Luft oben %1 − %2 − %3 %4; der Schubkasten hat %5</translation>
    </message>
    <message>
        <source>The drawer box is %1 too deep: %2, and the case leaves %3.</source>
        <translation>Der Schubkasten ist um %1 zu tief: Er misst %2, und der Korpus lässt %3.</translation>
    </message>
    <message>
        <source>room = case inside − setback %1 − %2 %3; the box is %4</source>
        <translation>Platz = Korpus innen − Rücksprung %1 − %2 %3; der Schubkasten ist %4</translation>
    </message>
    <message>
        <source>room = frame + case inside − setback %1 + %2 − %3 %4; the box is %5</source>
        <translation>Platz = Rahmen + Korpus innen − Rücksprung %1 + %2 − %3 %4; der Schubkasten hat %5</translation>
    </message>
    <message>
        <source>The bottom does not lie in the box wall: it reaches from %1 to %2 above the box&apos;s lower edge, and the wall is %3 high.</source>
        <translation>Der Boden passt nicht ins Vorderstück: Er reicht von %1 bis %2 über der Unterkante des Schubkastens, und das Vorderstück ist %3 hoch.</translation>
    </message>
    <message>
        <source>top of the bottom = groove height + its thickness %1 + %2 %3; it must be 0 or more, and less than %4</source>
        <translation>Oberseite des Bodens = Nuthöhe + Dicke %1 + %2 %3; sie muss mindestens 0 und weniger als %4 sein</translation>
    </message>
    <message>
        <source>The case is %1 tall (%2, %3 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation>Der Korpus ist %1 hoch (%2, %3 Stauraum): Ihn an der Wand sichern und die örtlichen Vorschriften beachten.</translation>
    </message>
    <message>
        <source>The case is %1 tall (weight not known, %2 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation>Der Korpus ist %1 hoch (Gewicht nicht bekannt, %2 Stauraum): Ihn an der Wand sichern und die örtlichen Vorschriften beachten.</translation>
    </message>
    <message>
        <source>The case is heavy (%1, %2 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation>Der Korpus ist schwer (%1, %2 Stauraum): Ihn an der Wand sichern und die örtlichen Vorschriften beachten.</translation>
    </message>
    <message>
        <source>The case is heavy (weight not known, %1 of storage): anchor it to the wall, and follow the local codes.</source>
        <translation>Der Korpus ist schwer (Gewicht nicht bekannt, %1 Stauraum): Ihn an der Wand sichern und die örtlichen Vorschriften beachten.</translation>
    </message>
    <message>
        <source>clothing storage is in the published scope from %1 tall, %2 and %3 on, all three at once; here height %4, %5, storage %6; nothing has been tested here, and local codes decide</source>
        <translation>Möbel für Kleidung fallen unter die veröffentlichte Norm ab %1 Höhe, %2 und %3, alle drei zugleich; hier Höhe %4, %5, Stauraum %6; hier ist nichts geprüft worden, und die örtlichen Vorschriften entscheiden</translation>
    </message>
    <message>
        <source>clothing storage is in the published scope from %1 tall, %2 and %3 on, all three at once; here height %4, weight not known, storage %5; nothing has been tested here, and local codes decide</source>
        <translation>Möbel für Kleidung fallen unter die veröffentlichte Norm ab %1 Höhe, %2 und %3, alle drei zugleich; hier Höhe %4, Gewicht nicht bekannt, Stauraum %5; hier ist nichts geprüft worden, und die örtlichen Vorschriften entscheiden</translation>
    </message>
    <message>
        <source>%1 without sides, back and top</source>
        <translation>%1 ohne Seiten, Rückwand und Platte</translation>
    </message>
    <message>
        <source>%1 without back and top</source>
        <translation>%1 ohne Rückwand und Deckplatte</translation>
    </message>
    <message>
        <source>16 CFR part 1261 (ASTM F2057-23), scope</source>
        <translation>16 CFR Teil 1261 (ASTM F2057-23), Anwendungsbereich</translation>
    </message>
    <message>
        <source>NDS commentary, edge and end distances of wood screws, from memory</source>
        <translation>NDS-Kommentar, Abstände von Holzschrauben zu Kante und Hirnholz, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>The box&apos;s wall does not reach behind the front: no screw can hold it.</source>
        <translation>Das Vorderstück reicht nicht hinter die Blende: Keine Schraube kann sie halten.</translation>
    </message>
    <message>
        <source>The screws miss the wall: it lies behind %1 of the front&apos;s height, and they need more than %2.</source>
        <translation>Die Schrauben verfehlen das Vorderstück: Es liegt hinter %1 der Höhe der Blende, und sie brauchen mehr als %2.</translation>
    </message>
    <message>
        <source>The screws miss the wall: it lies behind %1 of the front&apos;s width, and they need more than %2.</source>
        <translation>Die Schrauben verfehlen das Vorderstück: Es liegt hinter %1 der Breite der Blende, und sie brauchen mehr als %2.</translation>
    </message>
    <message>
        <source>needed = what bottom, sides, top edge, tool and the front&apos;s own edges keep free %1; there is %2</source>
        <translation>nötig = was Boden, Seiten, Oberkante, Werkzeug und die Kanten der Blende selbst frei halten %1; vorhanden ist %2</translation>
    </message>
    <message>
        <source>Nowhere does the fixed front overlap the frame enough for a screw: %1 at the most, and %2 is needed.</source>
        <translation>Nirgends deckt die feste Blende den Rahmen weit genug für eine Schraube: höchstens %1, und %2 sind nötig.</translation>
    </message>
    <message>
        <source>The fixed front does not overlap the frame: there is nothing to screw through. It would need %1.</source>
        <translation>Die feste Blende deckt den Rahmen nicht: Es gibt nichts, wodurch man schrauben könnte. Nötig wären %1.</translation>
    </message>
    <message>
        <source>least overlay = what the tool and the head need of the member + least distance of a screw from the front&apos;s edge %1</source>
        <translation>kleinster Aufschlag = was Werkzeug und Kopf vom Rahmenteil brauchen + kleinster Abstand einer Schraube von der Kante der Blende %1</translation>
    </message>
    <message>
        <source>The fixed front has no face frame to be screwed on through: a frameless case has only the edges of its panels there.</source>
        <translation>Die feste Blende hat keinen Rahmen, durch den sie angeschraubt werden könnte: Ein rahmenloser Korpus hat dort nur die Kanten seiner Platten.</translation>
    </message>
    <message>
        <source>screws go through a member from behind; through a panel&apos;s edge none can. Fasten blocks or a rail behind the front</source>
        <translation>Schrauben gehen von hinten durch ein Rahmenteil; durch die Kante einer Platte geht keine. Klötze oder eine Leiste hinter der Blende anbringen</translation>
    </message>
    <message>
        <source>The screw hole at %1 across and %2 up the front misses the members behind it, or comes too near to an edge.</source>
        <translation>Die Schraubenbohrung %1 von links und %2 von unten in der Blende verfehlt die Rahmenteile dahinter oder kommt einer Kante zu nahe.</translation>
    </message>
    <message>
        <source>a screw of a fixed front goes through a member, its head and tool away from the member&apos;s edges, into wood away from the front&apos;s edges</source>
        <translation>eine Schraube einer festen Blende geht durch ein Rahmenteil, Kopf und Werkzeug mit Abstand von dessen Kanten, in Holz mit Abstand von den Kanten der Blende</translation>
    </message>
    <message>
        <source>No filler strip fits in the gap: the edges beside it are %1 thick, and it should lie %2 back.</source>
        <translation>In die Fuge passt keine Füllleiste: Die Kanten daneben sind %1 dick, und sie soll %2 zurückliegen.</translation>
    </message>
    <message>
        <source>thickness = thinner edge − shadow %1 − %2 %3; it must be more than 0</source>
        <translation>Dicke = dünnere Kante − Schattenbreite %1 − %2 %3; sie muss mehr als 0 sein</translation>
    </message>
    <message>
        <source>The filler strip bends by about %1 when a hand pushes on it, more than %2: it is %3 thick and should be at least %4.</source>
        <translation>Die Füllleiste biegt sich unter dem Druck einer Hand um etwa %1 durch, mehr als %2: Sie ist %3 dick und sollte mindestens %4 sein.</translation>
    </message>
    <message>
        <source>bend = F l³ / (4 E w t³) with F = %1 N, l = %2 between the screws beside it, E = 10 000 N/mm², w = %3, t = %4; the wall behind it is not counted</source>
        <translation>Durchbiegung = F l³ / (4 E w t³) mit F = %1 N, l = %2 zwischen den Schrauben daneben, E = 10 000 N/mm², w = %3, t = %4; das Vorderstück dahinter zählt nicht mit</translation>
    </message>
    <message>
        <source>beam on two supports with a load in its middle; stiffness of wood along the grain from the Wood Handbook, chapter 5, from memory; the hand&apos;s push is common practice</source>
        <translation>Balken auf zwei Stützen mit einer Last in der Mitte; Steifigkeit des Holzes längs zur Faser nach dem Wood Handbook, Kapitel 5, aus dem Gedächtnis; der Druck der Hand ist Werkstattbrauch</translation>
    </message>
    <message>
        <source>fitting</source>
        <translation>Beschlag</translation>
    </message>
    <message>
        <source>wood left = wood before the screw − (screw − plate) %1 − (%2 − %3) %4</source>
        <translation>Restholz = Holz vor der Schraube − (Schraube − Platte) %1 − (%2 − %3) %4</translation>
    </message>
    <message>
        <source>The plate (%4) reaches %1 past the field onto the left edge profile and would rock: plate %2, field %3 that way.</source>
        <translation>Die Platte (%4) ragt %1 über den Spiegel hinaus auf das linke Kantenprofil und würde kippeln: Platte %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The plate (%4) reaches %1 past the field onto the right edge profile and would rock: plate %2, field %3 that way.</source>
        <translation>Die Platte (%4) ragt %1 über den Spiegel hinaus auf das rechte Kantenprofil und würde kippeln: Platte %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The plate (%4) reaches %1 past the field onto the bottom edge profile and would rock: plate %2, field %3 that way.</source>
        <translation>Die Platte (%4) ragt %1 über den Spiegel hinaus auf das untere Kantenprofil und würde kippeln: Platte %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>The plate (%4) reaches %1 past the field onto the top edge profile and would rock: plate %2, field %3 that way.</source>
        <translation>Die Platte (%4) ragt %1 über den Spiegel hinaus auf das obere Kantenprofil und würde kippeln: Platte %2, Spiegel %3 in dieser Richtung.</translation>
    </message>
    <message>
        <source>past the field = plate / 2 − centre to its edge %1 / 2 − %2 %3; it must be 0 or less</source>
        <translation>über den Spiegel hinaus = Platte / 2 − Mitte bis zu seiner Kante %1 / 2 − %2 %3; höchstens 0</translation>
    </message>
    <message>
        <source>The fitting (%4) reaches %1 past the front&apos;s left edge: %2 wide in a front of %3.</source>
        <translation>Der Beschlag (%4) ragt %1 über die linke Kante der Blende hinaus: %2 breit in einer Blende von %3.</translation>
    </message>
    <message>
        <source>The fitting (%4) reaches %1 past the front&apos;s right edge: %2 wide in a front of %3.</source>
        <translation>Der Beschlag (%4) ragt %1 über die rechte Kante der Blende hinaus: %2 breit in einer Blende von %3.</translation>
    </message>
    <message>
        <source>The fitting (%4) reaches %1 past the front&apos;s bottom edge: %2 high in a front of %3.</source>
        <translation>Der Beschlag (%4) ragt %1 über die Unterkante der Blende hinaus: %2 hoch in einer Blende von %3.</translation>
    </message>
    <message>
        <source>The fitting (%4) reaches %1 past the front&apos;s top edge: %2 high in a front of %3.</source>
        <translation>Der Beschlag (%4) ragt %1 über die Oberkante der Blende hinaus: %2 hoch in einer Blende von %3.</translation>
    </message>
    <message>
        <source>plate, holes and mortises must lie on the front; they reach %1 past it</source>
        <translation>Platte, Bohrungen und Ausstemmungen müssen auf der Blende liegen; sie ragen %1 darüber hinaus</translation>
    </message>
    <message>
        <source>The fitting&apos;s screw (%4) ends level with the face beyond: %1 screw, %2 plate, %3 of wood before it.</source>
        <translation>Die Schraube des Beschlags (%4) endet bündig mit der Fläche dahinter: Schraube %1, Platte %2, %3 Holz vor ihr.</translation>
    </message>
    <message>
        <source>%1; it must be more than 0</source>
        <translation>%1; es muss mehr als 0 sein</translation>
    </message>
    <message>
        <source>The fitting&apos;s screw (%5) comes %1 through the show face: %2 screw, %3 plate, %4 of wood before it.</source>
        <translation>Die Schraube des Beschlags (%5) kommt %1 durch die Sichtseite: Schraube %2, Platte %3, %4 Holz vor ihr.</translation>
    </message>
    <message>
        <source>The fitting&apos;s screw (%5) comes %1 out of the front&apos;s back and holds it off its box: %2 screw, %3 plate, %4 of wood before it.</source>
        <translation>Die Schraube des Beschlags (%5) kommt %1 aus der Rückseite der Blende und hält sie vom Schubkasten ab: Schraube %2, Platte %3, %4 Holz vor ihr.</translation>
    </message>
    <message>
        <source>Only %1 of wood is left before the fitting&apos;s screw (%5), less than %2: %3 screw, %4 of wood.</source>
        <translation>Vor der Schraube des Beschlags (%5) bleiben nur %1 Holz, weniger als %2: Schraube %3, Holz %4.</translation>
    </message>
    <message>
        <source>%1; at least %2</source>
        <translation>%1; mindestens %2</translation>
    </message>
    <message>
        <source>The fitting&apos;s screw (%4) goes only %1 into the front, less than %2: %3 screw.</source>
        <translation>Die Schraube des Beschlags (%4) geht nur %1 in die Blende, weniger als %2: Schraube %3.</translation>
    </message>
    <message>
        <source>The fitting&apos;s screw (%2) does not reach the front: %1 screw.</source>
        <translation>Die Schraube des Beschlags (%2) erreicht die Blende nicht: Schraube %1.</translation>
    </message>
    <message>
        <source>penetration = screw − plate %1 − %2 %3; at least %4</source>
        <translation>Eindringtiefe = Schraube − Platte %1 − %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>No stocked screw fits the fitting (%3): it has to be from %1 to %2 long.</source>
        <translation>Keine vorrätige Schraube passt zum Beschlag (%3): Sie muss von %1 bis %2 lang sein.</translation>
    </message>
    <message>
        <source>least = plate + least penetration %1 + %2 %3; greatest = plate + wood − least tip cover %1 + %4 − %5 %6</source>
        <translation>kleinste = Platte + kleinste Eindringtiefe %1 + %2 %3; größte = Platte + Holz − kleinstes Restholz %1 + %4 − %5 %6</translation>
    </message>
    <message>
        <source>The mortise in the top edge (%3) leaves only %1 of wood beside it, less than %2.</source>
        <translation>Die Ausstemmung in der Oberkante (%3) lässt neben sich nur %1 Holz, weniger als %2.</translation>
    </message>
    <message>
        <source>The mortise in the top edge (%2) breaks out of the face by %1.</source>
        <translation>Die Ausstemmung in der Oberkante (%2) bricht um %1 aus der Fläche aus.</translation>
    </message>
    <message>
        <source>wood beside it, to the nearer face %1; at least %2</source>
        <translation>Holz daneben, bis zur näheren Fläche %1; mindestens %2</translation>
    </message>
    <message>
        <source>The mortise (%5) leaves only %1 of wood behind it, less than %2: %3 deep in %4 of wood.</source>
        <translation>Die Ausstemmung (%5) lässt hinter sich nur %1 Holz, weniger als %2: %3 tief in %4 Holz.</translation>
    </message>
    <message>
        <source>The mortise (%3) goes right through: %1 deep in %2 of wood.</source>
        <translation>Die Ausstemmung (%3) geht ganz hindurch: %1 tief in %2 Holz.</translation>
    </message>
    <message>
        <source>wood left = front there − depth of the mortise %1 − %2 %3; at least %4</source>
        <translation>Restholz = Blende an dieser Stelle − Tiefe der Ausstemmung %1 − %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>Two fittings (%3 and %4) are in each other&apos;s way: %1 wide and %2 high.</source>
        <translation>Zwei Beschläge (%3 und %4) stehen einander im Weg: %1 breit und %2 hoch.</translation>
    </message>
    <message>
        <source>The fitting (%3) and the front&apos;s handle are in each other&apos;s way: %1 wide and %2 high.</source>
        <translation>Der Beschlag (%3) und der Griff der Blende stehen einander im Weg: %1 breit und %2 hoch.</translation>
    </message>
    <message>
        <source>what they have in common, %1 × %2, must be nothing</source>
        <translation>was sie gemeinsam haben, %1 × %2, muss nichts sein</translation>
    </message>
    <message>
        <source>The mounting screw runs %1 into what is cut for the fitting (%2).</source>
        <translation>Die Befestigungsschraube läuft %1 in das, was für den Beschlag (%2) ausgenommen ist.</translation>
    </message>
    <message>
        <source>Only %1 of wood is left between the mounting screw and what is cut for the fitting (%3), less than %2.</source>
        <translation>Zwischen der Befestigungsschraube und dem, was für den Beschlag (%3) ausgenommen ist, bleiben nur %1 Holz, weniger als %2.</translation>
    </message>
    <message>
        <source>wood between = centre to the cut − screw&apos;s radius %1 − %2 %3; at least %4</source>
        <translation>Holz dazwischen = Mitte bis zum Ausgenommenen − Radius der Schraube %1 − %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>The handles of %1 are bored at %2, those of %3 at %4: %5 apart, so that one jig or template does not serve both.</source>
        <translation>Die Griffe von %1 haben einen Lochabstand von %2, die von %3 einen von %4: %5 auseinander, sodass eine Lehre oder Schablone nicht für beide passt.</translation>
    </message>
    <message>
        <source>inch and metric patterns that an eye takes for one another: %1 − %2 = %3; from more than 0 to 2 mm is told</source>
        <translation>Zoll- und metrische Lochabstände, die ein Auge verwechselt: %1 − %2 = %3; gemeldet wird, was mehr als 0 und höchstens 2 mm ist</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Fuge %1</translation>
    </message>
    <message>
        <source>gap = member − overlay − overlay %1 − %2 − %3 %4</source>
        <translation>Fuge = Rahmenteil − Aufschlag − Aufschlag %1 − %2 − %3 %4</translation>
    </message>
    <message>
        <source>The fronts touch: there is no gap between them.</source>
        <translation>Die Blenden berühren sich: Zwischen ihnen ist keine Fuge.</translation>
    </message>
    <message>
        <source>The gap between the fronts is only %1, less than %2.</source>
        <translation>Die Fuge zwischen den Blenden ist eng: nur %1, weniger als %2.</translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the left.</source>
        <translation>Die Blende ist links um %1 zu groß für ihre Öffnung.</translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the right.</source>
        <translation>Die Blende ist rechts um %1 zu groß für ihre Öffnung.</translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the bottom.</source>
        <translation>Die Blende ist unten um %1 zu groß für ihre Öffnung.</translation>
    </message>
    <message>
        <source>The front is %1 too large for its opening at the top.</source>
        <translation>Die Blende ist oben um %1 zu groß für ihre Öffnung.</translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s left edge.</source>
        <translation>Die Blende berührt die linke Kante ihrer Öffnung.</translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s right edge.</source>
        <translation>Die Blende berührt die rechte Kante ihrer Öffnung.</translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s bottom edge.</source>
        <translation>Die Blende berührt die untere Kante ihrer Öffnung.</translation>
    </message>
    <message>
        <source>The front touches its opening&apos;s top edge.</source>
        <translation>Die Blende berührt die obere Kante ihrer Öffnung.</translation>
    </message>
    <message>
        <source>The gap at the left is only %1, less than %2.</source>
        <translation>Die Fuge links ist eng: nur %1, weniger als %2.</translation>
    </message>
    <message>
        <source>The gap at the right is only %1, less than %2.</source>
        <translation>Die Fuge rechts ist eng: nur %1, weniger als %2.</translation>
    </message>
    <message>
        <source>The gap at the bottom is only %1, less than %2.</source>
        <translation>Die Fuge unten ist eng: nur %1, weniger als %2.</translation>
    </message>
    <message>
        <source>The gap at the top is only %1, less than %2.</source>
        <translation>Die Fuge oben ist eng: nur %1, weniger als %2.</translation>
    </message>
    <message>
        <source>The fronts overlap on a part %1 wide and %2 high: they cannot both close.</source>
        <translation>Die Blenden überschneiden sich auf einer Fläche von %1 Breite und %2 Höhe: Beide zugleich gehen nicht zu.</translation>
    </message>
    <message>
        <source>common part of the two fronts %1 × %2; there must be none</source>
        <translation>gemeinsame Fläche der zwei Blenden %1 × %2; es darf keine geben</translation>
    </message>
    <message>
        <source>The gaps down bank %1 differ by %2: %3 here, %4 at the widest; their rails are alike, so an overlay is not.</source>
        <translation>Die Fugen der Blendenreihe %1 unterscheiden sich um %2: hier %3, an der breitesten Stelle %4; die Querfriese sind gleich, also ist ein Aufschlag anders.</translation>
    </message>
    <message>
        <source>The gaps down bank %1 differ by %2: %3 here, %4 at the widest; the rail is %5 at the one and %6 at the other.</source>
        <translation>Die Fugen der Blendenreihe %1 unterscheiden sich um %2: hier %3, an der breitesten Stelle %4; der Querfries hat hier %5 und dort %6.</translation>
    </message>
    <message>
        <source>difference = widest − narrowest gap %1 − %2 %3; here %4</source>
        <translation>Unterschied = breiteste − schmalste Fuge %1 − %2 %3; hier %4</translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the left.</source>
        <translation>Die Blende ragt links %1 über den Korpus hinaus.</translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the right.</source>
        <translation>Die Blende ragt rechts %1 über den Korpus hinaus.</translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the bottom.</source>
        <translation>Die Blende ragt unten %1 über den Korpus hinaus.</translation>
    </message>
    <message>
        <source>The front reaches %1 past the case at the top.</source>
        <translation>Die Blende ragt oben %1 über den Korpus hinaus.</translation>
    </message>
    <message>
        <source>past the case = overlay − from the opening to the case&apos;s edge %1 − %2 %3; it should be 0 or less</source>
        <translation>über den Korpus hinaus = Aufschlag − von der Öffnung bis zum Rand des Korpus %1 − %2 %3; höchstens 0 wäre recht</translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s left edge and does not cover it.</source>
        <translation>Die Blende reicht nur eben bis an die linke Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s right edge and does not cover it.</source>
        <translation>Die Blende reicht nur eben bis an die rechte Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s bottom edge and does not cover it.</source>
        <translation>Die Blende reicht nur eben bis an die untere Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>The front only just reaches its opening&apos;s top edge and does not cover it.</source>
        <translation>Die Blende reicht nur eben bis an die obere Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s left edge, which it should cover.</source>
        <translation>Die Blende endet %1 vor der linken Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s right edge, which it should cover.</source>
        <translation>Die Blende endet %1 vor der rechten Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s bottom edge, which it should cover.</source>
        <translation>Die Blende endet %1 vor der unteren Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>The front ends %1 short of its opening&apos;s top edge, which it should cover.</source>
        <translation>Die Blende endet %1 vor der oberen Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>overlay %1; an overlay front needs more than 0</source>
        <translation>Aufschlag %1; eine aufliegende Blende braucht mehr als 0</translation>
    </message>
    <message>
        <source>The front has no size: %1 × %2.</source>
        <translation>Die Blende hat keine Größe: %1 × %2.</translation>
    </message>
    <message>
        <source>front = opening + overlays (− gaps) %1 × %2</source>
        <translation>Blende = Öffnung + Aufschläge (− Fugen) %1 × %2</translation>
    </message>
    <message>
        <source>The edge profiles meet: nothing flat is left of a front %1 × %2 with a profile %3 wide.</source>
        <translation>Die Kantenprofile treffen sich: Von einer Blende von %1 × %2 bleibt bei einem %3 breiten Profil kein Spiegel.</translation>
    </message>
    <message>
        <source>field = front − profile at both sides: %1 − 2 × %2 %3 wide, %4 − 2 × %2 %5 high, where all four carry it</source>
        <translation>Spiegel = Blende − Profil auf beiden Seiten: Breite %1 − 2 × %2 %3, Höhe %4 − 2 × %2 %5, wenn alle vier Kanten es tragen</translation>
    </message>
    <message>
        <source>The edge profile leaves no edge: it is %1 deep in a front %2 thick.</source>
        <translation>Das Kantenprofil lässt keine Kante stehen: Es ist %1 tief in einer %2 dicken Blende.</translation>
    </message>
    <message>
        <source>edge = thickness − profile&apos;s depth %1 − %2 %3; it must be more than 0</source>
        <translation>Kante = Dicke − Tiefe des Profils %1 − %2 %3; sie muss mehr als 0 sein</translation>
    </message>
    <message>
        <source>National Design Specification (NDS) commentary, least distances of wood screws, from memory</source>
        <translation>National Design Specification (NDS), Kommentar, kleinste Abstände von Holzschrauben, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>National Design Specification (NDS), lead holes for withdrawal by ovendry specific gravity; the older rule of NDS and Wood Handbook by hardwood and softwood; root diameters of NDS appendix L, from memory</source>
        <translation>National Design Specification (NDS), Vorbohrungen gegen Ausziehen nach der Dichtezahl im Darrzustand; die ältere Regel von NDS und Wood Handbook nach Laub- und Nadelholz; Kerndurchmesser nach NDS, Anhang L, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>withdrawal: Wood Handbook, chapter 8 (ultimate), NDS (design value, about a fifth); pull: Architectural Woodwork Standards 2009, 50 lbf</source>
        <translation>Ausziehen: Wood Handbook, Kapitel 8 (Bruchlast), NDS (Bemessungswert, etwa ein Fünftel); Zug: Architectural Woodwork Standards 2009, 50 lbf</translation>
    </message>
    <message>
        <source>The mounting screws would be drawn out when the handle is pulled with %1: of that, %2 falls to this screw, which holds %3 at the most and %4 to design with.</source>
        <translation>Die Befestigungsschrauben würden herausgezogen, wenn am Griff mit %1 gezogen wird: Davon trifft %2 auf diese Schraube, die höchstens %3 hält und als Bemessungswert %4.</translation>
    </message>
    <message>
        <source>The mounting screws hold less than they should for a pull of %1 at the handle: of that, %2 falls to this screw, which holds %3 at the most and %4 to design with.</source>
        <translation>Die Befestigungsschrauben halten zu wenig für einen Zug von %1 am Griff: Davon trifft %2 auf diese Schraube, die höchstens %3 hält und als Bemessungswert %4.</translation>
    </message>
    <message>
        <source>safety = withdrawal / share of the pull = %1 / %2 = %3 ultimate, %4 / %2 = %5 by design value; at least 1</source>
        <translation>Sicherheit = Ausziehlast / Anteil am Zug = %1 / %2 = %3 nach der Bruchlast, %4 / %2 = %5 nach dem Bemessungswert; mindestens 1</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s left end, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 vom linken Ende der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s right end, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 vom rechten Ende der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s bottom edge, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 von der unteren Kante der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s top edge, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 von der oberen Kante der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s left edge, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 von der linken Kante der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s right edge, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 von der rechten Kante der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s bottom end, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 vom unteren Ende der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>The screw is %1 from the front&apos;s top end, less than %2: it may split the front.</source>
        <translation>Die Schraube sitzt %1 vom oberen Ende der Blende, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>least distance to the end, along the grain = %1 × the shank of %2 %3</source>
        <translation>kleinster Abstand zum Ende, längs zur Faser = %1 × Schaft von %2 %3</translation>
    </message>
    <message>
        <source>least distance to the edge, across the grain = %1 × the shank of %2 %3</source>
        <translation>kleinster Abstand zur Kante, quer zur Faser = %1 × Schaft von %2 %3</translation>
    </message>
    <message>
        <source>Two screws stand %1 apart in one row along the grain, less than %2: they may split the front.</source>
        <translation>Zwei Schrauben sitzen in einer Reihe längs zur Faser nur %1 auseinander, weniger als %2: Das Holz kann reißen.</translation>
    </message>
    <message>
        <source>least spacing along the grain = %1 × the shank of %2 %3</source>
        <translation>kleinster Abstand längs zur Faser = %1 × Schaft von %2 %3</translation>
    </message>
    <message>
        <source>No pilot hole is drilled, and the wood (%1) is dense enough to need one of %2.</source>
        <translation>Es ist keine Vorbohrung vorgesehen, und das Holz (%1) ist so dicht, dass eine von %2 nötig ist.</translation>
    </message>
    <message>
        <source>specific gravity, ovendry, %1 &gt; 0.50; from %2 to %3 at a root of %4</source>
        <translation>Dichtezahl im Darrzustand %1 &gt; 0,50; von %2 bis %3 bei einem Kern von %4</translation>
    </message>
    <message>
        <source>The pilot hole of %1 leaves the screw&apos;s thread too little to hold in: at most %2.</source>
        <translation>Die Vorbohrung von %1 lässt dem Gewinde der Schraube zu wenig Holz: höchstens %2.</translation>
    </message>
    <message>
        <source>The pilot hole of %1 is too small for wood so dense: at least %2, or the screw may break or split it.</source>
        <translation>Die Vorbohrung von %1 ist zu klein für so dichtes Holz: mindestens %2, sonst kann die Schraube brechen oder das Holz reißen.</translation>
    </message>
    <message>
        <source>from %1 to %2 at a root of %3</source>
        <translation>von %1 bis %2 bei einem Kern von %3</translation>
    </message>
    <message>
        <source>at most the root, %1</source>
        <translation>höchstens der Kern, %1</translation>
    </message>
    <message>
        <source>The clearance hole of %1 is smaller than the screw&apos;s shank of %2: the thread holds in the wall and does not draw the front up.</source>
        <translation>Die Durchgangsbohrung von %1 ist kleiner als der Schaft der Schraube von %2: Das Gewinde greift im Vorderstück und zieht die Blende nicht heran.</translation>
    </message>
    <message>
        <source>clearance hole %1; at least %2</source>
        <translation>Durchgangsbohrung %1; mindestens %2</translation>
    </message>
    <message>
        <source>The screws&apos; heads of %1 go through their clearance holes of %2 and hold nothing: put a washer under each, or use screws with a washer head.</source>
        <translation>Die Schraubenköpfe von %1 gehen durch ihre Durchgangsbohrungen von %2 hindurch und halten nichts: je eine Unterlegscheibe unterlegen oder Schrauben mit Tellerkopf nehmen.</translation>
    </message>
    <message>
        <source>The screws&apos; heads of %1 bear on only %2 of wood round their clearance holes of %3, less than %4: put a washer under each, or use screws with a washer head.</source>
        <translation>Die Schraubenköpfe von %1 liegen rings um ihre Durchgangsbohrungen von %3 nur auf %2 Holz auf, weniger als %4: je eine Unterlegscheibe unterlegen oder Schrauben mit Tellerkopf nehmen.</translation>
    </message>
    <message>
        <source>bearing all round = (head − clearance hole) / 2 = (%1 − %2) / 2 %3; at least %4</source>
        <translation>Auflage ringsum = (Kopf − Durchgangsbohrung) / 2 = (%1 − %2) / 2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>The bolt&apos;s hole of %1 is smaller than its thread of %2: it does not go through.</source>
        <translation>Die Bohrung von %1 ist kleiner als das Gewinde der Gewindeschraube von %2: Sie geht nicht hindurch.</translation>
    </message>
    <message>
        <source>hole %1; at least %2 (ISO 273 and ASME B18.2.8 give more)</source>
        <translation>Bohrung %1; mindestens %2 (ISO 273 und ASME B18.2.8 geben mehr)</translation>
    </message>
    <message>
        <source>Only %1 of thread is in the handle, less than the bolt&apos;s diameter of %2: %3 bolt, %4 of wood to go through.</source>
        <translation>Im Griff sind nur %1 Gewinde, weniger als der Durchmesser der Gewindeschraube von %2: Gewindeschraube %3, Klemmdicke %4.</translation>
    </message>
    <message>
        <source>engagement = bolt − grip %1 − %2 %3; at least one diameter</source>
        <translation>Einschraubtiefe = Gewindeschraube − Klemmdicke %1 − %2 %3; mindestens ein Durchmesser</translation>
    </message>
    <message>
        <source>machine design practice, from memory: one diameter of thread in steel, more in softer metal</source>
        <translation>Praxis des Maschinenbaus, aus dem Gedächtnis: ein Durchmesser Gewinde in Stahl, mehr in weicherem Metall</translation>
    </message>
    <message>
        <source>The drawer loads its runners with %1, more than the %2 that they are rated for.</source>
        <translation>Die Führungen tragen zu viel: Der Schubkasten belastet sie mit %1, mehr als den %2, für die sie gebaut sind.</translation>
    </message>
    <message>
        <source>load = front + box + contents = %1 + %2 + %3 = %4; at most %5</source>
        <translation>Last = Blende + Schubkasten + Inhalt = %1 + %2 + %3 = %4; höchstens %5</translation>
    </message>
    <message>
        <source>rating as in the catalogue: check the runner&apos;s own sheet</source>
        <translation>Tragkraft wie im Katalog: im Datenblatt der Führung nachsehen</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>The front lies in the opening (%1) and on the frame (%2) at once: with a flat back it can do only one of them, unless it is rabbeted.</source>
        <translation>Die Blende ist zugleich einliegend (%1) und aufliegend (%2): Mit ebener Rückseite geht nur eines davon, wenn sie nicht gefalzt wird.</translation>
    </message>
    <message>
        <source>an inset side lies %1, the front&apos;s thickness, behind the panels&apos; front edges; an overlay side lies on them</source>
        <translation>eine einliegende Seite liegt um %1, die Dicke der Blende, hinter den Vorderkanten der Platten; eine aufliegende liegt auf ihnen</translation>
    </message>
    <message>
        <source>an inset side lies %1, the front&apos;s thickness, behind the frame&apos;s face; an overlay side lies on it</source>
        <translation>eine einliegende Seite liegt %1, die Dicke der Blende, hinter der Vorderseite des Rahmens; eine aufliegende liegt darauf</translation>
    </message>
    <message>
        <source>The screw hole goes %1 into the bottom: hole %2 above the box&apos;s lower edge, bottom&apos;s top %3, radius of the head %4.</source>
        <translation>Die Schraubenbohrung trifft den Boden, sie geht %1 hinein: Bohrung %2 über der Unterkante des Schubkastens, Oberseite des Bodens %3, Radius des Kopfes %4.</translation>
    </message>
    <message>
        <source>The screw hole stays only %1 clear of the bottom, less than %2: hole %3 above the box&apos;s lower edge, bottom&apos;s top %4, radius of the head %5.</source>
        <translation>Die Schraubenbohrung bleibt nur %1 vom Boden weg, weniger als %2: Bohrung %3 über der Unterkante des Schubkastens, Oberseite des Bodens %4, Radius des Kopfes %5.</translation>
    </message>
    <message>
        <source>least height = bottom&apos;s top + head&apos;s radius + margin %1 + %2 + %3 %4; the hole is at %5</source>
        <translation>kleinste Höhe = Oberseite des Bodens + Radius des Kopfes + Zugabe %1 + %2 + %3 %4; die Bohrung liegt bei %5</translation>
    </message>
    <message>
        <source>The hole clears the bottom, but the tool for its recess meets it by %1: hole %2 above the box&apos;s lower edge, bottom&apos;s top %3, radius of the tool %4.</source>
        <translation>Die Bohrung kommt am Boden vorbei, der Senker für die Kopfversenkung trifft ihn aber um %1: Bohrung %2 über der Unterkante des Schubkastens, Oberseite des Bodens %3, Radius des Senkers %4.</translation>
    </message>
    <message>
        <source>least height = bottom&apos;s top + tool&apos;s radius %1 + %2 %3; the hole is at %4</source>
        <translation>kleinste Höhe = Oberseite des Bodens + Radius des Senkers %1 + %2 %3; die Bohrung liegt bei %4</translation>
    </message>
    <message>
        <source>The tool for the screw&apos;s recess meets the box&apos;s left side by %1: hole %2 from it, side %3 thick, radius of the tool %4.</source>
        <translation>Der Senker für die Kopfversenkung trifft die linke Schubkastenseite um %1: Bohrung %2 von außen, Seite %3 dick, Radius des Senkers %4.</translation>
    </message>
    <message>
        <source>The tool for the screw&apos;s recess meets the box&apos;s right side by %1: hole %2 from it, side %3 thick, radius of the tool %4.</source>
        <translation>Der Senker für die Kopfversenkung trifft die rechte Schubkastenseite um %1: Bohrung %2 von außen, Seite %3 dick, Radius des Senkers %4.</translation>
    </message>
    <message>
        <source>least distance = side + tool&apos;s radius %1 + %2 %3; the hole is at %4</source>
        <translation>kleinster Abstand = Seite + Radius des Senkers %1 + %2 %3; die Bohrung liegt bei %4</translation>
    </message>
    <message>
        <source>The screw&apos;s head breaks out of the wall&apos;s top edge by %1: its centre is %2 below it; %3 is needed.</source>
        <translation>Der Schraubenkopf bricht um %1 aus der Oberkante des Vorderstücks aus: Seine Mitte liegt %2 darunter; %3 sind nötig.</translation>
    </message>
    <message>
        <source>The screw hole is too near the wall&apos;s top edge: its centre is %1 below it; %2 is needed.</source>
        <translation>Die Schraubenbohrung sitzt zu nah an der Oberkante des Vorderstücks: Ihre Mitte liegt %1 darunter; %2 sind nötig.</translation>
    </message>
    <message>
        <source>least distance = the larger of tool&apos;s radius and head&apos;s radius + margin %1; the hole is at %2</source>
        <translation>kleinster Abstand = der größere Wert von Radius des Senkers und Radius des Kopfes + Zugabe %1; die Bohrung liegt bei %2</translation>
    </message>
    <message>
        <source>The screw hole runs %1 into what is drilled for handle hole %2: %3 from centre to centre.</source>
        <translation>Die Schraubenbohrung trifft das, was für die Griffbohrung %2 gebohrt wird, um %1: von Mitte zu Mitte %3.</translation>
    </message>
    <message>
        <source>The screw hole runs %1 into what is drilled for a handle hole: %2 from centre to centre.</source>
        <translation>Die Schraubenbohrung trifft das, was für eine Griffbohrung gebohrt wird, um %1: von Mitte zu Mitte %2.</translation>
    </message>
    <message>
        <source>Only %1 of wood is left between the screw hole and what is drilled for handle hole %2, less than %3: %4 from centre to centre.</source>
        <translation>Zwischen der Schraubenbohrung und dem, was für die Griffbohrung %2 gebohrt wird, bleiben nur %1 Holz, weniger als %3: von Mitte zu Mitte %4.</translation>
    </message>
    <message>
        <source>Only %1 of wood is left between the screw hole and what is drilled for a handle hole, less than %2: %3 from centre to centre.</source>
        <translation>Zwischen der Schraubenbohrung und dem, was für eine Griffbohrung gebohrt wird, bleiben nur %1 Holz, weniger als %2: von Mitte zu Mitte %3.</translation>
    </message>
    <message>
        <source>least distance = both radii + wood between %1 + %2 %3; the holes are %4 apart</source>
        <translation>kleinster Abstand = beide Radien + Holz dazwischen %1 + %2 %3; die Bohrungen liegen %4 auseinander</translation>
    </message>
    <message>
        <source>There is no front behind the screw hole: the box wall reaches past it there.</source>
        <translation>Hinter der Schraubenbohrung ist keine Blende: Das Vorderstück reicht dort über sie hinaus.</translation>
    </message>
    <message>
        <source>The front is only %1 thick behind the screw hole; a screw needs %2 there.</source>
        <translation>Hinter der Schraubenbohrung ist die Blende nur %1 dick; eine Schraube braucht dort %2.</translation>
    </message>
    <message>
        <source>least thickness = least penetration + least tip cover %1 + %2 %3; behind the hole it is %4</source>
        <translation>kleinste Dicke = kleinste Eindringtiefe + kleinstes Restholz %1 + %2 %3; hinter der Bohrung sind es %4</translation>
    </message>
    <message>
        <source>The screw hole lies in the runner&apos;s clear zone in the wall&apos;s lower corner: %1 from the box&apos;s side and %2 up; the zone with the tool&apos;s radius reaches %3 inwards and %4 up.</source>
        <translation>Die Schraubenbohrung liegt im Freiraum der Führung in der unteren Ecke des Vorderstücks: %1 von der Außenseite des Schubkastens und %2 hoch; der Freiraum reicht mit dem Halbmesser des Werkzeugs %3 nach innen und %4 hinauf.</translation>
    </message>
    <message>
        <source>The screw hole lies in the runner&apos;s clear zone in the middle of the wall: %1 from the middle and %2 up; the zone with the tool&apos;s radius reaches %3 to each side and %4 up.</source>
        <translation>Die Schraubenbohrung liegt im Freiraum der Führung in der Mitte des Vorderstücks: %1 von der Mitte und %2 hoch; der Freiraum reicht mit dem Halbmesser des Werkzeugs %3 nach jeder Seite und %4 hinauf.</translation>
    </message>
    <message>
        <source>a hole must be %1 or more away that way, or %2 or more up; it is at %3 and %4</source>
        <translation>eine Bohrung muss in dieser Richtung mindestens %1 entfernt oder mindestens %2 hoch sein; sie liegt bei %3 und %4</translation>
    </message>
    <message>
        <source>runner</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>The runner is %1 too long for the case: %2, and %3 is left behind its front end.</source>
        <translation>Die Führung ist %1 zu lang für den Korpus: %2, und hinter ihrem vorderen Ende bleiben %3.</translation>
    </message>
    <message>
        <source>The runner is %1 longer than the box: %2, and the box is %3 deep.</source>
        <translation>Die Führung ist %1 länger als der Schubkasten: %2, und der Schubkasten ist %3 tief.</translation>
    </message>
    <message>
        <source>room = frame + case inside − runner&apos;s setback %1; the box is %2 deep; the runner must be no longer than either</source>
        <translation>Platz = Rahmen + Korpus innen − Rücksprung der Führung %1; der Schubkasten ist %2 tief; die Führung darf nicht länger sein als eines von beiden</translation>
    </message>
    <message>
        <source>No stocked length of this runner fits (%1): the shortest is %2, the case leaves %3, and the box is %4 deep.</source>
        <translation>Keine vorrätige Länge dieser Führung passt (%1): Die kürzeste hat %2, der Korpus lässt %3, und der Schubkasten ist %4 tief.</translation>
    </message>
    <message>
        <source>The box is %1 deeper than its runners are long: their hooks do not reach its back. The box is %2 deep, the runners are %3 long.</source>
        <translation>Der Schubkasten ist %1 tiefer, als seine Führungen lang sind: Ihre Haken erreichen das Rückenstück nicht. Der Schubkasten ist %2 tief, die Führungen sind %3 lang.</translation>
    </message>
    <message>
        <source>The box is %1 shorter than its runners are long: its back does not reach their hooks. The box is %2 deep, the runners are %3 long.</source>
        <translation>Der Schubkasten ist %1 kürzer als seine Führungen: Sein Rückenstück erreicht ihre Haken nicht. Der Schubkasten ist %2 tief, die Führungen sind %3 lang.</translation>
    </message>
    <message>
        <source>box depth = runner length %1; the box is %2</source>
        <translation>Tiefe des Schubkastens = Länge der Führung %1; der Schubkasten hat %2</translation>
    </message>
    <message>
        <source>The box is %1 too low for the runner at its side: it is %2 high, and the runner&apos;s top lies %3 above its lower edge.</source>
        <translation>Der Schubkasten ist %1 zu niedrig für die Führung an seiner Seite: Er ist %2 hoch, und die Oberkante der Führung liegt %3 über seiner Unterkante.</translation>
    </message>
    <message>
        <source>runner&apos;s top = its lower edge + its height %1 + %2 %3; the box is %4 high</source>
        <translation>Oberkante der Führung = ihre Unterkante + ihre Höhe %1 + %2 %3; der Schubkasten ist %4 hoch</translation>
    </message>
    <message>
        <source>The box is %1 too narrow for what runs under it: %2 between its sides, and %3 is needed.</source>
        <translation>Der Schubkasten ist %1 zu schmal für das, was unter ihm läuft: zwischen seinen Seiten %2, nötig sind %3.</translation>
    </message>
    <message>
        <source>needed between the sides: what the runners take under the bottom %1; the box has %2</source>
        <translation>nötig zwischen den Seiten: was die Führungen unter dem Boden brauchen %1; der Schubkasten hat %2</translation>
    </message>
    <message>
        <source>The bottom lies %1 too low for the runner under it: its underside is at %2, the runner&apos;s top at %3 above the box&apos;s lower edge.</source>
        <translation>Der Boden liegt %1 zu tief für die Führung darunter: Seine Unterseite liegt %2, die Oberkante der Führung %3 über der Unterkante des Schubkastens.</translation>
    </message>
    <message>
        <source>The notch for the runner would cut %1 into the bottom&apos;s groove: the groove is %2 above the box&apos;s lower edge, the notch %3 high.</source>
        <translation>Die Ausklinkung für die Führung würde %1 in die Nut des Bodens schneiden: Die Nut liegt %2 über der Unterkante des Schubkastens, die Ausklinkung ist %3 hoch.</translation>
    </message>
    <message>
        <source>least height of the groove = the higher of runner&apos;s top and notch %1; the groove is at %2</source>
        <translation>kleinste Höhe der Nut = das Höhere von Oberkante der Führung und Ausklinkung %1; die Nut liegt bei %2</translation>
    </message>
    <message>
        <source>The runner reaches %1 below the opening: it takes %2 below the box, and the clearance there is %3.</source>
        <translation>Die Führung reicht %1 unter die Öffnung: Sie braucht %2 unter dem Schubkasten, und die Luft dort ist %3.</translation>
    </message>
    <message>
        <source>least clearance below = what the runner takes below the box %1; there is %2</source>
        <translation>kleinste Luft unten = was die Führung unter dem Schubkasten braucht %1; da sind %2</translation>
    </message>
    <message>
        <source>side clearance that the runner asks for %1, up to %2 more; there is %3</source>
        <translation>seitliche Luft, die die Führung verlangt %1, bis zu %2 mehr; da sind %3</translation>
    </message>
    <message>
        <source>needed = the runner&apos;s side clearance + sides that it is for − sides %1 + %2 − %3 %4, up to %5 more; there is %6</source>
        <translation>nötig = seitliche Luft der Führung + Seiten, für die sie gedacht ist − Seiten %1 + %2 − %3 %4, bis zu %5 mehr; da sind %6</translation>
    </message>
    <message>
        <source>The box has %1 too little clearance at each side for its runners: %2, and %3 is needed.</source>
        <translation>Der Schubkasten hat auf jeder Seite %1 zu wenig Luft für seine Führungen: %2, nötig sind %3.</translation>
    </message>
    <message>
        <source>The box has %1 too much clearance at each side for its runners: %2, and %3 is needed.</source>
        <translation>Der Schubkasten hat auf jeder Seite %1 zu viel Luft für seine Führungen: %2, nötig sind %3.</translation>
    </message>
    <message>
        <source>The box sticks in damp air: it grows %1 higher, and the play above it is %2.</source>
        <translation>Der Schubkasten klemmt in feuchter Luft: Er wird %1 höher, und das Spiel darüber ist %2.</translation>
    </message>
    <message>
        <source>growth = box height × the sides&apos; change from when they are cut to the wettest air, flat-sawn; of %1 that is %2; the play above is %3</source>
        <translation>Wachstum = Höhe des Schubkastens × Änderung der Seiten vom Zuschnitt bis zur feuchtesten Luft, liegende Jahresringe; bei %1 sind das %2; das Spiel darüber ist %3</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13: change = size × coefficient × change of moisture</source>
        <translation>Forest Products Laboratory, Wood Handbook (GTR-282), Kapitel 13: Änderung = Maß × Beiwert × Änderung der Holzfeuchte</translation>
    </message>
    <message>
        <source>%1 screw, %2 frame</source>
        <translation>Schraube %1, Rahmen %2</translation>
    </message>
    <message>
        <source>%1 screw, set %2 deep, %3 frame</source>
        <translation>Schraube %1, %2 tief versenkt, Rahmen %3</translation>
    </message>
    <message>
        <source>%1 screw, %2 wall</source>
        <translation>Schraube %1, Vorderstück %2</translation>
    </message>
    <message>
        <source>%1 screw, set %2 deep, %3 wall</source>
        <translation>Schraube %1, %2 tief versenkt, Vorderstück %3</translation>
    </message>
    <message>
        <source>tip cover = front behind the hole − (screw + recess − wall) %1 − (%2 + %3 − %4) %5</source>
        <translation>Restholz = Blende hinter der Bohrung − (Schraube + Kopfversenkung − Vorderstück) %1 − (%2 + %3 − %4) %5</translation>
    </message>
    <message>
        <source>The screw comes %1 through the show face: %2, %3 front behind the hole.</source>
        <translation>Die Schraube kommt %1 durch die Sichtseite: %2, Blende hinter der Bohrung %3.</translation>
    </message>
    <message>
        <source>The screw&apos;s tip is level with the show face: %1, %2 front behind the hole.</source>
        <translation>Die Schraubenspitze liegt bündig in der Sichtseite: %1, Blende hinter der Bohrung %2.</translation>
    </message>
    <message>
        <source>Only %1 of wood is left before the screw&apos;s tip, less than %2: %3, %4 front behind the hole.</source>
        <translation>Vor der Schraubenspitze bleiben nur %1 Holz, weniger als %2: %3, Blende hinter der Bohrung %4.</translation>
    </message>
    <message>
        <source>The screw goes only %1 into the front, less than %2: %3.</source>
        <translation>Die Schraube steckt nur %1 tief in der Blende, weniger als %2: %3.</translation>
    </message>
    <message>
        <source>The screw does not reach the front: %1.</source>
        <translation>Die Schraube reicht nicht bis in die Blende: %1.</translation>
    </message>
    <message>
        <source>penetration = screw + recess − wall %1 + %2 − %3 %4; at least %5</source>
        <translation>Eindringtiefe = Schraube + Kopfversenkung − Vorderstück %1 + %2 − %3 %4; mindestens %5</translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long. The nearest are %3 and %4.</source>
        <translation>Keine vorrätige Schraube passt: Sie muss %1 bis %2 lang sein. Die nächsten sind %3 und %4.</translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long. The nearest is %3.</source>
        <translation>Keine vorrätige Schraube passt: Sie muss %1 bis %2 lang sein. Die nächste ist %3.</translation>
    </message>
    <message>
        <source>No stocked screw fits: it has to be from %1 to %2 long.</source>
        <translation>Keine vorrätige Schraube passt: Sie muss %1 bis %2 lang sein.</translation>
    </message>
    <message>
        <source>least = wall − recess + least penetration %1 − %2 + %3 %4; greatest = wall − recess + front − least tip cover %1 − %2 + %5 − %6 %7</source>
        <translation>kleinste = Vorderstück − Kopfversenkung + kleinste Eindringtiefe %1 − %2 + %3 %4; größte = Vorderstück − Kopfversenkung + Blende − kleinstes Restholz %1 − %2 + %5 − %6 %7</translation>
    </message>
    <message>
        <source>No screw can fit: it has to be at least %1 long to hold and at most %2 not to come too near the show face.</source>
        <translation>Keine Schraube kann passen: Sie muss mindestens %1 lang sein, um zu halten, und höchstens %2, um der Sichtseite nicht zu nahe zu kommen.</translation>
    </message>
    <message>
        <source>Only %1 of wall is left under the screw&apos;s head, less than %2: %3 wall, %4 recess, head %5 high.</source>
        <translation>Unter dem Schraubenkopf bleiben nur %1 Vorderstück, weniger als %2: Vorderstück %3, Kopfversenkung %4, Kopf %5 hoch.</translation>
    </message>
    <message>
        <source>The recess leaves no wall under the screw&apos;s head: %1 wall, %2 recess, head %3 high.</source>
        <translation>Die Kopfversenkung lässt unter dem Schraubenkopf nichts vom Vorderstück: Vorderstück %1, Kopfversenkung %2, Kopf %3 hoch.</translation>
    </message>
    <message>
        <source>wall under the head = wall − recess − head %1 − %2 − %3 %4; at least %5</source>
        <translation>Vorderstück unter dem Kopf = Vorderstück − Kopfversenkung − Kopf %1 − %2 − %3 %4; mindestens %5</translation>
    </message>
    <message>
        <source>It is the same with %1.</source>
        <translation>Ebenso bei %1.</translation>
    </message>
    <message>
        <source>It is the same with %1, and with %2 more.</source>
        <translation>Ebenso bei %1 und bei %2 weiteren.</translation>
    </message>
    <message>
        <source>A solid front moves: between screw rows %1 apart by about %2 from dry air to damp, and the clearance holes give only %3; drill one row %4 or make its holes slots, up and down.</source>
        <translation>Massivholz arbeitet: Zwischen Schraubenreihen im Abstand von %1 bewegt sich die Blende von trockener zu feuchter Luft um etwa %2, und die Durchgangsbohrungen lassen nur %3; eine Reihe mit %4 bohren oder ihre Bohrungen als senkrechte Langlöcher ausführen.</translation>
    </message>
    <message>
        <source>movement ≈ rows apart / %1 %2 / %1 %3 (1/8 in for each foot across the grain, grain running from left to right); play = clearance hole − shank %4</source>
        <translation>Bewegung ≈ Abstand der Reihen / %1 %2 / %1 %3 (1/8 in je Fuß quer zur Faser, Faser von links nach rechts); Spiel = Durchgangsbohrung − Schaft %4</translation>
    </message>
    <message>
        <source>The front is %1 high, and its rows of screws stand only %2 apart, less than %3: solid wood can cup and tilt on them.</source>
        <translation>Die Blende ist %1 hoch, und ihre Schraubenreihen stehen nur %2 auseinander, weniger als %3: Massivholz kann darauf schüsseln und kippeln.</translation>
    </message>
    <message>
        <source>The front is %1 high, and one row of screws holds it: solid wood can cup and tilt on it. Two rows should stand %2 apart.</source>
        <translation>Die Blende ist %1 hoch, und eine einzige Schraubenreihe hält sie: Massivholz kann darauf schüsseln und kippeln. Zwei Reihen sollten %2 auseinander stehen.</translation>
    </message>
    <message>
        <source>least distance of the rows = height / %1 %2; told of solid fronts from %3 high whose grain runs from left to right</source>
        <translation>kleinster Abstand der Reihen = Höhe / %1 %2; gilt für Blenden aus Massivholz ab %3 Höhe, deren Faser von links nach rechts läuft</translation>
    </message>
    <message>
        <source>wood cut at %1 moisture goes from %2 to %3 in this room</source>
        <translation>Holz, das bei %1 Feuchte zugeschnitten ist, geht in diesem Raum von %2 bis %3</translation>
    </message>
    <message>
        <source>gap at the wettest = gap when cut − movement %1 − %2 %3; %4; at least %5</source>
        <translation>Fuge in der feuchtesten Luft = Fuge beim Zuschnitt − Bewegung %1 − %2 %3; %4; mindestens %5</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the fronts touch: their gap of %1 when cut closes, and %2 is missing.</source>
        <translation>In der feuchtesten Raumluft berühren sich die Blenden: Ihre Fuge von %1 beim Zuschnitt schließt sich, und %2 fehlen.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the fronts touch: their gap of %1 when cut closes.</source>
        <translation>In der feuchtesten Raumluft berühren sich die Blenden: Ihre Fuge von %1 beim Zuschnitt schließt sich.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap between the fronts is only %1, less than %2; when cut it is %3.</source>
        <translation>In der feuchtesten Raumluft wird die Fuge zwischen den Blenden eng: nur %1, weniger als %2; beim Zuschnitt sind es %3.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the left is only %1, less than %2; when cut it is %3.</source>
        <translation>In der feuchtesten Raumluft wird die Fuge links eng: nur %1, weniger als %2; beim Zuschnitt sind es %3.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the right is only %1, less than %2; when cut it is %3.</source>
        <translation>In der feuchtesten Raumluft wird die Fuge rechts eng: nur %1, weniger als %2; beim Zuschnitt sind es %3.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the bottom is only %1, less than %2; when cut it is %3.</source>
        <translation>In der feuchtesten Raumluft wird die Fuge unten eng: nur %1, weniger als %2; beim Zuschnitt sind es %3.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the gap at the top is only %1, less than %2; when cut it is %3.</source>
        <translation>In der feuchtesten Raumluft wird die Fuge oben eng: nur %1, weniger als %2; beim Zuschnitt sind es %3.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s left edge: its gap of %1 when cut closes.</source>
        <translation>In der feuchtesten Raumluft klemmt die Blende an der linken Kante ihrer Öffnung: Ihre Fuge von %1 beim Zuschnitt schließt sich.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s right edge: its gap of %1 when cut closes.</source>
        <translation>In der feuchtesten Raumluft klemmt die Blende an der rechten Kante ihrer Öffnung: Ihre Fuge von %1 beim Zuschnitt schließt sich.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s bottom edge: its gap of %1 when cut closes.</source>
        <translation>In der feuchtesten Raumluft klemmt die Blende an der unteren Kante ihrer Öffnung: Ihre Fuge von %1 beim Zuschnitt schließt sich.</translation>
    </message>
    <message>
        <source>In the room&apos;s wettest air the front binds at its opening&apos;s top edge: its gap of %1 when cut closes.</source>
        <translation>In der feuchtesten Raumluft klemmt die Blende an der oberen Kante ihrer Öffnung: Ihre Fuge von %1 beim Zuschnitt schließt sich.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s left edge and does not cover it.</source>
        <translation>In der trockensten Raumluft reicht die Blende nur eben bis an die linke Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s right edge and does not cover it.</source>
        <translation>In der trockensten Raumluft reicht die Blende nur eben bis an die rechte Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s bottom edge and does not cover it.</source>
        <translation>In der trockensten Raumluft reicht die Blende nur eben bis an die untere Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front only just reaches its opening&apos;s top edge and does not cover it.</source>
        <translation>In der trockensten Raumluft reicht die Blende nur eben bis an die obere Kante ihrer Öffnung und deckt sie nicht.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s left edge, which it should cover.</source>
        <translation>In der trockensten Raumluft endet die Blende %1 vor der linken Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s right edge, which it should cover.</source>
        <translation>In der trockensten Raumluft endet die Blende %1 vor der rechten Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s bottom edge, which it should cover.</source>
        <translation>In der trockensten Raumluft endet die Blende %1 vor der unteren Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>In the room&apos;s driest air the front ends %1 short of its opening&apos;s top edge, which it should cover.</source>
        <translation>In der trockensten Raumluft endet die Blende %1 vor der oberen Kante ihrer Öffnung, die sie decken sollte.</translation>
    </message>
    <message>
        <source>overlay at the driest = overlay when cut − movement %1 − %2 %3; %4; it needs more than 0</source>
        <translation>Aufschlag in der trockensten Luft = Aufschlag beim Zuschnitt − Bewegung %1 − %2 %3; %4; es muss mehr als 0 sein</translation>
    </message>
    <message>
        <source>Over the year the gaps down bank %1 come to differ by %2, which an eye sees: %3 here, %4 at the widest. Fronts of different heights move differently.</source>
        <translation>Im Lauf des Jahres werden die Fugen der Blendenreihe %1 um %2 ungleich, und das Auge sieht es: hier %3, an der breitesten Stelle %4. Verschieden hohe Blenden arbeiten verschieden.</translation>
    </message>
    <message>
        <source>difference = widest − narrowest gap %1 − %2 %3, when cut %4; at most %5; %6</source>
        <translation>Unterschied = breiteste − schmalste Fuge %1 − %2 %3, beim Zuschnitt %4; höchstens %5; %6</translation>
    </message>
    <message>
        <source>The screws&apos; heads of %1 still cover such a hole.</source>
        <translation>Die Schraubenköpfe von %1 decken eine solche Bohrung noch.</translation>
    </message>
    <message>
        <source>The screws&apos; heads of %1 bear on only %2 round such a hole: put washers under them.</source>
        <translation>Die Schraubenköpfe von %1 liegen rings um eine solche Bohrung nur mit %2 auf: Unterlegscheiben unterlegen.</translation>
    </message>
    <message>
        <source>The screws&apos; heads of %1 go through such a hole: make slots, or put washers under them.</source>
        <translation>Die Schraubenköpfe von %1 gehen durch eine solche Bohrung hindurch: Langlöcher ausführen oder Unterlegscheiben unterlegen.</translation>
    </message>
    <message>
        <source>Screws that do not hold the front need room: over the year it moves %1 at %2, and the clearance holes leave %3. Let the column of screws nearest to the middle hold; drill the others %4, or make slots of that length, left to right.</source>
        <translation>Schrauben, die die Blende nicht festhalten, brauchen Platz: Im Lauf des Jahres bewegt sie sich um %1 (%2), und die Durchgangsbohrungen lassen %3. Die Schrauben, die der Mitte am nächsten untereinander sitzen, festhalten lassen; die übrigen mit %4 bohren oder als waagerechte Langlöcher dieser Länge ausführen.</translation>
    </message>
    <message>
        <source>Screws that do not hold the front need room: over the year it moves %1 at %2, and the clearance holes leave %3. Let the lowest row of screws hold; drill the others %4, or make slots of that length, up and down.</source>
        <translation>Schrauben, die die Blende nicht festhalten, brauchen Platz: Im Lauf des Jahres bewegt sie sich um %1 (%2), und die Durchgangsbohrungen lassen %3. Die unterste Schraubenreihe festhalten lassen; die übrigen mit %4 bohren oder als senkrechte Langlöcher dieser Länge ausführen.</translation>
    </message>
    <message>
        <source>clearance hole ≥ shank + 2 × movement %1 + 2 × %2 %3; it is %4; %5</source>
        <translation>Durchgangsbohrung ≥ Schaft + 2 × Bewegung %1 + 2 × %2 %3; sie hat %4; %5</translation>
    </message>
    <message>
        <source>The wood&apos;s moisture leaves the range of 6 to 14 % for which its coefficient of movement is stated: %1. What lies beyond is worked out by a wider formula.</source>
        <translation>Die Holzfeuchte verlässt den Bereich von 6 bis 14 %, für den der Beiwert des Quellens und Schwindens gilt: %1. Darüber hinaus gilt eine weiter reichende Formel.</translation>
    </message>
    <message>
        <source>change = size × (M2 − M1) / (1 / C − 10 + M1) beyond 6 to 14 %, which is size × C × (M2 − M1) at 10 %</source>
        <translation>Änderung = Maß × (M2 − M1) / (1 / C − 10 + M1) außerhalb von 6 bis 14 %; das ist Maß × C × (M2 − M1) bei 10 %</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook (GTR-282), chapter 13; the wider formula from memory</source>
        <translation>Forest Products Laboratory, Wood Handbook (GTR-282), Kapitel 13; die weiter reichende Formel aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>No wood is chosen, so its movement over the year cannot be told; the front is taken to stay as it was cut.</source>
        <translation>Es ist kein Holz gewählt, deshalb lässt sich sein Quellen und Schwinden im Lauf des Jahres nicht sagen; die Blende gilt als unverändert.</translation>
    </message>
    <message>
        <source>Nothing is known of how &quot;%1&quot; shrinks and swells, so its movement over the year cannot be told; the front is taken to stay as it was cut.</source>
        <translation>Vom Quellen und Schwinden von „%1“ ist nichts bekannt, deshalb lässt es sich im Lauf des Jahres nicht sagen; die Blende gilt als unverändert.</translation>
    </message>
    <message>
        <source>give the wood&apos;s coefficients per 1 % of moisture or its shrinkage from green to ovendry, or choose stock that does not move</source>
        <translation>die Beiwerte des Holzes je 1 % Feuchte oder sein Schwindmaß von grün bis darrtrocken angeben oder ein Holz wählen, das nicht arbeitet</translation>
    </message>
    <message>
        <source>distance = to the case&apos;s edge − what covers it %1 − %2 %3; at least %4</source>
        <translation>Abstand = bis zur Kante des Korpus − was sie verdeckt %1 − %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>distance = to the case&apos;s edge + beyond it %1 + %2 %3; at least %4</source>
        <translation>Abstand = bis zur Kante des Korpus + dahinter %1 + %2 %3; mindestens %4</translation>
    </message>
    <message>
        <source>The front touches the wall: it scrapes on every pull.</source>
        <translation>Die Blende berührt die Wand: Sie streift bei jedem Zug.</translation>
    </message>
    <message>
        <source>The front reaches %1 into the wall.</source>
        <translation>Die Blende ragt um %1 in die Wand.</translation>
    </message>
    <message>
        <source>The front stays only %1 from the wall; %2 are wanted, for no wall is straight.</source>
        <translation>Die Blende hält nur %1 Abstand von der Wand; gewünscht sind %2, denn keine Wand ist gerade.</translation>
    </message>
    <message>
        <source>The front touches the neighbouring case&apos;s front.</source>
        <translation>Die Blende berührt die Blende des Nachbarkorpus.</translation>
    </message>
    <message>
        <source>The front reaches %1 over the neighbouring case&apos;s front.</source>
        <translation>Die Blende ragt um %1 über die Blende des Nachbarkorpus.</translation>
    </message>
    <message>
        <source>The gap to the neighbouring case&apos;s front is %1; %2 are chosen.</source>
        <translation>Die Fuge zur Blende des Nachbarkorpus ist %1; gewählt sind %2.</translation>
    </message>
    <message>
        <source>The front touches the overhanging top.</source>
        <translation>Die Blende berührt die überstehende Deckplatte.</translation>
    </message>
    <message>
        <source>The front reaches %1 up behind the overhanging top&apos;s lip.</source>
        <translation>Die Blende ragt um %1 hinter den Überhang der Deckplatte.</translation>
    </message>
    <message>
        <source>The front ends only %1 below the overhanging top; %2 are wanted.</source>
        <translation>Die Blende endet nur %1 unter der überstehenden Deckplatte; gewünscht sind %2.</translation>
    </message>
    <message>
        <source>The front touches the moulding on the plinth.</source>
        <translation>Die Blende berührt die Leiste auf dem Sockel.</translation>
    </message>
    <message>
        <source>The front reaches %1 into the moulding on the plinth.</source>
        <translation>Die Blende ragt um %1 in die Leiste auf dem Sockel.</translation>
    </message>
    <message>
        <source>The front ends only %1 above the plinth&apos;s moulding; %2 are wanted.</source>
        <translation>Die Blende endet nur %1 über der Leiste auf dem Sockel; gewünscht sind %2.</translation>
    </message>
    <message>
        <source>The front touches the moulding.</source>
        <translation>Die Blende berührt die Zierleiste.</translation>
    </message>
    <message>
        <source>The front reaches %1 into the moulding.</source>
        <translation>Die Blende ragt um %1 in die Zierleiste.</translation>
    </message>
    <message>
        <source>The front stays only %1 from the moulding; %2 are wanted.</source>
        <translation>Die Blende hält nur %1 Abstand von der Zierleiste; gewünscht sind %2.</translation>
    </message>
    <message>
        <source>The fronts of bank %1 do not step by the system holes&apos; pitch: %2 to the next, %3 off.</source>
        <translation>Die Blenden der Reihe %1 stufen nicht im Lochabstand der Systembohrungen: %2 bis zur nächsten, %3 daneben.</translation>
    </message>
    <message>
        <source>step = front + gap above it %1; nearest is %2, a whole number of %3: then the runners behind all fronts take the same holes</source>
        <translation>Stufe = Blende + Fuge darüber %1; am nächsten liegt %2, ein Vielfaches von %3: Dann nehmen die Führungen hinter allen Blenden gleiche Bohrungen</translation>
    </message>
</context>
</TS>
