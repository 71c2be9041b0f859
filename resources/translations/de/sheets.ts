<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>margin</source>
        <translation>Rand</translation>
    </message>
    <message>
        <source>a margin under 6.5 mm loses marks at the paper&apos;s edge</source>
        <translation>bei einem Rand unter 6,5 mm gehen Marken am Papierrand verloren</translation>
    </message>
    <message>
        <source>use 6.5 mm or more</source>
        <translation>6,5 mm oder mehr nehmen</translation>
    </message>
    <message>
        <source>overlap</source>
        <translation>Überlappung</translation>
    </message>
    <message>
        <source>an overlap can&apos;t be negative</source>
        <translation>eine Überlappung kann nicht negativ sein</translation>
    </message>
    <message>
        <source>use 0 for a butt joint</source>
        <translation>für einen stumpfen Stoß 0 nehmen</translation>
    </message>
    <message>
        <source>paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>the paper has no size</source>
        <translation>das Papier hat keine Größe</translation>
    </message>
    <message>
        <source>choose a paper</source>
        <translation>ein Papier wählen</translation>
    </message>
    <message>
        <source>the tiles would be mostly overlap</source>
        <translation>die Kacheln bestünden größtenteils aus Überlappung</translation>
    </message>
    <message>
        <source>use a larger paper or a smaller overlap</source>
        <translation>ein größeres Papier oder eine kleinere Überlappung nehmen</translation>
    </message>
    <message>
        <source>not corrected</source>
        <translation>nicht korrigiert</translation>
    </message>
    <message>
        <source>corrected: × %1 across, × %2 up</source>
        <translation>korrigiert: × %1 quer, × %2 hoch</translation>
    </message>
    <message>
        <source>corrected for %1: × %2 across, × %3 up</source>
        <translation>korrigiert für %1: × %2 quer, × %3 hoch</translation>
    </message>
    <message>
        <source>Print at 100 % / Actual size, not Fit. %1; %2.</source>
        <translation>Mit 100 % / Tatsächliche Größe drucken, nicht „Anpassen“. %1; %2.</translation>
    </message>
    <message>
        <source>Test on scrap; measure the check bars before drilling; wear eye protection. Tool makers&apos; instructions and local codes come first.</source>
        <translation>An einem Reststück proben; vor dem Bohren die Prüfmaßstäbe messen; Augenschutz tragen. Anleitungen der Werkzeughersteller und örtliche Vorschriften gehen vor.</translation>
    </message>
    <message>
        <source>%1 · page %2 of %3</source>
        <translation>%1 · Seite %2 von %3</translation>
    </message>
    <message>
        <source>%1 · tile %2 · page %3 of %4</source>
        <translation>%1 · Kachel %2 · Seite %3 von %4</translation>
    </message>
    <message>
        <source>Test page for measuring a printer</source>
        <translation>Testseite zum Vermessen eines Druckers</translation>
    </message>
    <message>
        <source>paper %1, upright.</source>
        <translation>Papier %1, Hochformat.</translation>
    </message>
    <message>
        <source>paper %1, landscape.</source>
        <translation>Papier %1, Querformat.</translation>
    </message>
    <message>
        <source>Printer %1, paper %2, upright.</source>
        <translation>Drucker %1, Papier %2, Hochformat.</translation>
    </message>
    <message>
        <source>Printer %1, paper %2, landscape.</source>
        <translation>Drucker %1, Papier %2, Querformat.</translation>
    </message>
    <message>
        <source>Print at 100 % / Actual size, not Fit. Nothing on this page is corrected.</source>
        <translation>Mit 100 % / Tatsächliche Größe drucken, nicht „Anpassen“. Auf dieser Seite ist nichts korrigiert.</translation>
    </message>
    <message>
        <source>Print at 100 % / Actual size, not Fit. Proof of the correction: × %1 across, × %2 up.</source>
        <translation>Mit 100 % / Tatsächliche Größe drucken, nicht „Anpassen“. Probe der Korrektur: × %1 quer, × %2 hoch.</translation>
    </message>
    <message>
        <source>Measure bar A and bar B with a steel rule, from outer tick to outer tick, as finely as you can read, and type both lengths.</source>
        <translation>Maßstab A und Maßstab B mit einem Stahllineal von Außenstrich zu Außenstrich messen, so fein wie es sich ablesen lässt, und beide Längen eintippen.</translation>
    </message>
    <message>
        <source>%1 has no room for the bars to be measured</source>
        <translation>%1 hat keinen Platz für die Maßstäbe, die zu messen sind</translation>
    </message>
    <message>
        <source>use a larger paper or a smaller margin</source>
        <translation>ein größeres Papier oder einen kleineren Rand nehmen</translation>
    </message>
    <message>
        <source>%1: measure outer tick to outer tick</source>
        <translation>%1: von Außenstrich zu Außenstrich messen</translation>
    </message>
    <message>
        <source>from the show face</source>
        <translation>von der Sichtseite</translation>
    </message>
    <message>
        <source>from the back</source>
        <translation>von der Rückseite</translation>
    </message>
    <message>
        <source>from the top edge</source>
        <translation>von der Oberkante</translation>
    </message>
    <message>
        <source>%1: mortise %2 × %3</source>
        <translation>%1: Ausstemmung %2 × %3</translation>
    </message>
    <message>
        <source>%1 deep, %2</source>
        <translation>%1 tief, %2</translation>
    </message>
    <message>
        <source>%1: mortise in the top edge, %2 long, %3 deep</source>
        <translation>%1: Ausstemmung in der Oberkante, %2 lang, %3 tief</translation>
    </message>
    <message>
        <source>from %1 to %2 behind the show face</source>
        <translation>von %1 bis %2 hinter der Sichtseite</translation>
    </message>
    <message>
        <source>%1: drill %2</source>
        <translation>%1: %2 bohren</translation>
    </message>
    <message>
        <source>through, %1</source>
        <translation>durch, %1</translation>
    </message>
    <message>
        <source>%1: as before</source>
        <translation>%1: wie zuvor</translation>
    </message>
    <message>
        <source>%1: pilot %2</source>
        <translation>%1: Vorbohrung %2</translation>
    </message>
    <message>
        <source>%1: %2.</source>
        <translation>%1: %2.</translation>
    </message>
    <message>
        <source>%1: %2; %3 screws, %4, %5 long.</source>
        <translation>%1: %2; %3 Schrauben, %4, %5 lang.</translation>
    </message>
    <message>
        <source>%1: %2; %3 screws, %4.</source>
        <translation>%1: %2; %3 Schrauben, %4.</translation>
    </message>
    <message>
        <source>through, show face</source>
        <translation>durch, von der Sichtseite</translation>
    </message>
    <message>
        <source>counterbore %1</source>
        <translation>Senkung %1</translation>
    </message>
    <message>
        <source>%1 deep, from the back</source>
        <translation>%1 tief, von hinten</translation>
    </message>
    <message>
        <source>field begins</source>
        <translation>Spiegel beginnt</translation>
    </message>
    <message>
        <source>Front %1</source>
        <translation>Blende %1</translation>
    </message>
    <message>
        <source>%1: %2 wide, %3 high, %4 thick.</source>
        <translation>%1: %2 breit, %3 hoch, %4 dick.</translation>
    </message>
    <message>
        <source>Read from the show face</source>
        <translation>Von der Sichtseite lesen</translation>
    </message>
    <message>
        <source>the front&apos;s top edge is up</source>
        <translation>die Oberkante der Blende ist oben</translation>
    </message>
    <message>
        <source>piece %1: %2</source>
        <translation>Stück %1: %2</translation>
    </message>
    <message>
        <source>drill %1, through</source>
        <translation>%1 bohren, durch</translation>
    </message>
    <message>
        <source>head sunk %1</source>
        <translation>Kopf %1 versenkt</translation>
    </message>
    <message>
        <source>Keeper piece %1: %2 long, begins %3 %4; screws %5 from its front end.</source>
        <translation>Halteleiste, Stück %1: %2 lang, beginnt %3 %4; Schrauben %5 von seinem vorderen Ende.</translation>
    </message>
    <message>
        <source>Runner: %1 long, %2 high.</source>
        <translation>Führung: %1 lang, %2 hoch.</translation>
    </message>
    <message>
        <source>Furring: %1 long, %2 thick.</source>
        <translation>Auffütterung: %1 lang, %2 dick.</translation>
    </message>
    <message>
        <source>Setup blocks: %1 under the runner&apos;s top, %2 between runner and keeper.</source>
        <translation>Einstellklötze: %1 unter der Oberseite der Führung, %2 zwischen Führung und Halteleiste.</translation>
    </message>
    <message>
        <source>Board: %1 wide, %2 deep, %3 thick.</source>
        <translation>Platte: %1 breit, %2 tief, %3 dick.</translation>
    </message>
    <message>
        <source>Keeper strips of board %1</source>
        <translation>Halteleisten der Platte %1</translation>
    </message>
    <message>
        <source>Keeper strip of board %1, left</source>
        <translation>Halteleiste der Platte %1, links</translation>
    </message>
    <message>
        <source>Keeper strip of board %1, right</source>
        <translation>Halteleiste der Platte %1, rechts</translation>
    </message>
    <message>
        <source>Read from inside the case; on the right side from behind</source>
        <translation>Vom Inneren des Korpus gelesen; auf der rechten Seite von hinten</translation>
    </message>
    <message>
        <source>the strip&apos;s front end is at the left</source>
        <translation>das vordere Ende der Leiste liegt links</translation>
    </message>
    <message>
        <source>hole, true size</source>
        <translation>Bohrung, wahre Größe</translation>
    </message>
    <message>
        <source>register mark</source>
        <translation>Passkreuz</translation>
    </message>
    <message>
        <source>cut</source>
        <translation>schneiden</translation>
    </message>
    <message>
        <source>neighbour&apos;s edge</source>
        <translation>Kante der Nachbarkachel</translation>
    </message>
    <message>
        <source>centre line</source>
        <translation>Mittellinie</translation>
    </message>
    <message>
        <source>waste</source>
        <translation>Abfall</translation>
    </message>
    <message>
        <source>cut here, lay over tile %1</source>
        <translation>hier schneiden, auf Kachel %1 legen</translation>
    </message>
    <message>
        <source>lies under tile %1</source>
        <translation>liegt unter Kachel %1</translation>
    </message>
    <message>
        <source>over tile %1</source>
        <translation>auf Kachel %1</translation>
    </message>
    <message>
        <source>under tile %1</source>
        <translation>unter Kachel %1</translation>
    </message>
    <message>
        <source>%1 with these margins has no room for the check bars of 100 mm and 4 in</source>
        <translation>%1 hat mit diesen Rändern keinen Platz für die Prüfmaßstäbe von 100 mm und 4 in</translation>
    </message>
    <message>
        <source>%1 with these margins has no room for a drawing beside its check bars and words</source>
        <translation>%1 hat mit diesen Rändern neben Prüfmaßstäben und Text keinen Platz für eine Zeichnung</translation>
    </message>
    <message>
        <source>a page would be longer than 5 080 mm</source>
        <translation>eine Seite würde länger als 5 080 mm</translation>
    </message>
    <message>
        <source>use sheets instead of a roll, or a smaller paper</source>
        <translation>Blätter statt einer Rolle oder ein kleineres Papier nehmen</translation>
    </message>
    <message>
        <source>the roll&apos;s width &quot;%1&quot; can&apos;t be read</source>
        <translation>die Breite der Rolle „%1“ ist nicht zu lesen</translation>
    </message>
    <message>
        <source>write it with its unit: roll 610 mm</source>
        <translation>sie mit ihrer Einheit schreiben: roll 610 mm</translation>
    </message>
    <message>
        <source>Roll %1</source>
        <translation>Rolle %1</translation>
    </message>
    <message>
        <source>no paper is called &quot;%1&quot;</source>
        <translation>kein Papier heißt „%1“</translation>
    </message>
    <message>
        <source>use one of %1, a sheet by its size: 300 x 400 mm, or a roll by its width: roll 610 mm</source>
        <translation>eines von %1 nehmen, ein Blatt nach seiner Größe: 300 x 400 mm, oder eine Rolle nach ihrer Breite: roll 610 mm</translation>
    </message>
    <message>
        <source>a roll needs a width above zero</source>
        <translation>eine Rolle braucht eine Breite über null</translation>
    </message>
    <message>
        <source>write roll 610 mm</source>
        <translation>roll 610 mm schreiben</translation>
    </message>
    <message>
        <source>a sheet needs a width and a height above zero</source>
        <translation>ein Blatt braucht eine Breite und eine Höhe über null</translation>
    </message>
    <message>
        <source>write them like 300 mm and 400 mm</source>
        <translation>sie wie 300 mm und 400 mm schreiben</translation>
    </message>
    <message>
        <source>%1, left face</source>
        <translation>%1, linke Fläche</translation>
    </message>
    <message>
        <source>%1, right face</source>
        <translation>%1, rechte Fläche</translation>
    </message>
    <message>
        <source>System holes, %1</source>
        <translation>Systembohrungen, %1</translation>
    </message>
    <message>
        <source>Hold the left edge flush with the panel&apos;s front edge, the low end with the panel&apos;s lower end.</source>
        <translation>Die linke Kante bündig an die Vorderkante der Platte halten, das untere Ende an das untere Ende der Platte.</translation>
    </message>
    <message>
        <source>Hold the right edge flush with the panel&apos;s front edge, the low end with the panel&apos;s lower end.</source>
        <translation>Die rechte Kante bündig an die Vorderkante der Platte halten, das untere Ende an das untere Ende der Platte.</translation>
    </message>
    <message>
        <source>Drill %1 every %2, the row %3 behind the front edge.</source>
        <translation>Alle %2 mit %1 bohren, die Reihe %3 hinter der Vorderkante.</translation>
    </message>
    <message>
        <source>A second row stands %1 behind the front edge, at the same heights.</source>
        <translation>Eine zweite Reihe steht %1 hinter der Vorderkante, auf denselben Höhen.</translation>
    </message>
    <message>
        <source>Serves: %1.</source>
        <translation>Gilt für: %1.</translation>
    </message>
    <message>
        <source>Read from inside the case</source>
        <translation>Vom Inneren des Korpus gesehen</translation>
    </message>
    <message>
        <source>the panel&apos;s upper end is up</source>
        <translation>das obere Ende der Platte ist oben</translation>
    </message>
    <message>
        <source>Runners: %1, no stocked length fits.</source>
        <translation>Führungen: %1, keine vorrätige Länge passt.</translation>
    </message>
    <message>
        <source>Runners: %1, a pair %2 long, front ends %3 %4.</source>
        <translation>Führungen: %1, ein Paar %2 lang, vordere Enden %3 %4.</translation>
    </message>
    <message>
        <source>Runner: %1, one %2 long, its front end %3 %4.</source>
        <translation>Führung: %1, eine %2 lang, vorderes Ende %3 %4.</translation>
    </message>
    <message>
        <source>runner: no screw here</source>
        <translation>Führung: hier keine Schraube</translation>
    </message>
    <message>
        <source>cut out %1</source>
        <translation>ausklinken %1</translation>
    </message>
    <message>
        <source>for the runner</source>
        <translation>für die Führung</translation>
    </message>
    <message>
        <source>Notch the box&apos;s back %1 at both lower ends, from the sides&apos; inner faces.</source>
        <translation>Das Rückenstück an beiden unteren Enden %1 ausklinken, von den Innenflächen der Seiten aus.</translation>
    </message>
    <message>
        <source>Notch the box&apos;s back %1 in the middle of its lower edge.</source>
        <translation>Das Rückenstück in der Mitte der Unterkante %1 ausklinken.</translation>
    </message>
    <message>
        <source>openings</source>
        <translation>Öffnungen</translation>
    </message>
    <message>
        <source>fronts</source>
        <translation>Blenden</translation>
    </message>
    <message>
        <source>gaps</source>
        <translation>Fugen</translation>
    </message>
    <message>
        <source>holes</source>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Fuge %1</translation>
    </message>
    <message>
        <source>Figures in inches from the low end.</source>
        <translation>Zahlen in Zoll vom unteren Ende aus.</translation>
    </message>
    <message>
        <source>Figures in mm from the low end.</source>
        <translation>Zahlen in mm vom unteren Ende aus.</translation>
    </message>
    <message>
        <source>Read from the front</source>
        <translation>Von vorn lesen</translation>
    </message>
    <message>
        <source>Story stick, bank %1</source>
        <translation>Maßlatte, Blendenreihe %1</translation>
    </message>
    <message>
        <source>Hold the low end flush with the lower edge of the member below the bank, %1 above the case&apos;s lower edge.</source>
        <translation>Das untere Ende bündig an die Unterkante des Rahmenteils unter der Blendenreihe halten, %1 über der Unterkante des Korpus.</translation>
    </message>
    <message>
        <source>the bank&apos;s upper end is up</source>
        <translation>das obere Ende der Blendenreihe ist oben</translation>
    </message>
    <message>
        <source>Story stick, widths of %1</source>
        <translation>Maßlatte, Breiten von %1</translation>
    </message>
    <message>
        <source>Hold the low end, at the left, flush with the left edge of the member at the left, %1 from the case&apos;s left edge.</source>
        <translation>Das untere Ende, links, bündig an die linke Kante des linken Rahmenteils halten, %1 von der linken Kante des Korpus.</translation>
    </message>
    <message>
        <source>the lane of holes is up</source>
        <translation>die Spur der Bohrungen ist oben</translation>
    </message>
    <message>
        <source>overall check: %1</source>
        <translation>Prüfmaß: %1</translation>
    </message>
    <message>
        <source>Serves one front, %1</source>
        <translation>Für eine Blende, %1</translation>
    </message>
    <message>
        <source>Serves %1 fronts, %2</source>
        <translation>Für %1 Blenden, %2</translation>
    </message>
    <message>
        <source>%1 and %2 more</source>
        <translation>%1 und %2 weitere</translation>
    </message>
    <message>
        <source>tile map</source>
        <translation>Kacheln</translation>
    </message>
    <message>
        <source>tile map: A1 to %1</source>
        <translation>Kacheln: A1 bis %1</translation>
    </message>
    <message>
        <source>A1 to %1</source>
        <translation>A1 bis %1</translation>
    </message>
    <message>
        <source>to %1</source>
        <translation>bis %1</translation>
    </message>
    <message>
        <source>through, from inside</source>
        <translation>durch, von innen</translation>
    </message>
    <message>
        <source>bolt %1: drill %2</source>
        <translation>Gewindeschraube %1: %2 bohren</translation>
    </message>
    <message>
        <source>through, with the front</source>
        <translation>durch, mit der Blende</translation>
    </message>
    <message>
        <source>%1 deep, from inside</source>
        <translation>%1 tief, von innen</translation>
    </message>
    <message>
        <source>access %1: drill %2</source>
        <translation>Zugang %1: %2 bohren</translation>
    </message>
    <message>
        <source>through the wall, from inside</source>
        <translation>durch das Vorderstück, von innen</translation>
    </message>
    <message>
        <source>bottom panel&apos;s top %1</source>
        <translation>Oberseite des Bodens %1</translation>
    </message>
    <message>
        <source>no screw below %1</source>
        <translation>keine Schraube unter %1</translation>
    </message>
    <message>
        <source>inner face of the side</source>
        <translation>Innenseite der Seite</translation>
    </message>
    <message>
        <source>front %1</source>
        <translation>Blende %1</translation>
    </message>
    <message>
        <source>filler strip %1 × %2, %3 thick</source>
        <translation>Füllleiste %1 × %2, %3 dick</translation>
    </message>
    <message>
        <source>opening&apos;s edge</source>
        <translation>Kante der Öffnung</translation>
    </message>
    <message>
        <source>Mounting screws: %1; pilot holes in the front&apos;s back %2.</source>
        <translation>Befestigungsschrauben: %1; Vorbohrungen in der Rückseite der Blende %2.</translation>
    </message>
    <message>
        <source>Mounting screws: %1, %2 long; pilot holes in the front&apos;s back %3.</source>
        <translation>Befestigungsschrauben: %1, %2 lang; Vorbohrungen in der Rückseite der Blende %3.</translation>
    </message>
    <message>
        <source>Frame behind %1</source>
        <translation>Rahmen hinter %1</translation>
    </message>
    <message>
        <source>%1: front %2 wide, %3 high; frame %4 thick.</source>
        <translation>%1: Blende %2 breit, %3 hoch; Rahmen %4 dick.</translation>
    </message>
    <message>
        <source>Lay the opening&apos;s edges on the frame&apos;s own, from inside the case.</source>
        <translation>Die Kanten der Öffnung auf die des Rahmens legen, von innen im Korpus.</translation>
    </message>
    <message>
        <source>Read from inside the case: left and right are exchanged</source>
        <translation>Von innen im Korpus gelesen: links und rechts sind vertauscht</translation>
    </message>
    <message>
        <source>Box wall %1</source>
        <translation>Vorderstück %1</translation>
    </message>
    <message>
        <source>%1: wall %2 wide, %3 high, %4 thick.</source>
        <translation>%1: Vorderstück %2 breit, %3 hoch, %4 dick.</translation>
    </message>
    <message>
        <source>In an assembled box, cut along the sides&apos; inner faces and the bottom panel&apos;s top.</source>
        <translation>Für einen verleimten Schubkasten an den Innenseiten der Seiten und an der Oberseite des Bodens entlang schneiden.</translation>
    </message>
    <message>
        <source>Read from inside the box: left and right are exchanged</source>
        <translation>Vom Inneren des Schubkastens lesen: links und rechts sind vertauscht</translation>
    </message>
    <message>
        <source>the wall&apos;s upper edge is up</source>
        <translation>die Oberkante des Vorderstücks ist oben</translation>
    </message>
</context>
</TS>
