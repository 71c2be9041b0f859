<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Reveals</name>
    <message>
        <source>left of %1</source>
        <translation>links von %1</translation>
    </message>
    <message>
        <source>right of %1</source>
        <translation>rechts von %1</translation>
    </message>
    <message>
        <source>below %1</source>
        <translation>unter %1</translation>
    </message>
    <message>
        <source>above %1</source>
        <translation>über %1</translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation>zwischen %1 und %2</translation>
    </message>
    <message>
        <source>Between fronts: every reveal is %1.</source>
        <translation>Zwischen den Blenden: Jede Sichtbreite ist %1.</translation>
    </message>
    <message>
        <source>At the case&apos;s edge: every reveal is %1.</source>
        <translation>Am Rand des Korpus: Jede Sichtbreite ist %1.</translation>
    </message>
    <message>
        <source>Round inset fronts: every gap is %1.</source>
        <translation>Um einliegende Blenden: Jede Fuge ist %1.</translation>
    </message>
    <message>
        <source>Between fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation>Zwischen den Blenden: kleinste Sichtbreite %1 (%2), größte %3 (%4); Unterschied %5.</translation>
    </message>
    <message>
        <source>At the case&apos;s edge: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation>Am Rand des Korpus: kleinste Sichtbreite %1 (%2), größte %3 (%4); Unterschied %5.</translation>
    </message>
    <message>
        <source>Round inset fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation>Um einliegende Blenden: kleinste Fuge %1 (%2), größte %3 (%4); Unterschied %5.</translation>
    </message>
    <message>
        <source>smallest %1</source>
        <translation>kleinste %1</translation>
    </message>
    <message>
        <source>largest %1</source>
        <translation>größte %1</translation>
    </message>
</context>
<context>
    <name>Revision</name>
    <message>
        <source>revision %1</source>
        <translation>Stand %1</translation>
    </message>
</context>
<context>
    <name>WoodForm</name>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Choose the wood</source>
        <translation>Holzart wählen</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Choose solid or stable stock</source>
        <translation>Massiv oder formstabil wählen</translation>
    </message>
    <message>
        <source>Solid</source>
        <translation>Massivholz</translation>
    </message>
    <message>
        <source>Stable (plywood and the like)</source>
        <translation>Formstabil (Sperrholz und Ähnliches)</translation>
    </message>
    <message>
        <source>Cut</source>
        <translation>Einschnitt</translation>
    </message>
    <message>
        <source>Choose the cut</source>
        <translation>Einschnitt wählen</translation>
    </message>
    <message>
        <source>Flat-sawn</source>
        <translation>Seitenbrett (Fladerschnitt)</translation>
    </message>
    <message>
        <source>Rift</source>
        <translation>Halbrift</translation>
    </message>
    <message>
        <source>Quarter-sawn</source>
        <translation>Riftbrett (Riftschnitt)</translation>
    </message>
    <message>
        <source>Grain</source>
        <translation>Faserrichtung</translation>
    </message>
    <message>
        <source>Turn the grain</source>
        <translation>Faserrichtung drehen</translation>
    </message>
    <message>
        <source>Along the length: the height moves</source>
        <translation>Längs der Breite: Die Höhe arbeitet</translation>
    </message>
    <message>
        <source>Along the height: the width moves</source>
        <translation>Längs der Höhe: Die Breite arbeitet</translation>
    </message>
</context>
<context>
    <name>frontwright</name>
    <message>
        <source>command line</source>
        <translation>Befehlszeile</translation>
    </message>
    <message>
        <source>see frontwright --help</source>
        <translation>siehe frontwright --help</translation>
    </message>
    <message>
        <source>%1 wants a value</source>
        <translation>%1 braucht einen Wert</translation>
    </message>
    <message>
        <source>%1 is not an option here</source>
        <translation>%1 ist hier keine Option</translation>
    </message>
    <message>
        <source>a case file is wanted</source>
        <translation>eine Korpusdatei wird gebraucht</translation>
    </message>
    <message>
        <source>only one case file can be given</source>
        <translation>nur eine Korpusdatei kann angegeben werden</translation>
    </message>
    <message>
        <source>the case file %1 can&apos;t be an output too</source>
        <translation>die Korpusdatei %1 kann nicht auch Ausgabe sein</translation>
    </message>
    <message>
        <source>--upright and --landscape exclude one another</source>
        <translation>--upright und --landscape schließen einander aus</translation>
    </message>
    <message>
        <source>templates wants -o OUT.pdf, --svg DIR or --marks OUT.json</source>
        <translation>templates braucht -o OUT.pdf, --svg DIR oder --marks OUT.json</translation>
    </message>
    <message>
        <source>-o and --marks name the same file, %1</source>
        <translation>-o und --marks nennen dieselbe Datei, %1</translation>
    </message>
    <message>
        <source>write it like 10 mm or 3/8 in</source>
        <translation>etwa 10 mm oder 3/8 in schreiben</translation>
    </message>
    <message>
        <source>picture wants -o OUT.svg or -o OUT.png</source>
        <translation>picture braucht -o OUT.svg oder -o OUT.png</translation>
    </message>
    <message>
        <source>a picture of the window can only be a PNG</source>
        <translation>ein Bild des Fensters kann nur ein PNG sein</translation>
    </message>
    <message>
        <source>a picture is of the window or of the look, not of both</source>
        <translation>ein Bild zeigt das Fenster oder die Darstellung, nicht beides</translation>
    </message>
    <message>
        <source>rules wants nothing more</source>
        <translation>rules braucht nichts weiter</translation>
    </message>
    <message>
        <source>%1 is not a command</source>
        <translation>%1 ist kein Befehl</translation>
    </message>
    <message>
        <source>%1 is neither a command nor a case file</source>
        <translation>%1 ist weder ein Befehl noch eine Korpusdatei</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>its folder does not exist</source>
        <translation>der Ordner dafür ist nicht vorhanden</translation>
    </message>
    <message>
        <source>make the folder or choose another one</source>
        <translation>den Ordner anlegen oder einen anderen wählen</translation>
    </message>
    <message>
        <source>is not a regular file</source>
        <translation>ist keine gewöhnliche Datei</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>it can&apos;t be written there</source>
        <translation>dort kann nicht geschrieben werden</translation>
    </message>
    <message>
        <source>choose another folder</source>
        <translation>einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>is the case file itself</source>
        <translation>ist die Korpusdatei selbst</translation>
    </message>
    <message>
        <source>the folder can&apos;t be made</source>
        <translation>der Ordner kann nicht angelegt werden</translation>
    </message>
    <message>
        <source>choose another one</source>
        <translation>einen anderen wählen</translation>
    </message>
    <message>
        <source>window</source>
        <translation>Fenster</translation>
    </message>
    <message>
        <source>there is no display to open it on</source>
        <translation>es gibt keinen Bildschirm, auf dem es sich öffnen ließe</translation>
    </message>
    <message>
        <source>use check, plan, templates or picture, or start it on a desktop</source>
        <translation>check, plan, templates oder picture verwenden oder in einer grafischen Oberfläche starten</translation>
    </message>
    <message>
        <source>the folder for recovery copies can&apos;t be made</source>
        <translation>der Ordner für Sicherungskopien kann nicht angelegt werden</translation>
    </message>
    <message>
        <source>save the case often until it can</source>
        <translation>bis dahin den Korpus oft speichern</translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation>diese Datei gibt es nicht</translation>
    </message>
    <message>
        <source>check the name</source>
        <translation>den Namen prüfen</translation>
    </message>
    <message>
        <source>choose a case file</source>
        <translation>eine Korpusdatei wählen</translation>
    </message>
    <message>
        <source>is larger than 16 MiB</source>
        <translation>ist größer als 16 MiB</translation>
    </message>
    <message>
        <source>a case file is far smaller; check that it is one</source>
        <translation>eine Korpusdatei ist viel kleiner; prüfen, ob es eine ist</translation>
    </message>
    <message>
        <source>check that you may read it</source>
        <translation>prüfen, ob Sie sie lesen dürfen</translation>
    </message>
    <message>
        <source>copy it to another disk and try again</source>
        <translation>sie auf einen anderen Datenträger kopieren und es noch einmal versuchen</translation>
    </message>
    <message>
        <source>save under another name or in another folder</source>
        <translation>unter einem anderen Namen oder in einem anderen Ordner speichern</translation>
    </message>
    <message>
        <source>the file on disk is as it was; free some room or save elsewhere</source>
        <translation>die gespeicherte Datei ist unverändert; Platz schaffen oder anderswo speichern</translation>
    </message>
    <message>
        <source>nothing was written; free some room or choose another folder</source>
        <translation>es wurde nichts geschrieben; Platz schaffen oder einen anderen Ordner wählen</translation>
    </message>
    <message>
        <source>no fitting is chosen here</source>
        <translation>hier ist kein Beschlag gewählt</translation>
    </message>
    <message>
        <source>choose one first</source>
        <translation>zuerst einen wählen</translation>
    </message>
    <message>
        <source>PDF</source>
        <translation>PDF</translation>
    </message>
    <message>
        <source>could not be started</source>
        <translation>konnte nicht begonnen werden</translation>
    </message>
    <message>
        <source>try again</source>
        <translation>noch einmal versuchen</translation>
    </message>
    <message>
        <source>there is no page to write</source>
        <translation>es gibt keine Seite zu schreiben</translation>
    </message>
    <message>
        <source>choose at least one sheet</source>
        <translation>mindestens ein Blatt wählen</translation>
    </message>
    <message>
        <source>report this with the case file</source>
        <translation>dies mit der Korpusdatei melden</translation>
    </message>
    <message>
        <source>picture</source>
        <translation>Bild</translation>
    </message>
    <message>
        <source>would be larger than 20 000 pixels</source>
        <translation>wäre größer als 20 000 Bildpunkte</translation>
    </message>
    <message>
        <source>write an SVG instead</source>
        <translation>stattdessen ein SVG schreiben</translation>
    </message>
    <message>
        <source>could not be written as PNG</source>
        <translation>konnte nicht als PNG geschrieben werden</translation>
    </message>
    <message>
        <source>Printing</source>
        <translation>Drucken</translation>
    </message>
    <message>
        <source>the printer is set to another paper than the templates</source>
        <translation>der Drucker ist auf ein anderes Papier eingestellt als die Bohrschablonen</translation>
    </message>
    <message>
        <source>choose the same paper in both places, so that nothing is scaled</source>
        <translation>an beiden Stellen dasselbe Papier wählen, damit nichts skaliert wird</translation>
    </message>
    <message>
        <source>the printer could not be started</source>
        <translation>der Drucker konnte nicht gestartet werden</translation>
    </message>
    <message>
        <source>check it and try again</source>
        <translation>ihn prüfen und es noch einmal versuchen</translation>
    </message>
    <message>
        <source>there is no page to print</source>
        <translation>es gibt keine Seite zu drucken</translation>
    </message>
    <message>
        <source>tick at least one sheet</source>
        <translation>mindestens ein Blatt ankreuzen</translation>
    </message>
    <message>
        <source>the file there can&apos;t be read as a case and was not replaced</source>
        <translation>die Datei dort lässt sich nicht als Korpus lesen und wurde nicht ersetzt</translation>
    </message>
    <message>
        <source>save under another name</source>
        <translation>unter einem anderen Namen speichern</translation>
    </message>
    <message>
        <source>is open in another window (process %1 on %2)</source>
        <translation>ist in einem anderen Fenster geöffnet (Prozess %1 auf %2)</translation>
    </message>
    <message>
        <source>close it there, or save under another name</source>
        <translation>dort schließen oder unter einem anderen Namen speichern</translation>
    </message>
    <message>
        <source>was opened to read only</source>
        <translation>wurde nur zum Lesen geöffnet</translation>
    </message>
    <message>
        <source>the case could not be read back and was not saved</source>
        <translation>der Korpus ließ sich nicht zurücklesen und wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>the case could not be read back and was not saved: %1</source>
        <translation>der Korpus ließ sich nicht zurücklesen und wurde nicht gespeichert: %1</translation>
    </message>
    <message>
        <source>undo the last step and save again; the file on disk is as it was</source>
        <translation>den letzten Schritt rückgängig machen und noch einmal speichern; die gespeicherte Datei ist unverändert</translation>
    </message>
    <message>
        <source>there are not as many heights as holes</source>
        <translation>es sind nicht so viele Höhen wie Löcher</translation>
    </message>
    <message>
        <source>write one for all, or one for each: 0; 0</source>
        <translation>eine für alle schreiben oder eine für jedes: 0; 0</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a specific gravity</source>
        <translation>„%1“ ist keine Dichtezahl</translation>
    </message>
    <message>
        <source>write it like 0.5</source>
        <translation>so schreiben: 0,5</translation>
    </message>
    <message>
        <source>no specific gravity is known of this wood</source>
        <translation>von diesem Holz ist keine Dichtezahl bekannt</translation>
    </message>
    <message>
        <source>type it first</source>
        <translation>sie zuerst eintragen</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a change of size per 1 % moisture</source>
        <translation>„%1“ ist keine Maßänderung je 1 % Feuchte</translation>
    </message>
    <message>
        <source>write it like 0.00248; of no wood is it more than 0.02</source>
        <translation>so schreiben: 0,00248; bei keinem Holz ist sie größer als 0,02</translation>
    </message>
    <message>
        <source>&quot;%1&quot; cannot be read</source>
        <translation>„%1“ ist nicht zu lesen</translation>
    </message>
    <message>
        <source>write each like -30 mm | 0 mm</source>
        <translation>jede schreiben wie -30 mm | 0 mm</translation>
    </message>
    <message>
        <source>write each like show face | 0 mm | 0 mm | 8 mm</source>
        <translation>jede schreiben wie Sichtseite | 0 mm | 0 mm | 8 mm</translation>
    </message>
    <message>
        <source>write each like back | -25 mm | -20 mm | 25 mm | 20 mm | 2 mm</source>
        <translation>jede schreiben wie Rückseite | -25 mm | -20 mm | 25 mm | 20 mm | 2 mm</translation>
    </message>
    <message>
        <source>&quot;%1&quot; is not a width and a height</source>
        <translation>„%1“ ist keine Breite und Höhe</translation>
    </message>
    <message>
        <source>write it like 1 3/8 in × 1/2 in</source>
        <translation>so schreiben: 1 3/8 in × 1/2 in</translation>
    </message>
    <message>
        <source>there is no such form of runners</source>
        <translation>solche Führungen gibt es nicht</translation>
    </message>
    <message>
        <source>Filler strip right of %1</source>
        <translation>Füllleiste rechts von %1</translation>
    </message>
    <message>
        <source>Filler strip above %1</source>
        <translation>Füllleiste über %1</translation>
    </message>
    <message>
        <source>Division right of %1</source>
        <translation>Teilung rechts von %1</translation>
    </message>
    <message>
        <source>Division above %1</source>
        <translation>Teilung über %1</translation>
    </message>
    <message>
        <source>Divider right of %1</source>
        <translation>Mittelwand rechts von %1</translation>
    </message>
    <message>
        <source>Rail above %1</source>
        <translation>Querfries über %1</translation>
    </message>
    <message>
        <source>Shelf above %1</source>
        <translation>Zwischenboden über %1</translation>
    </message>
    <message>
        <source>Screw hole %1</source>
        <translation>Schraubenbohrung %1</translation>
    </message>
    <message>
        <source>Handle hole %1</source>
        <translation>Griffbohrung %1</translation>
    </message>
    <message>
        <source>%1 wide, %2 long</source>
        <translation>%1 breit, %2 lang</translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation>%1 × %2</translation>
    </message>
    <message>
        <source>%1 from the left, %2 from below</source>
        <translation>%1 von links, %2 von unten</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Board thickness</source>
        <translation>Dicke der Platte</translation>
    </message>
    <message>
        <source>Board depth</source>
        <translation>Tiefe der Platte</translation>
    </message>
    <message>
        <source>Play at each side</source>
        <translation>Spiel auf jeder Seite</translation>
    </message>
    <message>
        <source>Play in height</source>
        <translation>Spiel in der Höhe</translation>
    </message>
    <message>
        <source>Side panel thickness</source>
        <translation>Dicke der Seitenwand</translation>
    </message>
    <message>
        <source>Furring beside the board</source>
        <translation>Auffütterung neben der Platte</translation>
    </message>
    <message>
        <source>Choose furring</source>
        <translation>Auffütterung wählen</translation>
    </message>
    <message>
        <source>Furring behind the opening&apos;s edge</source>
        <translation>Auffütterung hinter der Öffnungskante</translation>
    </message>
    <message>
        <source>Brad length</source>
        <translation>Länge der Stifte</translation>
    </message>
    <message>
        <source>Brad length at the right</source>
        <translation>Länge der Stifte rechts</translation>
    </message>
    <message>
        <source>as at the left</source>
        <translation>wie links</translation>
    </message>
    <message>
        <source>Brad set below the face</source>
        <translation>Stifte versenkt um</translation>
    </message>
    <message>
        <source>Runner&apos;s top above the opening&apos;s edge</source>
        <translation>Oberseite der Führung über der Öffnungskante</translation>
    </message>
    <message>
        <source>board in the middle</source>
        <translation>Platte in der Mitte</translation>
    </message>
    <message>
        <source>Runner height</source>
        <translation>Höhe der Führung</translation>
    </message>
    <message>
        <source>Wood of runners and keepers</source>
        <translation>Holz von Führungen und Halteleisten</translation>
    </message>
    <message>
        <source>Choose the runners&apos; wood</source>
        <translation>Holz der Führungen wählen</translation>
    </message>
    <message>
        <source>as the fronts</source>
        <translation>wie die Blenden</translation>
    </message>
    <message>
        <source>Fasteners to reach</source>
        <translation>Erreichbare Verbindungsmittel</translation>
    </message>
    <message>
        <source>Set the fasteners to reach</source>
        <translation>Erreichbare Verbindungsmittel setzen</translation>
    </message>
    <message>
        <source>e.g. L 4 in : 1 in; R 150 mm : 25 mm</source>
        <translation>z. B. L 100 mm : 25 mm; R 6 in : 1 in</translation>
    </message>
    <message>
        <source>L or R for the side, how far behind the frame&apos;s face, a colon, how wide it stays free; several with semicolons between</source>
        <translation>L oder R für die Seite, wie weit hinter der Rahmenfläche, ein Doppelpunkt, wie breit es frei bleibt; mehrere durch Strichpunkte getrennt</translation>
    </message>
    <message>
        <source>Keeper width</source>
        <translation>Breite der Halteleiste</translation>
    </message>
    <message>
        <source>Keeper height</source>
        <translation>Höhe der Halteleiste</translation>
    </message>
    <message>
        <source>Keepers screwed on</source>
        <translation>Halteleisten angeschraubt</translation>
    </message>
    <message>
        <source>Choose how keepers are screwed on</source>
        <translation>Wählen, wie die Halteleisten angeschraubt sind</translation>
    </message>
    <message>
        <source>sideways to the panel</source>
        <translation>seitlich zur Seitenwand</translation>
    </message>
    <message>
        <source>down to the furring</source>
        <translation>nach unten zur Auffütterung</translation>
    </message>
    <message>
        <source>Keeper screw</source>
        <translation>Schraube der Halteleiste</translation>
    </message>
    <message>
        <source>Choose the keepers&apos; screw</source>
        <translation>Schraube der Halteleisten wählen</translation>
    </message>
    <message>
        <source>Keeper screw length</source>
        <translation>Länge der Schraube der Halteleiste</translation>
    </message>
    <message>
        <source>Keeper screw length at the right</source>
        <translation>Länge der Schraube der Halteleiste rechts</translation>
    </message>
    <message>
        <source>Keeper screw&apos;s head sunk</source>
        <translation>Schraubenkopf der Halteleiste versenkt um</translation>
    </message>
    <message>
        <source>First screw from a piece&apos;s end</source>
        <translation>Erste Schraube vom Ende eines Stücks</translation>
    </message>
    <message>
        <source>Screw to screw at most</source>
        <translation>Höchstens von Schraube zu Schraube</translation>
    </message>
    <message>
        <source>Free beyond a fastener&apos;s reach</source>
        <translation>Frei über den Griffraum hinaus</translation>
    </message>
    <message>
        <source>Shortest piece</source>
        <translation>Kürzestes Stück</translation>
    </message>
    <message>
        <source>Load at the front edge</source>
        <translation>Last an der Vorderkante</translation>
    </message>
    <message>
        <source>Set the board&apos;s load</source>
        <translation>Last der Platte setzen</translation>
    </message>
    <message>
        <source>e.g. 50 lbf or 220 N</source>
        <translation>z. B. 220 N oder 50 lbf</translation>
    </message>
    <message>
        <source>What leans or lies on the edge, as a force</source>
        <translation>Was sich auf die Kante stützt oder auf ihr liegt, als Kraft</translation>
    </message>
    <message>
        <source>Pull-out board</source>
        <translation>Ausziehplatte</translation>
    </message>
    <message>
        <source>Change the board</source>
        <translation>Platte ändern</translation>
    </message>
    <message>
        <source>Pulled out by</source>
        <translation>Auszug</translation>
    </message>
    <message>
        <source>as far as is safe</source>
        <translation>so weit es sicher ist</translation>
    </message>
    <message>
        <source>Pulled off its middle by</source>
        <translation>Gezogen neben der Mitte um</translation>
    </message>
    <message>
        <source>at a corner</source>
        <translation>an der Ecke</translation>
    </message>
    <message>
        <source>Change the keeper strips</source>
        <translation>Halteleisten ändern</translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation>Zweck</translation>
    </message>
    <message>
        <source>Choose what the drawer is for</source>
        <translation>Zweck des Schubkastens wählen</translation>
    </message>
    <message>
        <source>Household, 15 lb/ft² of bottom</source>
        <translation>Haushalt, 15 lb/ft² Bodenfläche</translation>
    </message>
    <message>
        <source>Clothing, 8.5 lb/ft³</source>
        <translation>Kleidung, 8,5 lb/ft³</translation>
    </message>
    <message>
        <source>School or laboratory, 100 lb</source>
        <translation>Schule oder Labor, 100 lb</translation>
    </message>
    <message>
        <source>Nothing is counted on</source>
        <translation>Nicht festgelegt</translation>
    </message>
    <message>
        <source>Own load</source>
        <translation>Eigene Last</translation>
    </message>
    <message>
        <source>Set the drawer&apos;s load</source>
        <translation>Last des Schubkastens festlegen</translation>
    </message>
    <message>
        <source>e.g. 25 lb or 12 kg</source>
        <translation>z. B. 12 kg oder 25 lb</translation>
    </message>
    <message>
        <source>What lies in it, where its purpose does not tell</source>
        <translation>Was darin liegt, wo der Zweck es nicht sagt</translation>
    </message>
    <message>
        <source>Runners</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>Choose the runners</source>
        <translation>Führung wählen</translation>
    </message>
    <message>
        <source>Runner length</source>
        <translation>Länge der Führung</translation>
    </message>
    <message>
        <source>Set the runner&apos;s length</source>
        <translation>Länge der Führung setzen</translation>
    </message>
    <message>
        <source>longest stocked that fits</source>
        <translation>längste vorrätige, die passt</translation>
    </message>
    <message>
        <source>Opening&apos;s edge to the case&apos;s side</source>
        <translation>Kante der Öffnung bis zur Korpusseite</translation>
    </message>
    <message>
        <source>Set the furring</source>
        <translation>Auffütterung setzen</translation>
    </message>
    <message>
        <source>not told</source>
        <translation>nicht angegeben</translation>
    </message>
    <message>
        <source>Depth is</source>
        <translation>Tiefe ist</translation>
    </message>
    <message>
        <source>Choose where the depth comes from</source>
        <translation>Wählen, woher die Tiefe kommt</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>the runner&apos;s length</source>
        <translation>die Länge der Führung</translation>
    </message>
    <message>
        <source>Wood of the box</source>
        <translation>Holz des Schubkastens</translation>
    </message>
    <message>
        <source>Choose the box&apos;s wood</source>
        <translation>Holz des Schubkastens wählen</translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Change the box</source>
        <translation>Schubkasten ändern</translation>
    </message>
    <message>
        <source>as the runners ask</source>
        <translation>wie die Führung verlangt</translation>
    </message>
    <message>
        <source>Clearance at each side</source>
        <translation>Luft an jeder Seite</translation>
    </message>
    <message>
        <source>Clearance below</source>
        <translation>Luft unten</translation>
    </message>
    <message>
        <source>Clearance above</source>
        <translation>Luft oben</translation>
    </message>
    <message>
        <source>Height</source>
        <translation>Höhe</translation>
    </message>
    <message>
        <source>what the opening leaves</source>
        <translation>was die Öffnung lässt</translation>
    </message>
    <message>
        <source>Depth</source>
        <translation>Tiefe</translation>
    </message>
    <message>
        <source>Front wall</source>
        <translation>Vorderstück</translation>
    </message>
    <message>
        <source>Sides</source>
        <translation>Seiten</translation>
    </message>
    <message>
        <source>Groove above lower edge</source>
        <translation>Nut über der Unterkante</translation>
    </message>
    <message>
        <source>Bottom panel</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation>Befestigungsschrauben</translation>
    </message>
    <message>
        <source>Change the mounting screws</source>
        <translation>Befestigungsschrauben ändern</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>Choose the mounting screw</source>
        <translation>Befestigungsschraube wählen</translation>
    </message>
    <message>
        <source>Length</source>
        <translation>Länge</translation>
    </message>
    <message>
        <source>Head recessed by</source>
        <translation>Kopf versenkt um</translation>
    </message>
    <message>
        <source>Diameter of the recess tool</source>
        <translation>Durchmesser des Senkers</translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation>Lochbild</translation>
    </message>
    <message>
        <source>Choose the screw pattern</source>
        <translation>Lochbild wählen</translation>
    </message>
    <message>
        <source>Four corners</source>
        <translation>Vier Ecken</translation>
    </message>
    <message>
        <source>Six</source>
        <translation>Sechs</translation>
    </message>
    <message>
        <source>By hand</source>
        <translation>Von Hand</translation>
    </message>
    <message>
        <source>placed where allowed</source>
        <translation>wo sie sitzen dürfen</translation>
    </message>
    <message>
        <source>From the box&apos;s sides</source>
        <translation>Von den Schubkastenseiten</translation>
    </message>
    <message>
        <source>Lower row, from below</source>
        <translation>Untere Reihe, von unten</translation>
    </message>
    <message>
        <source>Upper row, from the top</source>
        <translation>Obere Reihe, von oben</translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>as the wood asks</source>
        <translation>wie das Holz verlangt</translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation>Durchgangsbohrung</translation>
    </message>
    <message>
        <source>as the screw asks</source>
        <translation>wie die Schraube verlangt</translation>
    </message>
    <message>
        <source>Change the frame</source>
        <translation>Rahmen ändern</translation>
    </message>
    <message>
        <source>Change the panels</source>
        <translation>Platten ändern</translation>
    </message>
    <message>
        <source>Change the case</source>
        <translation>Korpus ändern</translation>
    </message>
    <message>
        <source>Construction</source>
        <translation>Bauart</translation>
    </message>
    <message>
        <source>Change the construction</source>
        <translation>Bauart ändern</translation>
    </message>
    <message>
        <source>Face frame</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>Frameless</source>
        <translation>Ohne Rahmen</translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation>Grenzwert ändern</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Set case width</source>
        <translation>Korpusbreite festlegen</translation>
    </message>
    <message>
        <source>Set case height</source>
        <translation>Korpushöhe festlegen</translation>
    </message>
    <message>
        <source>Depth inside</source>
        <translation>Tiefe innen</translation>
    </message>
    <message>
        <source>Frame thickness</source>
        <translation>Rahmendicke</translation>
    </message>
    <message>
        <source>Grid of sizes</source>
        <translation>Raster der Maße</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Title</source>
        <translation>Titel</translation>
    </message>
    <message>
        <source>Change the title</source>
        <translation>Titel ändern</translation>
    </message>
    <message>
        <source>Note</source>
        <translation>Bemerkung</translation>
    </message>
    <message>
        <source>Change the note</source>
        <translation>Bemerkung ändern</translation>
    </message>
    <message>
        <source>Unit of the document</source>
        <translation>Einheit des Dokuments</translation>
    </message>
    <message>
        <source>Change the document&apos;s unit</source>
        <translation>Einheit des Dokuments ändern</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>What the findings judge by. The defaults are common practice without a published source; test on scrap.</source>
        <translation>Danach richten sich die Befunde. Die Voreinstellungen sind übliche Praxis ohne veröffentlichte Quelle; am Reststück erproben.</translation>
    </message>
    <message>
        <source>Least penetration</source>
        <translation>Kleinste Eindringtiefe</translation>
    </message>
    <message>
        <source>Least tip cover</source>
        <translation>Kleinstes Restholz</translation>
    </message>
    <message>
        <source>Screw head to bottom</source>
        <translation>Schraubenkopf bis Boden</translation>
    </message>
    <message>
        <source>Least wall under a screw head</source>
        <translation>Kleinste Wand unter Schraubenkopf</translation>
    </message>
    <message>
        <source>Least bearing round a screw&apos;s hole</source>
        <translation>Kleinste Auflage rings um eine Schraubenbohrung</translation>
    </message>
    <message>
        <source>Least wood under a bolt head</source>
        <translation>Kleinste Holzdicke unter Gewindeschraubenkopf</translation>
    </message>
    <message>
        <source>Room round a bolt head</source>
        <translation>Platz um Gewindeschraubenkopf</translation>
    </message>
    <message>
        <source>Least gap between fronts</source>
        <translation>Kleinste Fuge zwischen Blenden</translation>
    </message>
    <message>
        <source>Least opening</source>
        <translation>Kleinste Öffnung</translation>
    </message>
    <message>
        <source>Wood between holes</source>
        <translation>Holz zwischen Bohrungen</translation>
    </message>
    <message>
        <source>Shadow of a filler strip</source>
        <translation>Schattenbreite einer Füllleiste</translation>
    </message>
    <message>
        <source>Greatest bend of a filler strip</source>
        <translation>Größte Durchbiegung einer Füllleiste</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Choose the fitting</source>
        <translation>Art des Beschlags wählen</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>Across</source>
        <translation>Waagrecht</translation>
    </message>
    <message>
        <source>Place the fitting</source>
        <translation>Beschlag anordnen</translation>
    </message>
    <message>
        <source>in the middle</source>
        <translation>in der Mitte</translation>
    </message>
    <message>
        <source>from the left</source>
        <translation>von links</translation>
    </message>
    <message>
        <source>from the right</source>
        <translation>von rechts</translation>
    </message>
    <message>
        <source>two, from both sides</source>
        <translation>zwei, von beiden Seiten</translation>
    </message>
    <message>
        <source>Up</source>
        <translation>Senkrecht</translation>
    </message>
    <message>
        <source>from the top edge</source>
        <translation>von der Oberkante</translation>
    </message>
    <message>
        <source>from the lower edge</source>
        <translation>von der Unterkante</translation>
    </message>
    <message>
        <source>Screws in hand</source>
        <translation>Schrauben zur Hand</translation>
    </message>
    <message>
        <source>Set the fitting&apos;s screws</source>
        <translation>Schrauben des Beschlags festlegen</translation>
    </message>
    <message>
        <source>from stock</source>
        <translation>aus dem Vorrat</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Beschläge</translation>
    </message>
    <message>
        <source>From the side</source>
        <translation>Von der Seite</translation>
    </message>
    <message>
        <source>From the edge</source>
        <translation>Von der Kante</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Gebraucht für</translation>
    </message>
    <message>
        <source>Change what an opening is for</source>
        <translation>Zweck einer Öffnung ändern</translation>
    </message>
    <message>
        <source>Lock or free a size</source>
        <translation>Maß festhalten oder freigeben</translation>
    </message>
    <message>
        <source>Change how the front fits</source>
        <translation>Sitz der Blende ändern</translation>
    </message>
    <message>
        <source>Overlay</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>Gap first</source>
        <translation>Fuge zuerst</translation>
    </message>
    <message>
        <source>Inset</source>
        <translation>Einliegend</translation>
    </message>
    <message>
        <source>… by</source>
        <translation>… um</translation>
    </message>
    <message>
        <source>Change an overlay or gap</source>
        <translation>Aufschlag oder Fuge ändern</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Rename the front</source>
        <translation>Blende umbenennen</translation>
    </message>
    <message>
        <source>Set opening width</source>
        <translation>Öffnungsbreite festlegen</translation>
    </message>
    <message>
        <source>keeps its width</source>
        <translation>behält ihre Breite</translation>
    </message>
    <message>
        <source>Set opening height</source>
        <translation>Öffnungshöhe festlegen</translation>
    </message>
    <message>
        <source>keeps its height</source>
        <translation>behält ihre Höhe</translation>
    </message>
    <message>
        <source>Fit of the front</source>
        <translation>Sitz der Blende</translation>
    </message>
    <message>
        <source>Left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>Right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Top</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Front</source>
        <translation>Blende</translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation>Dicke</translation>
    </message>
    <message>
        <source>Set front thickness</source>
        <translation>Blendendicke festlegen</translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation>Kantenprofil</translation>
    </message>
    <message>
        <source>Family</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Choose the edge profile</source>
        <translation>Kantenprofil wählen</translation>
    </message>
    <message>
        <source>Square</source>
        <translation>Scharfkantig</translation>
    </message>
    <message>
        <source>Eased</source>
        <translation>Gebrochen</translation>
    </message>
    <message>
        <source>Chamfer</source>
        <translation>Fase</translation>
    </message>
    <message>
        <source>Round</source>
        <translation>Gerundet</translation>
    </message>
    <message>
        <source>Bevelled and raised</source>
        <translation>Abgeplattet</translation>
    </message>
    <message>
        <source>Cove</source>
        <translation>Hohlkehle</translation>
    </message>
    <message>
        <source>Change the edge profile</source>
        <translation>Kantenprofil ändern</translation>
    </message>
    <message>
        <source>Width into the face</source>
        <translation>Breite in die Fläche</translation>
    </message>
    <message>
        <source>Depth at the edge</source>
        <translation>Tiefe an der Kante</translation>
    </message>
    <message>
        <source>Step (raised)</source>
        <translation>Absatz (abgeplattet)</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Choose the handle</source>
        <translation>Griff wählen</translation>
    </message>
    <message>
        <source>no handle</source>
        <translation>kein Griff</translation>
    </message>
    <message>
        <source>Placed</source>
        <translation>Lage</translation>
    </message>
    <message>
        <source>Place the handle</source>
        <translation>Griff anordnen</translation>
    </message>
    <message>
        <source>in the middle of the front</source>
        <translation>in der Mitte der Blende</translation>
    </message>
    <message>
        <source>in the middle of the field</source>
        <translation>in der Mitte des Spiegels</translation>
    </message>
    <message>
        <source>a little above the middle</source>
        <translation>etwas über der Mitte</translation>
    </message>
    <message>
        <source>Held</source>
        <translation>Befestigt</translation>
    </message>
    <message>
        <source>Choose how the handle is held</source>
        <translation>Befestigungsart des Griffs wählen</translation>
    </message>
    <message>
        <source>through wall and front</source>
        <translation>durch Vorderstück und Blende</translation>
    </message>
    <message>
        <source>front only, head in a counterbore</source>
        <translation>nur Blende, Kopf in zylindrischer Senkung</translation>
    </message>
    <message>
        <source>front only, access hole in the wall</source>
        <translation>nur Blende, Zugangsbohrung im Vorderstück</translation>
    </message>
    <message>
        <source>Handle and bolt</source>
        <translation>Griff und Gewindeschraube</translation>
    </message>
    <message>
        <source>Change the handle</source>
        <translation>Griff ändern</translation>
    </message>
    <message>
        <source>Distance from the top</source>
        <translation>Abstand von oben</translation>
    </message>
    <message>
        <source>Two on fronts wider than</source>
        <translation>Zwei an Blenden breiter als</translation>
    </message>
    <message>
        <source>always one</source>
        <translation>immer einer</translation>
    </message>
    <message>
        <source>Three on fronts wider than</source>
        <translation>Drei an Blenden breiter als</translation>
    </message>
    <message>
        <source>never three</source>
        <translation>nie drei</translation>
    </message>
    <message>
        <source>Bolt in hand</source>
        <translation>Vorhandene Gewindeschraube</translation>
    </message>
    <message>
        <source>supplied or stocked</source>
        <translation>mitgeliefert oder vorrätig</translation>
    </message>
    <message>
        <source>Counterbore depth</source>
        <translation>Tiefe der zylindrischen Senkung</translation>
    </message>
    <message>
        <source>as the way needs</source>
        <translation>wie die Befestigung verlangt</translation>
    </message>
    <message>
        <source>Counterbore diameter</source>
        <translation>Durchmesser der Senkung</translation>
    </message>
    <message>
        <source>head and room round it</source>
        <translation>Kopf und Platz darum</translation>
    </message>
    <message>
        <source>Access hole diameter</source>
        <translation>Durchmesser der Zugangsbohrung</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>At the left</source>
        <translation>Links</translation>
    </message>
    <message>
        <source>At the right</source>
        <translation>Rechts</translation>
    </message>
    <message>
        <source>Size of the case</source>
        <translation>Größe des Korpus</translation>
    </message>
    <message>
        <source>Frame</source>
        <translation>Rahmen</translation>
    </message>
    <message>
        <source>Width of the member</source>
        <translation>Breite des Rahmenteils</translation>
    </message>
    <message>
        <source>Thickness and wood</source>
        <translation>Dicke und Holz</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Wood and air</source>
        <translation>Holz und Luft</translation>
    </message>
    <message>
        <source>What stands round the case</source>
        <translation>Was um den Korpus steht</translation>
    </message>
    <message>
        <source>System holes</source>
        <translation>Systembohrungen</translation>
    </message>
    <message>
        <source>Choice from the catalogue</source>
        <translation>Wahl aus dem Katalog</translation>
    </message>
    <message>
        <source>Drawer</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Fixed front</source>
        <translation>Feste Blende</translation>
    </message>
    <message>
        <source>Door, hinges at the left</source>
        <translation>Tür, Bänder links</translation>
    </message>
    <message>
        <source>Door, hinges at the right</source>
        <translation>Tür, Bänder rechts</translation>
    </message>
    <message>
        <source>Open space</source>
        <translation>Offenes Fach</translation>
    </message>
    <message>
        <source>Pair of doors</source>
        <translation>Türenpaar</translation>
    </message>
    <message>
        <source>&amp;Drawer</source>
        <translation>&amp;Schubkasten</translation>
    </message>
    <message>
        <source>&amp;Fixed front</source>
        <translation>&amp;Feste Blende</translation>
    </message>
    <message>
        <source>Door, hinges at the &amp;left</source>
        <translation>Tür, Bänder &amp;links</translation>
    </message>
    <message>
        <source>Door, hinges at the &amp;right</source>
        <translation>Tür, Bänder &amp;rechts</translation>
    </message>
    <message>
        <source>&amp;Open space</source>
        <translation>&amp;Offenes Fach</translation>
    </message>
    <message>
        <source>&amp;Pull-out board</source>
        <translation>&amp;Ausziehplatte</translation>
    </message>
    <message>
        <source>P&amp;air of doors</source>
        <translation>Türen&amp;paar</translation>
    </message>
    <message>
        <source>Nothing</source>
        <translation>Nichts</translation>
    </message>
    <message>
        <source>Wall</source>
        <translation>Wand</translation>
    </message>
    <message>
        <source>Neighbouring case</source>
        <translation>Nachbarkorpus</translation>
    </message>
    <message>
        <source>Overhanging top</source>
        <translation>Überstehende Deckplatte</translation>
    </message>
    <message>
        <source>Moulding</source>
        <translation>Zierleiste</translation>
    </message>
    <message>
        <source>Plinth</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>Legs</source>
        <translation>Füße</translation>
    </message>
    <message>
        <source>– distance from the case</source>
        <translation>– Abstand vom Korpus</translation>
    </message>
    <message>
        <source>– its front inside its edge</source>
        <translation>– seine Blende innerhalb der Kante</translation>
    </message>
    <message>
        <source>– thickness</source>
        <translation>– Dicke</translation>
    </message>
    <message>
        <source>– height</source>
        <translation>– Höhe</translation>
    </message>
    <message>
        <source>– width of a leg</source>
        <translation>– Breite eines Fußes</translation>
    </message>
    <message>
        <source>– over the front</source>
        <translation>– Überstand vorn</translation>
    </message>
    <message>
        <source>– over the sides</source>
        <translation>– Überstand seitlich</translation>
    </message>
    <message>
        <source>– projection</source>
        <translation>– Ausladung</translation>
    </message>
    <message>
        <source>– setback</source>
        <translation>– Rücksprung</translation>
    </message>
    <message>
        <source>– moulding before the case</source>
        <translation>– Leiste vor dem Korpus</translation>
    </message>
    <message>
        <source>– gap to the front</source>
        <translation>– Fuge zur Blende</translation>
    </message>
    <message>
        <source>Change what stands round the case</source>
        <translation>Ändern, was um den Korpus steht</translation>
    </message>
    <message>
        <source>Change the system holes</source>
        <translation>Systembohrungen ändern</translation>
    </message>
    <message>
        <source>Rear row from the front edge</source>
        <translation>Hintere Reihe von der Vorderkante</translation>
    </message>
    <message>
        <source>First hole measured from</source>
        <translation>Erste Bohrung gemessen von</translation>
    </message>
    <message>
        <source>The case&apos;s lower edge</source>
        <translation>Unterkante des Korpus</translation>
    </message>
    <message>
        <source>The bottom panel&apos;s upper face</source>
        <translation>Oberseite des Unterbodens</translation>
    </message>
    <message>
        <source>Round the case</source>
        <translation>Um den Korpus</translation>
    </message>
    <message>
        <source>Rows of holes up the panels of a frameless case. 5 mm every 32 mm, 37 mm behind the front edge, is common practice without a published source.</source>
        <translation>Lochreihen in den Platten eines Korpus ohne Rahmen. 5 mm alle 32 mm, 37 mm hinter der Vorderkante, ist Werkstattbrauch ohne veröffentlichte Quelle.</translation>
    </message>
    <message>
        <source>Rows of holes</source>
        <translation>Lochreihen</translation>
    </message>
    <message>
        <source>None</source>
        <translation>Keine</translation>
    </message>
    <message>
        <source>In the panels</source>
        <translation>In den Platten</translation>
    </message>
    <message>
        <source>First hole above it</source>
        <translation>Erste Bohrung darüber</translation>
    </message>
    <message>
        <source>From hole to hole</source>
        <translation>Von Bohrung zu Bohrung</translation>
    </message>
    <message>
        <source>Row from the front edge</source>
        <translation>Reihe von der Vorderkante</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
</context>
<context>
    <name>frontwright::AirForm</name>
    <message>
        <source>&amp;Follow the wood through the year</source>
        <translation>Das Holz durch das &amp;Jahr verfolgen</translation>
    </message>
    <message>
        <source>Ordinary air indoors</source>
        <translation>Gewöhnliche Raumluft</translation>
    </message>
    <message>
        <source>When cut</source>
        <translation>Beim Zuschnitt</translation>
    </message>
    <message>
        <source>Driest</source>
        <translation>Trockenste</translation>
    </message>
    <message>
        <source>Wettest</source>
        <translation>Feuchteste</translation>
    </message>
    <message>
        <source>&amp;Room</source>
        <translation>&amp;Raum</translation>
    </message>
    <message>
        <source>When &amp;cut</source>
        <translation>Beim &amp;Zuschnitt</translation>
    </message>
    <message>
        <source>&amp;Driest (heating season)</source>
        <translation>&amp;Trockenste (Heizzeit)</translation>
    </message>
    <message>
        <source>&amp;Wettest (summer)</source>
        <translation>&amp;Feuchteste (Sommer)</translation>
    </message>
    <message>
        <source>As given below</source>
        <translation>Wie unten angegeben</translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation>Quelle: %1</translation>
    </message>
    <message>
        <source>Follow the wood through the year</source>
        <translation>Das Holz durch das Jahr verfolgen</translation>
    </message>
    <message>
        <source>Forget the air</source>
        <translation>Luft nicht beachten</translation>
    </message>
    <message>
        <source>Choose the room&apos;s air</source>
        <translation>Raumluft wählen</translation>
    </message>
    <message>
        <source>Change the air</source>
        <translation>Luft ändern</translation>
    </message>
    <message>
        <source>⚠ Not taken: %1</source>
        <translation>⚠ Nicht übernommen: %1</translation>
    </message>
</context>
<context>
    <name>frontwright::AirStateRow</name>
    <message>
        <source>%1: temperature</source>
        <translation>%1: Temperatur</translation>
    </message>
    <message>
        <source>%1: relative humidity</source>
        <translation>%1: relative Luftfeuchte</translation>
    </message>
    <message>
        <source> %</source>
        <translation> %</translation>
    </message>
    <message>
        <source>%1: moisture meter&apos;s reading</source>
        <translation>%1: Anzeige des Holzfeuchtemessers</translation>
    </message>
    <message>
        <source>Air</source>
        <translation>Luft</translation>
    </message>
    <message>
        <source>Meter</source>
        <translation>Messgerät</translation>
    </message>
    <message>
        <source>%1: told by air or by a moisture meter</source>
        <translation>%1: aus der Luft oder vom Holzfeuchtemesser</translation>
    </message>
    <message>
        <source>°C</source>
        <translation>°C</translation>
    </message>
    <message>
        <source>°F</source>
        <translation>°F</translation>
    </message>
    <message>
        <source>%1: unit of temperature</source>
        <translation>%1: Einheit der Temperatur</translation>
    </message>
    <message>
        <source>Relative humidity of the air, 0 to 100 %</source>
        <translation>Relative Luftfeuchte, 0 bis 100 %</translation>
    </message>
    <message>
        <source>The wood&apos;s moisture as the meter reads it, 0 to 30 %</source>
        <translation>Holzfeuchte, wie sie das Messgerät anzeigt, 0 bis 30 %</translation>
    </message>
</context>
<context>
    <name>frontwright::Announcer</name>
    <message>
        <source>Nothing is selected.</source>
        <translation>Nichts ist ausgewählt.</translation>
    </message>
    <message numerus="yes">
        <source>%n fronts selected</source>
        <translation>
            <numerusform>%n front selected</numerusform>
            <numerusform>%n fronts selected</numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to heed.</source>
        <translation>Nichts zu beachten.</translation>
    </message>
    <message>
        <source>%1 would ruin a part</source>
        <translation>%1 × ein Teil wäre verdorben</translation>
    </message>
    <message>
        <source>%1 will not work</source>
        <translation>%1 × es geht nicht</translation>
    </message>
    <message>
        <source>%1 outside good practice</source>
        <translation>%1 × gegen gute Praxis</translation>
    </message>
    <message>
        <source>%1 to know</source>
        <translation>%1 × zu wissen</translation>
    </message>
</context>
<context>
    <name>frontwright::AskActions</name>
    <message>
        <source>Why this &amp;number?</source>
        <translation>&amp;Warum diese Zahl?</translation>
    </message>
    <message>
        <source>Tell how the size of what is selected came about</source>
        <translation>Sagen, wie das Maß des Ausgewählten zustande kam</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>frontwright::BankActions</name>
    <message>
        <source>&amp;Bank</source>
        <translation>Ble&amp;ndenreihe</translation>
    </message>
    <message>
        <source>Copy the bank&apos;s &amp;divisions</source>
        <translation>&amp;Teilung der Blendenreihe kopieren</translation>
    </message>
    <message>
        <source>Copy how the bank of the selected opening is divided, to paste it elsewhere</source>
        <translation>Kopieren, wie die Blendenreihe der ausgewählten Öffnung geteilt ist, um sie anderswo einzufügen</translation>
    </message>
    <message>
        <source>&amp;Paste divisions</source>
        <translation>Teilung ein&amp;fügen</translation>
    </message>
    <message>
        <source>Divide each selected opening like the copied bank; a bank that is selected whole is replaced</source>
        <translation>Jede ausgewählte Öffnung wie die kopierte Blendenreihe teilen; eine ganz ausgewählte Blendenreihe wird ersetzt</translation>
    </message>
    <message>
        <source>Paste divisions</source>
        <translation>Teilung einfügen</translation>
    </message>
    <message>
        <source>Repeat the ba&amp;nk…</source>
        <translation>Blendenreihe &amp;wiederholen…</translation>
    </message>
    <message>
        <source>Draw the bank several times, side by side in its place</source>
        <translation>Die Blendenreihe mehrmals nebeneinander an ihre Stelle setzen</translation>
    </message>
    <message>
        <source>Select the whole &amp;bank</source>
        <translation>Ganze &amp;Blendenreihe auswählen</translation>
    </message>
    <message>
        <source>Select every front of the selected fronts&apos; banks</source>
        <translation>Alle Blenden in den Blendenreihen der ausgewählten Blenden auswählen</translation>
    </message>
    <message>
        <source>M&amp;irror the case</source>
        <translation>&amp;Korpus spiegeln</translation>
    </message>
    <message>
        <source>Exchange left and right in the whole case</source>
        <translation>Links und rechts im ganzen Korpus vertauschen</translation>
    </message>
    <message>
        <source>Mirror the case</source>
        <translation>Korpus spiegeln</translation>
    </message>
    <message>
        <source>Mirror this par&amp;t</source>
        <translation>Diesen Teil &amp;spiegeln</translation>
    </message>
    <message>
        <source>Exchange left and right in the smallest part with columns that holds the selection</source>
        <translation>Links und rechts im kleinsten Teil mit Spalten vertauschen, der das Ausgewählte enthält</translation>
    </message>
    <message>
        <source>Mirror a part</source>
        <translation>Teil spiegeln</translation>
    </message>
    <message>
        <source>Make the other side &amp;like this</source>
        <translation>Die andere Seite &amp;gleich machen</translation>
    </message>
    <message>
        <source>Mirror the columns on the selection&apos;s side onto the other side of their part</source>
        <translation>Die Spalten auf der Seite der Auswahl auf die andere Seite ihres Teils spiegeln</translation>
    </message>
    <message>
        <source>Make the other side like this</source>
        <translation>Die andere Seite gleich machen</translation>
    </message>
    <message>
        <source>Repeat the bank</source>
        <translation>Blendenreihe wiederholen</translation>
    </message>
    <message>
        <source>How many banks, with the present one?</source>
        <translation>Wie viele Blendenreihen, die jetzige mitgezählt?</translation>
    </message>
</context>
<context>
    <name>frontwright::CalibrationDialog</name>
    <message>
        <source>Measured length of bar A</source>
        <translation>Gemessene Länge von Maßstab A</translation>
    </message>
    <message>
        <source>Measured length of bar B</source>
        <translation>Gemessene Länge von Maßstab B</translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation>&amp;Vergleichen</translation>
    </message>
    <message>
        <source>Start a&amp;gain without correction</source>
        <translation>Ohne Korrektur &amp;neu beginnen</translation>
    </message>
    <message>
        <source>Test page for %1</source>
        <translation>Testseite für %1</translation>
    </message>
    <message>
        <source>Upright</source>
        <translation>Hochformat</translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation>Querformat</translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation>Ergebnis</translation>
    </message>
    <message>
        <source>Tell-tale sizes</source>
        <translation>Verräterische Maße</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>&amp;Orientation</source>
        <translation>Ausrich&amp;tung</translation>
    </message>
    <message>
        <source>Bar &amp;A, across the page</source>
        <translation>Maßstab &amp;A, quer über die Seite</translation>
    </message>
    <message>
        <source>Bar &amp;B, up the page</source>
        <translation>Maßstab &amp;B, die Seite hinauf</translation>
    </message>
    <message>
        <source>× %1 across, × %2 up</source>
        <translation>× %1 quer, × %2 hinauf</translation>
    </message>
    <message>
        <source>&amp;Print the test page</source>
        <translation>Testseite &amp;drucken</translation>
    </message>
    <message>
        <source>&amp;Print the page that proves it</source>
        <translation>Beweisseite &amp;drucken</translation>
    </message>
    <message>
        <source>Bar A should be %1, bar B %2.</source>
        <translation>Maßstab A soll %1 lang sein, Maßstab B %2.</translation>
    </message>
    <message>
        <source>This printer and paper were never checked. Print the test page; nothing on it is corrected. %1</source>
        <translation>Dieser Drucker wurde mit diesem Papier nie geprüft. Drucken Sie die Testseite; auf ihr ist nichts korrigiert. %1</translation>
    </message>
    <message>
        <source>Last checked %1. Print the page again to prove that it still holds. %2</source>
        <translation>Zuletzt geprüft %1. Drucken Sie die Seite noch einmal, um zu sehen, ob es noch stimmt. %2</translation>
    </message>
    <message>
        <source>Corrected %1. Print once more to prove it. %2</source>
        <translation>Korrigiert %1. Drucken Sie noch einmal, um es zu beweisen. %2</translation>
    </message>
    <message>
        <source>as measured</source>
        <translation>wie gemessen</translation>
    </message>
    <message>
        <source>Printed. Measure both bars from outer tick to outer tick, with a steel rule, and type the lengths.</source>
        <translation>Gedruckt. Messen Sie beide Maßstäbe von äußerem zu äußerem Strich mit einem Stahllineal und tippen Sie die Längen ein.</translation>
    </message>
    <message>
        <source>Nothing was printed.</source>
        <translation>Es wurde nichts gedruckt.</translation>
    </message>
    <message>
        <source>Type both measured lengths first; each is above zero.</source>
        <translation>Tippen Sie zuerst beide gemessenen Längen ein; jede ist größer als null.</translation>
    </message>
    <message>
        <source>That is no printer&apos;s mechanics, so nothing was stored. Likeliest: %1. %2</source>
        <translation>Das liegt nicht an der Mechanik des Druckers, darum wurde nichts gemerkt. Am wahrscheinlichsten: %1. %2</translation>
    </message>
    <message>
        <source>That is more than a printer&apos;s mechanics err, so nothing was stored. No size in the table fits: measure once more.</source>
        <translation>So weit irrt die Mechanik eines Druckers nicht, darum wurde nichts gemerkt. Kein Maß der Tabelle passt: Messen Sie noch einmal.</translation>
    </message>
    <message>
        <source>Both bars are right: this printer and paper need no correction.</source>
        <translation>Beide Maßstäbe stimmen: Dieser Drucker braucht mit diesem Papier keine Korrektur.</translation>
    </message>
    <message>
        <source>The correction %1 is kept. Print once more to prove it.</source>
        <translation>Die Korrektur %1 ist gemerkt. Drucken Sie noch einmal, um sie zu beweisen.</translation>
    </message>
    <message>
        <source>Proved: both bars are right with the correction %1.</source>
        <translation>Bewiesen: Mit der Korrektur %1 stimmen beide Maßstäbe.</translation>
    </message>
    <message>
        <source>With the correction the bars are still off by more than %1: something changed between the two prints. The correction was taken back; begin again with the test page.</source>
        <translation>Mit der Korrektur weichen die Maßstäbe noch um mehr als %1 ab: Zwischen den beiden Drucken hat sich etwas geändert. Die Korrektur wurde zurückgenommen; beginnen Sie wieder mit der Testseite.</translation>
    </message>
</context>
<context>
    <name>frontwright::CardDialog</name>
    <message>
        <source>Size of this screen</source>
        <translation>Größe dieses Bildschirms</translation>
    </message>
    <message>
        <source>Hold a bank card, or any card of that size, against the screen and make the outline fit it. Arrow keys change its width by one pixel.</source>
        <translation>Halten Sie eine Bankkarte oder eine Karte dieser Größe an den Bildschirm und passen Sie den Umriss an. Die Pfeiltasten ändern seine Breite um einen Bildpunkt.</translation>
    </message>
    <message>
        <source>Width of the card on the screen</source>
        <translation>Breite der Karte auf dem Bildschirm</translation>
    </message>
    <message>
        <source>From your eye to the screen</source>
        <translation>Vom Auge zum Bildschirm</translation>
    </message>
    <message>
        <source>write a distance from 100 mm to 10 m</source>
        <translation>einen Abstand von 100 mm bis 10 m eingeben</translation>
    </message>
    <message>
        <source>&amp;Width of the card</source>
        <translation>&amp;Breite der Karte</translation>
    </message>
    <message>
        <source>From your &amp;eye to the screen</source>
        <translation>Vom &amp;Auge zum Bildschirm</translation>
    </message>
    <message>
        <source>%1 pixels wide, %2 for each millimetre</source>
        <translation>%1 Bildpunkte breit, %2 je Millimeter</translation>
    </message>
</context>
<context>
    <name>frontwright::CardOutline</name>
    <message>
        <source>Outline of a card</source>
        <translation>Umriss einer Karte</translation>
    </message>
    <message>
        <source>85.60 mm × 53.98 mm</source>
        <translation>85,60 mm × 53,98 mm</translation>
    </message>
</context>
<context>
    <name>frontwright::CaseFile</name>
    <message>
        <source>Copy of %1</source>
        <translation>Kopie von %1</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Korpus</translation>
    </message>
</context>
<context>
    <name>frontwright::CentralArea</name>
    <message>
        <source>Reveals ×1&amp;0</source>
        <translation>Sichtbreiten ×1&amp;0</translation>
    </message>
    <message>
        <source>Dra&amp;wing</source>
        <translation>&amp;Zeichnung</translation>
    </message>
    <message>
        <source>Show the drawing with its dimensions</source>
        <translation>Die Zeichnung mit ihren Maßen zeigen</translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation>&amp;Darstellung</translation>
    </message>
    <message>
        <source>Show the fronts as they will look</source>
        <translation>Die Blenden zeigen, wie sie aussehen werden</translation>
    </message>
    <message>
        <source>Drawin&amp;g and look</source>
        <translation>Zeichn&amp;ung und Darstellung</translation>
    </message>
    <message>
        <source>Show both side by side</source>
        <translation>Beide nebeneinander zeigen</translation>
    </message>
    <message>
        <source>Show the look with every reveal ten times as wide</source>
        <translation>Die Darstellung mit zehnfachen Sichtbreiten zeigen</translation>
    </message>
</context>
<context>
    <name>frontwright::EditActions</name>
    <message>
        <source>&amp;Undo</source>
        <translation>&amp;Rückgängig</translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation>&amp;Wiederholen</translation>
    </message>
    <message>
        <source>Undo</source>
        <translation>Rückgängig</translation>
    </message>
    <message>
        <source>Redo</source>
        <translation>Wiederholen</translation>
    </message>
    <message>
        <source>Take back the last step</source>
        <translation>Den letzten Schritt zurücknehmen</translation>
    </message>
    <message>
        <source>Do again what was taken back</source>
        <translation>Noch einmal tun, was zurückgenommen wurde</translation>
    </message>
    <message>
        <source>Split into &amp;rows</source>
        <translation>In &amp;Zeilen teilen</translation>
    </message>
    <message>
        <source>Split the opening into two, one above the other; type a number for as many</source>
        <translation>Die Öffnung in zwei übereinander teilen; eine Zahl tippen für so viele</translation>
    </message>
    <message>
        <source>Split into &amp;columns</source>
        <translation>In &amp;Spalten teilen</translation>
    </message>
    <message>
        <source>Split the opening into two, side by side; type a number for as many</source>
        <translation>Die Öffnung in zwei nebeneinander teilen; eine Zahl tippen für so viele</translation>
    </message>
    <message>
        <source>Split into several r&amp;ows…</source>
        <translation>In &amp;mehrere Zeilen teilen…</translation>
    </message>
    <message>
        <source>Split the opening into as many rows as you say</source>
        <translation>Die Öffnung in beliebig viele Zeilen teilen</translation>
    </message>
    <message>
        <source>Split into several co&amp;lumns…</source>
        <translation>In mehrere S&amp;palten teilen…</translation>
    </message>
    <message>
        <source>Split the opening into as many columns as you say</source>
        <translation>Die Öffnung in beliebig viele Spalten teilen</translation>
    </message>
    <message>
        <source>&amp;Join openings</source>
        <translation>Ö&amp;ffnungen verbinden</translation>
    </message>
    <message>
        <source>Make one opening of those selected</source>
        <translation>Aus den ausgewählten Öffnungen eine machen</translation>
    </message>
    <message>
        <source>Join openings</source>
        <translation>Öffnungen verbinden</translation>
    </message>
    <message>
        <source>Remove &amp;member</source>
        <translation>Rahmenteil en&amp;tfernen</translation>
    </message>
    <message>
        <source>Take the member away; what was on both sides becomes one opening</source>
        <translation>Das Rahmenteil wegnehmen; was zu beiden Seiten war, wird eine Öffnung</translation>
    </message>
    <message>
        <source>Remove member</source>
        <translation>Rahmenteil entfernen</translation>
    </message>
    <message>
        <source>Cop&amp;y the bank&apos;s divisions here</source>
        <translation>Teilung der Blendenreihe hierher &amp;kopieren</translation>
    </message>
    <message>
        <source>Divide the last selected opening like the bank of the first</source>
        <translation>Die zuletzt ausgewählte Öffnung wie die Blendenreihe der ersten teilen</translation>
    </message>
    <message>
        <source>Make equal</source>
        <translation>Angleichen</translation>
    </message>
    <message>
        <source>Make &amp;heights equal</source>
        <translation>&amp;Höhen angleichen</translation>
    </message>
    <message>
        <source>Give the selected openings of a bank the same height</source>
        <translation>Den ausgewählten Öffnungen einer Blendenreihe die gleiche Höhe geben</translation>
    </message>
    <message>
        <source>Make &amp;widths equal</source>
        <translation>&amp;Breiten angleichen</translation>
    </message>
    <message>
        <source>Give the selected openings of a row the same width</source>
        <translation>Den ausgewählten Öffnungen einer Zeile die gleiche Breite geben</translation>
    </message>
    <message>
        <source>Make fronts equal</source>
        <translation>Blenden gleich machen</translation>
    </message>
    <message>
        <source>Make fronts e&amp;qually high</source>
        <translation>Blendenhöhen glei&amp;ch machen</translation>
    </message>
    <message>
        <source>Give the fronts, not the openings, the same height: where they lie farther over the outer panels than over the shelves</source>
        <translation>Die Blenden, nicht die Öffnungen, gleich hoch machen: wo sie über die Außenseiten weiter reichen als über die Böden</translation>
    </message>
    <message>
        <source>Make fro&amp;nts equally wide</source>
        <translation>Blendenbreiten gleichm&amp;äßig machen</translation>
    </message>
    <message>
        <source>Give the fronts, not the openings, the same width</source>
        <translation>Die Blenden, nicht die Öffnungen, gleich breit machen</translation>
    </message>
    <message>
        <source>&amp;Graduate the bank…</source>
        <translation>Blendenreihe abst&amp;ufen…</translation>
    </message>
    <message>
        <source>Make each drawer deeper than the one above it</source>
        <translation>Jeden Schubkasten höher machen als den über ihm</translation>
    </message>
    <message>
        <source>&amp;End graduation</source>
        <translation>Abstufung been&amp;den</translation>
    </message>
    <message>
        <source>Keep the present sizes, but let each be changed by itself</source>
        <translation>Die jetzigen Maße behalten, aber jedes für sich ändern lassen</translation>
    </message>
    <message>
        <source>End graduation</source>
        <translation>Abstufung beenden</translation>
    </message>
    <message>
        <source>Loc&amp;k or free the height</source>
        <translation>Höhe festha&amp;lten oder freigeben</translation>
    </message>
    <message>
        <source>A locked opening keeps its height while others change</source>
        <translation>Eine festgehaltene Öffnung behält ihre Höhe, wenn andere sich ändern</translation>
    </message>
    <message>
        <source>Lock or &amp;free the width</source>
        <translation>Breite festhalten oder frei&amp;geben</translation>
    </message>
    <message>
        <source>A locked opening keeps its width while others change</source>
        <translation>Eine festgehaltene Öffnung behält ihre Breite, wenn andere sich ändern</translation>
    </message>
    <message>
        <source>Use the open&amp;ing for</source>
        <translation>&amp;Öffnung verwenden für</translation>
    </message>
    <message>
        <source>Change what the selected openings are for</source>
        <translation>Ändern, wofür die gewählten Öffnungen sind</translation>
    </message>
    <message>
        <source>Change what an opening is for</source>
        <translation>Zweck einer Öffnung ändern</translation>
    </message>
    <message>
        <source>Select &amp;all fronts</source>
        <translation>&amp;Alle Blenden auswählen</translation>
    </message>
    <message>
        <source>Select every front of the case</source>
        <translation>Jede Blende des Korpus auswählen</translation>
    </message>
    <message>
        <source>Ca&amp;talogue…</source>
        <translation>Katal&amp;og…</translation>
    </message>
    <message>
        <source>Add, change and remove screws, bolts, handles, runners and woods</source>
        <translation>Schrauben, Gewindeschrauben, Griffe, Führungen und Hölzer hinzufügen, ändern und entfernen</translation>
    </message>
    <message>
        <source>Split into rows</source>
        <translation>In Zeilen teilen</translation>
    </message>
    <message>
        <source>Split into columns</source>
        <translation>In Spalten teilen</translation>
    </message>
    <message>
        <source>Split the opening</source>
        <translation>Öffnung teilen</translation>
    </message>
    <message>
        <source>How many rows?</source>
        <translation>Wie viele Zeilen?</translation>
    </message>
    <message>
        <source>How many columns?</source>
        <translation>Wie viele Spalten?</translation>
    </message>
    <message>
        <source>Split opening</source>
        <translation>Öffnung teilen</translation>
    </message>
    <message>
        <source>Copy the bank&apos;s divisions</source>
        <translation>Teilung der Blendenreihe kopieren</translation>
    </message>
    <message>
        <source>Graduate the bank</source>
        <translation>Blendenreihe abstufen</translation>
    </message>
    <message>
        <source>Free the size</source>
        <translation>Maß freigeben</translation>
    </message>
    <message>
        <source>Lock the size</source>
        <translation>Maß festhalten</translation>
    </message>
</context>
<context>
    <name>frontwright::ElevationView</name>
    <message>
        <source>Click to type this size.</source>
        <translation>Klicken, um dieses Maß einzutippen.</translation>
    </message>
    <message>
        <source>Drag to move. Double-click to type its width. Tab: what else is here.</source>
        <translation>Ziehen zum Versetzen. Doppelklick: Breite eintippen. Tab: was hier noch liegt.</translation>
    </message>
    <message>
        <source>Drag %1; Shift moves those down the bank along. Click, then arrow keys nudge it and Enter types its height.</source>
        <translation>%1 ziehen; Umschalt nimmt die der Blendenreihe mit. Klicken, dann versetzen die Pfeiltasten, und die Eingabetaste öffnet die Höhe.</translation>
    </message>
    <message>
        <source>Click to select; Shift-click to add. Double-click to type a size.</source>
        <translation>Klicken wählt aus, mit Umschalt kommt dazu. Doppelklick: Maß eintippen.</translation>
    </message>
    <message>
        <source>Nudge member</source>
        <translation>Rahmenteil rücken</translation>
    </message>
    <message>
        <source>Sizes lie on a grid of %1; set a finer grid for the case to move less.</source>
        <translation>Die Maße liegen auf einem Raster von %1; ein feineres Raster des Korpus erlaubt kleinere Schritte.</translation>
    </message>
    <message>
        <source>Nudge mounting hole</source>
        <translation>Befestigungsbohrung rücken</translation>
    </message>
    <message>
        <source>Nudge handle</source>
        <translation>Griff rücken</translation>
    </message>
    <message>
        <source>Remove mounting hole</source>
        <translation>Befestigungsbohrung entfernen</translation>
    </message>
    <message>
        <source>Selected: %1. Arrow keys nudge it, Enter types its height, Shift+Enter its place across, Delete takes a hole away.</source>
        <translation>Ausgewählt: %1. Pfeiltasten rücken, Eingabe öffnet die Höhe, Umschalt+Eingabe die Lage quer, Entf nimmt eine Bohrung weg.</translation>
    </message>
    <message>
        <source>Elevation of the case</source>
        <translation>Ansicht des Korpus</translation>
    </message>
    <message>
        <source>Arrow keys walk from front to front, Tab cycles through what lies under the pointer, Enter types a size.</source>
        <translation>Die Pfeiltasten gehen von Blende zu Blende, Tab geht durch, was unter dem Zeiger liegt, die Eingabetaste öffnet ein Maß.</translation>
    </message>
</context>
<context>
    <name>frontwright::EntryColumns</name>
    <message>
        <source>at 12 % moisture</source>
        <translation>bei 12 % Feuchte</translation>
    </message>
    <message>
        <source>ovendry</source>
        <translation>darrtrocken</translation>
    </message>
    <message>
        <source>green</source>
        <translation>waldfrisch</translation>
    </message>
</context>
<context>
    <name>frontwright::EntryTable</name>
    <message>
        <source>&amp;Remove own entry</source>
        <translation>Eigenen Eintrag en&amp;tfernen</translation>
    </message>
    <message>
        <source>&amp;Add a copy</source>
        <translation>Kopie &amp;hinzufügen</translation>
    </message>
    <message>
        <source>own</source>
        <translation>eigener</translation>
    </message>
    <message>
        <source>Change a catalogue entry</source>
        <translation>Katalogeintrag ändern</translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation>%1 (eigener)</translation>
    </message>
    <message>
        <source>Add a catalogue entry</source>
        <translation>Katalogeintrag hinzufügen</translation>
    </message>
    <message>
        <source>Remove a catalogue entry</source>
        <translation>Katalogeintrag entfernen</translation>
    </message>
</context>
<context>
    <name>frontwright::FaceActions</name>
    <message>
        <source>Se&amp;veral fronts over one opening</source>
        <translation>Bl&amp;enden über einer Öffnung</translation>
    </message>
    <message>
        <source>Several fronts, one &amp;above the other…</source>
        <translation>Mehrere Blenden &amp;übereinander…</translation>
    </message>
    <message>
        <source>Divide the face of the opening into rows of fronts on one box</source>
        <translation>Die Ansicht der Öffnung in Blenden übereinander an einem Kasten teilen</translation>
    </message>
    <message>
        <source>Several fronts, &amp;side by side…</source>
        <translation>Mehrere Blenden &amp;nebeneinander…</translation>
    </message>
    <message>
        <source>Divide the face of the opening into columns of fronts on one box</source>
        <translation>Die Ansicht der Öffnung in Blenden nebeneinander an einem Kasten teilen</translation>
    </message>
    <message>
        <source>Fronts like the &amp;bank beside it</source>
        <translation>Blenden wie die &amp;Blendenreihe daneben</translation>
    </message>
    <message>
        <source>Divide the face of the opening so that its fronts line up with the neighbouring bank</source>
        <translation>Die Ansicht der Öffnung so teilen, dass ihre Blenden mit der benachbarten Blendenreihe fluchten</translation>
    </message>
    <message>
        <source>Fronts like the bank beside it</source>
        <translation>Blenden wie die Blendenreihe daneben</translation>
    </message>
    <message>
        <source>&amp;One front again</source>
        <translation>&amp;Wieder eine Blende</translation>
    </message>
    <message>
        <source>Make one front of all those over the opening</source>
        <translation>Aus allen Blenden über der Öffnung eine machen</translation>
    </message>
    <message>
        <source>One front again</source>
        <translation>Wieder eine Blende</translation>
    </message>
    <message>
        <source>Several fronts over one opening</source>
        <translation>Mehrere Blenden über einer Öffnung</translation>
    </message>
    <message>
        <source>How many, one above the other?</source>
        <translation>Wie viele übereinander?</translation>
    </message>
    <message>
        <source>How many, side by side?</source>
        <translation>Wie viele nebeneinander?</translation>
    </message>
    <message>
        <source>Divide the face</source>
        <translation>Ansicht teilen</translation>
    </message>
</context>
<context>
    <name>frontwright::FileActions</name>
    <message>
        <source>&amp;New case…</source>
        <translation>&amp;Neuer Korpus…</translation>
    </message>
    <message>
        <source>Start a case from a few numbers</source>
        <translation>Einen Korpus aus wenigen Zahlen beginnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a case file</source>
        <translation>Eine Korpusdatei öffnen</translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation>&amp;Zuletzt geöffnet</translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation>&amp;Speichern</translation>
    </message>
    <message>
        <source>Save the case to its file</source>
        <translation>Den Korpus in seine Datei speichern</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>Save the case under another name</source>
        <translation>Den Korpus unter anderem Namen speichern</translation>
    </message>
    <message>
        <source>Start pa&amp;ge</source>
        <translation>Star&amp;tseite</translation>
    </message>
    <message>
        <source>Show the start page; the case stays open</source>
        <translation>Die Startseite zeigen; der Korpus bleibt offen</translation>
    </message>
    <message>
        <source>&amp;Close the case</source>
        <translation>Korpus s&amp;chließen</translation>
    </message>
    <message>
        <source>Close the case and go back to the start page</source>
        <translation>Den Korpus schließen und zur Startseite zurückkehren</translation>
    </message>
    <message>
        <source>No case was opened yet</source>
        <translation>Noch kein Korpus geöffnet</translation>
    </message>
    <message>
        <source>The case can&apos;t be made</source>
        <translation>Der Korpus lässt sich nicht anlegen</translation>
    </message>
    <message>
        <source>Open a case</source>
        <translation>Korpus öffnen</translation>
    </message>
    <message>
        <source>Case files (*.%1);;All files (*)</source>
        <translation>Korpusdateien (*.%1);;Alle Dateien (*)</translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation>Beispiel %1</translation>
    </message>
    <message>
        <source>The sample can&apos;t be opened</source>
        <translation>Das Beispiel lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>The case can&apos;t be closed</source>
        <translation>Der Korpus lässt sich nicht schließen</translation>
    </message>
    <message>
        <source>The case can&apos;t be opened</source>
        <translation>Der Korpus lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>The case was not saved</source>
        <translation>Der Korpus wurde nicht gespeichert</translation>
    </message>
    <message>
        <source>Save the case as</source>
        <translation>Korpus speichern unter</translation>
    </message>
    <message>
        <source>Case files (*.%1)</source>
        <translation>Korpusdateien (*.%1)</translation>
    </message>
    <message>
        <source>my-case</source>
        <translation>mein-korpus</translation>
    </message>
</context>
<context>
    <name>frontwright::FileQuestions</name>
    <message>
        <source>Open elsewhere</source>
        <translation>Anderswo geöffnet</translation>
    </message>
    <message>
        <source>%1 is open in another window (process %2 on %3). Only one of them may save it.</source>
        <translation>%1 ist in einem anderen Fenster offen (Prozess %2 auf %3). Nur eines von beiden darf speichern.</translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation>Als &amp;Kopie öffnen</translation>
    </message>
    <message>
        <source>&amp;Read only</source>
        <translation>Nur &amp;lesen</translation>
    </message>
    <message>
        <source>Changed outside</source>
        <translation>Außerhalb geändert</translation>
    </message>
    <message>
        <source>%1 was changed by something else since it was opened here. Saving would replace that version.</source>
        <translation>%1 wurde von anderer Seite geändert, seit es hier geöffnet wurde. Speichern würde diese Fassung ersetzen.</translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation>Speichern &amp;unter…</translation>
    </message>
    <message>
        <source>&amp;Replace it</source>
        <translation>&amp;Ersetzen</translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation>Nicht gespeicherte Änderungen</translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translation>Die Änderungen an %1 speichern?</translation>
    </message>
    <message>
        <source>Not found</source>
        <translation>Nicht gefunden</translation>
    </message>
    <message>
        <source>%1 is no longer there. Take it off the list of recent cases?</source>
        <translation>%1 ist nicht mehr da. Aus der Liste der zuletzt geöffneten Korpusse nehmen?</translation>
    </message>
</context>
<context>
    <name>frontwright::FindingsPanel</name>
    <message>
        <source>Findings</source>
        <translation>Befunde</translation>
    </message>
    <message>
        <source>How grave</source>
        <translation>Schwere</translation>
    </message>
    <message>
        <source>Where</source>
        <translation>Wo</translation>
    </message>
    <message>
        <source>What</source>
        <translation>Was</translation>
    </message>
    <message>
        <source>Reason and rule</source>
        <translation>Grund und Regel</translation>
    </message>
    <message>
        <source>Reason and remedies</source>
        <translation>Grund und Abhilfen</translation>
    </message>
    <message>
        <source>Every screw, bolt and front was checked against the limits.</source>
        <translation>Jede Schraube, Gewindeschraube und Blende wurde an den Grenzwerten geprüft.</translation>
    </message>
    <message>
        <source>Select a finding to see its place, its reason and what cures it.</source>
        <translation>Einen Befund auswählen, um seine Stelle, seinen Grund und die Abhilfe zu sehen.</translation>
    </message>
    <message>
        <source>Why: %1

Rule: %2</source>
        <translation>Grund: %1

Regel: %2</translation>
    </message>
    <message>
        <source>Why this number: %1</source>
        <translation>Warum diese Zahl: %1</translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation>Gehe zu: %1</translation>
    </message>
</context>
<context>
    <name>frontwright::FittingColumns</name>
    <message>
        <source>cup pull</source>
        <translation>Muschelgriff</translation>
    </message>
    <message>
        <source>edge pull</source>
        <translation>Kantengriff</translation>
    </message>
    <message>
        <source>ring pull</source>
        <translation>Ringgriff</translation>
    </message>
    <message>
        <source>label holder</source>
        <translation>Etikettenrahmen</translation>
    </message>
    <message>
        <source>lock</source>
        <translation>Schloss</translation>
    </message>
    <message>
        <source>show face</source>
        <translation>Sichtseite</translation>
    </message>
    <message>
        <source>back</source>
        <translation>Rückseite</translation>
    </message>
    <message>
        <source>top edge</source>
        <translation>Oberkante</translation>
    </message>
</context>
<context>
    <name>frontwright::Fold</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>closed</source>
        <translation>geschlossen</translation>
    </message>
</context>
<context>
    <name>frontwright::GraduateDialog</name>
    <message>
        <source>Step</source>
        <translation>Stufe</translation>
    </message>
    <message>
        <source>Topmost height</source>
        <translation>Oberste Höhe</translation>
    </message>
    <message>
        <source>Lowest height</source>
        <translation>Unterste Höhe</translation>
    </message>
    <message>
        <source>Graduate the bank</source>
        <translation>Blendenreihe abstufen</translation>
    </message>
    <message>
        <source>By a step: each is deeper by the same length</source>
        <translation>In Stufen: jeder um dasselbe Maß höher</translation>
    </message>
    <message>
        <source>By a ratio: each is deeper by the same part</source>
        <translation>Im Verhältnis: jeder um denselben Anteil höher</translation>
    </message>
    <message>
        <source>Between a topmost and a lowest height, by the ratio that follows</source>
        <translation>Zwischen einer obersten und einer untersten Höhe, im Verhältnis, das sich ergibt</translation>
    </message>
    <message>
        <source>Kind of graduation</source>
        <translation>Art der Abstufung</translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation>Verhältnis</translation>
    </message>
    <message>
        <source>Those between share what is left</source>
        <translation>Die mittleren teilen sich den Rest</translation>
    </message>
    <message>
        <source>The case’s height follows</source>
        <translation>Die Höhe des Korpus folgt</translation>
    </message>
    <message>
        <source>What makes room</source>
        <translation>Was Platz schafft</translation>
    </message>
    <message>
        <source>What follows</source>
        <translation>Was sich ergibt</translation>
    </message>
    <message>
        <source>&amp;Step</source>
        <translation>&amp;Stufe</translation>
    </message>
    <message>
        <source>&amp;Ratio</source>
        <translation>&amp;Verhältnis</translation>
    </message>
    <message>
        <source>&amp;Topmost height</source>
        <translation>&amp;Oberste Höhe</translation>
    </message>
    <message>
        <source>&amp;Lowest height</source>
        <translation>&amp;Unterste Höhe</translation>
    </message>
    <message>
        <source>R&amp;oom</source>
        <translation>&amp;Platz</translation>
    </message>
    <message>
        <source>The top drawer is the shallowest, the bottom drawer the deepest.</source>
        <translation>Der oberste Schubkasten ist der niedrigste, der unterste der höchste.</translation>
    </message>
    <message>
        <source>Ratio %1. There is no room for it: %2 is needed, %3 is there.</source>
        <translation>Verhältnis %1. Dafür ist kein Platz: %2 sind nötig, %3 sind da.</translation>
    </message>
    <message>
        <source>Ratio %1: %2. In that ratio throughout %3 is needed, %4 is there.</source>
        <translation>Verhältnis %1: %2. Durchweg in diesem Verhältnis sind %3 nötig, %4 sind da.</translation>
    </message>
</context>
<context>
    <name>frontwright::Help</name>
    <message>
        <source>&amp;Help on this</source>
        <translation>&amp;Hilfe hierzu</translation>
    </message>
    <message>
        <source>Open the help at what is selected</source>
        <translation>Die Hilfe bei dem öffnen, was ausgewählt ist</translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation>&amp;Inhalt</translation>
    </message>
    <message>
        <source>Open the help at its beginning</source>
        <translation>Die Hilfe am Anfang öffnen</translation>
    </message>
    <message>
        <source>&amp;Mouse and keys</source>
        <translation>&amp;Maus und Tasten</translation>
    </message>
    <message>
        <source>What mouse and keys do</source>
        <translation>Was Maus und Tasten tun</translation>
    </message>
    <message>
        <source>Words of the &amp;trade</source>
        <translation>&amp;Fachwörter</translation>
    </message>
    <message>
        <source>What the words mean, each with a drawing</source>
        <translation>Was die Wörter bedeuten, jedes mit einer Zeichnung</translation>
    </message>
    <message>
        <source>It came out at the &amp;wrong size</source>
        <translation>Es kam in falscher &amp;Größe heraus</translation>
    </message>
    <message>
        <source>When a check bar is not 100 mm</source>
        <translation>Wenn ein Prüfmaßstab nicht 100 mm misst</translation>
    </message>
    <message>
        <source>&amp;Rules and their sources…</source>
        <translation>&amp;Regeln und ihre Quellen…</translation>
    </message>
    <message>
        <source>Every rule, its value and where it is from</source>
        <translation>Jede Regel, ihr Wert und woher sie kommt</translation>
    </message>
    <message>
        <source>C&amp;autions</source>
        <translation>&amp;Sicherheitshinweise</translation>
    </message>
    <message>
        <source>Before you cut and drill</source>
        <translation>Bevor Sie sägen und bohren</translation>
    </message>
</context>
<context>
    <name>frontwright::HelpBrowser</name>
    <message>
        <source>Help page</source>
        <translation>Hilfeseite</translation>
    </message>
</context>
<context>
    <name>frontwright::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation>Hilfe</translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation>&amp;Zurück</translation>
    </message>
    <message>
        <source>&amp;Forward</source>
        <translation>&amp;Vor</translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation>Hilfe durchsuchen</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>Contents</source>
        <translation>Inhalt</translation>
    </message>
    <message>
        <source>Nothing was found. Try another word.</source>
        <translation>Nichts gefunden. Versuchen Sie ein anderes Wort.</translation>
    </message>
    <message>
        <source>Places found: %1</source>
        <translation>Fundstellen: %1</translation>
    </message>
</context>
<context>
    <name>frontwright::LanguageMenu</name>
    <message>
        <source>La&amp;nguage</source>
        <translation>S&amp;prache</translation>
    </message>
    <message>
        <source>&amp;As the desktop</source>
        <translation>&amp;Wie der Schreibtisch</translation>
    </message>
    <message>
        <source>The program speaks this language from its next start on</source>
        <translation>Das Programm spricht diese Sprache ab dem nächsten Start</translation>
    </message>
    <message>
        <source>Frontwright changes its language when it is started again</source>
        <translation>Frontwright wechselt die Sprache, wenn es neu gestartet wird</translation>
    </message>
</context>
<context>
    <name>frontwright::LengthField</name>
    <message>
        <source>Exactly %1</source>
        <translation>Genau %1</translation>
    </message>
    <message>
        <source>A length is wanted, such as 12 5/8 or 321 mm</source>
        <translation>Hier steht ein Maß, etwa 321 mm oder 12 5/8</translation>
    </message>
</context>
<context>
    <name>frontwright::LookPanel</name>
    <message>
        <source>Re&amp;veals ×10</source>
        <translation>Sicht&amp;breiten ×10</translation>
    </message>
    <message>
        <source>Reveals in words</source>
        <translation>Sichtbreiten in Worten</translation>
    </message>
    <message>
        <source>Size on the screen</source>
        <translation>Größe auf dem Bildschirm</translation>
    </message>
    <message>
        <source>Zoomed</source>
        <translation>Frei vergrößert</translation>
    </message>
    <message>
        <source>Whole case</source>
        <translation>Ganzer Korpus</translation>
    </message>
    <message>
        <source>Real size</source>
        <translation>Wahre Größe</translation>
    </message>
    <message>
        <source>As seen from %1 m</source>
        <translation>Wie aus %1 m gesehen</translation>
    </message>
    <message>
        <source>Show every reveal ten times as wide, to compare them</source>
        <translation>Jede Sichtbreite zehnfach zeigen, um sie zu vergleichen</translation>
    </message>
    <message>
        <source>Si&amp;ze</source>
        <translation>&amp;Größe</translation>
    </message>
    <message>
        <source>&amp;Screen…</source>
        <translation>Bildsc&amp;hirm…</translation>
    </message>
    <message>
        <source>Fit a card to the screen, so that sizes on it are real</source>
        <translation>Eine Karte an den Bildschirm halten, damit die Größen stimmen</translation>
    </message>
    <message>
        <source>%1 of its size</source>
        <translation>%1 der Größe</translation>
    </message>
    <message>
        <source>%1, if the screen tells its size rightly. Fit a card to it to be sure.</source>
        <translation>%1, wenn der Bildschirm seine Größe richtig angibt. Halten Sie zur Sicherheit eine Karte daran.</translation>
    </message>
</context>
<context>
    <name>frontwright::LookView</name>
    <message>
        <source>The fronts as they will look</source>
        <translation>Die Blenden, wie sie aussehen werden</translation>
    </message>
    <message>
        <source>Arrow keys walk from front to front; plus and minus zoom, 0 fits the case.</source>
        <translation>Die Pfeiltasten gehen von Blende zu Blende; Plus und Minus ändern die Größe, 0 passt den Korpus ein.</translation>
    </message>
</context>
<context>
    <name>frontwright::MainWindow</name>
    <message>
        <source>&amp;File</source>
        <translation>&amp;Datei</translation>
    </message>
    <message>
        <source>&amp;Templates at full size…</source>
        <translation>&amp;Bohrschablonen in wahrer Größe…</translation>
    </message>
    <message>
        <source>Look at the drilling templates, save them as PDF or print them</source>
        <translation>Die Bohrschablonen ansehen, als PDF speichern oder drucken</translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation>B&amp;eenden</translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation>Das Fenster schließen</translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation>&amp;Bearbeiten</translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation>&amp;Ansicht</translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation>Be&amp;reiche</translation>
    </message>
    <message>
        <source>Show or hide the panel “%1”</source>
        <translation>Den Bereich „%1“ zeigen oder verbergen</translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation>&amp;Hilfe</translation>
    </message>
    <message>
        <source>Tools</source>
        <translation>Werkzeuge</translation>
    </message>
    <message>
        <source>&amp;Selected</source>
        <translation>&amp;Ausgewählt</translation>
    </message>
    <message>
        <source>&amp;Numbers</source>
        <translation>&amp;Zahlen</translation>
    </message>
    <message>
        <source>&amp;Ways to hold it</source>
        <translation>&amp;Befestigungsarten</translation>
    </message>
    <message>
        <source>W&amp;ood and air</source>
        <translation>&amp;Holz und Luft</translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation>&amp;Schritte</translation>
    </message>
    <message>
        <source>S&amp;ection</source>
        <translation>S&amp;chnitt</translation>
    </message>
    <message>
        <source>&amp;Findings</source>
        <translation>Be&amp;funde</translation>
    </message>
    <message>
        <source>Steps that can be taken back</source>
        <translation>Schritte, die sich zurücknehmen lassen</translation>
    </message>
    <message>
        <source>The case as it was opened</source>
        <translation>Der Korpus, wie er geöffnet wurde</translation>
    </message>
    <message>
        <source>Frontwright</source>
        <translation>Frontwright</translation>
    </message>
    <message>
        <source>%1[*] (read only) – Frontwright</source>
        <translation>%1[*] (nur lesen) – Frontwright</translation>
    </message>
    <message>
        <source>%1[*] – Frontwright</source>
        <translation>%1[*] – Frontwright</translation>
    </message>
    <message>
        <source>%1 fronts selected</source>
        <translation>%1 Blenden ausgewählt</translation>
    </message>
    <message>
        <source>%1 openings selected</source>
        <translation>%1 Öffnungen ausgewählt</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
</context>
<context>
    <name>frontwright::MemberDrag</name>
    <message>
        <source> · equal sizes</source>
        <translation> · gleiche Maße</translation>
    </message>
    <message>
        <source> · in line</source>
        <translation> · fluchtend</translation>
    </message>
    <message>
        <source>Move by</source>
        <translation>Versetzen um</translation>
    </message>
    <message>
        <source>Snapping is suspended while Alt is held.</source>
        <translation>Solange Alt gedrückt ist, rastet nichts ein.</translation>
    </message>
    <message>
        <source>Type a distance to move by exactly that. Alt suspends snapping. Esc puts it back.</source>
        <translation>Einen Abstand tippen, um genau so weit zu versetzen. Alt hebt das Einrasten auf. Esc setzt es zurück.</translation>
    </message>
    <message>
        <source>Change stile width</source>
        <translation>Breite des Längsfrieses ändern</translation>
    </message>
    <message>
        <source>Change panel thickness</source>
        <translation>Plattendicke ändern</translation>
    </message>
    <message>
        <source>Change rail width</source>
        <translation>Breite des Querfrieses ändern</translation>
    </message>
    <message>
        <source>Move stile</source>
        <translation>Längsfries versetzen</translation>
    </message>
    <message>
        <source>Move divider</source>
        <translation>Mittelwand versetzen</translation>
    </message>
    <message>
        <source>Move rail</source>
        <translation>Querfries versetzen</translation>
    </message>
    <message>
        <source>Move shelf</source>
        <translation>Zwischenboden versetzen</translation>
    </message>
    <message>
        <source>Move division of the face</source>
        <translation>Teilung der Vorderseite verschieben</translation>
    </message>
</context>
<context>
    <name>frontwright::NewCaseDialog</name>
    <message>
        <source>Width of the case</source>
        <translation>Breite des Korpus</translation>
    </message>
    <message>
        <source>Height of the case</source>
        <translation>Höhe des Korpus</translation>
    </message>
    <message>
        <source>Depth inside</source>
        <translation>Tiefe innen</translation>
    </message>
    <message>
        <source>Width of the frame&apos;s stiles and rails</source>
        <translation>Breite der Längs- und Querfriese</translation>
    </message>
    <message>
        <source>Width of the members between</source>
        <translation>Breite der Rahmenteile dazwischen</translation>
    </message>
    <message>
        <source>Thickness of the shelves between drawers</source>
        <translation>Dicke der Zwischenböden zwischen den Schubkästen</translation>
    </message>
    <message>
        <source>Banks</source>
        <translation>Blendenreihen</translation>
    </message>
    <message>
        <source>Drawers in each bank</source>
        <translation>Schubkästen je Blendenreihe</translation>
    </message>
    <message>
        <source>Overlay or gap</source>
        <translation>Aufschlag oder Fuge</translation>
    </message>
    <message>
        <source>New case</source>
        <translation>Neuer Korpus</translation>
    </message>
    <message>
        <source>Inches</source>
        <translation>Zoll</translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation>Millimeter</translation>
    </message>
    <message>
        <source>Unit</source>
        <translation>Einheit</translation>
    </message>
    <message>
        <source>Face frame</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>Frameless: panels only</source>
        <translation>Ohne Rahmen: nur Platten</translation>
    </message>
    <message>
        <source>Construction</source>
        <translation>Bauart</translation>
    </message>
    <message>
        <source>Overlay: cover the members by</source>
        <translation>Aufliegend: Aufschlag auf den Rahmen</translation>
    </message>
    <message>
        <source>Gap first: leave between fronts</source>
        <translation>Fuge zuerst: Fuge zwischen den Blenden</translation>
    </message>
    <message>
        <source>Inset: leave round each front</source>
        <translation>Einliegend: Fuge um jede Blende</translation>
    </message>
    <message>
        <source>How the fronts fit</source>
        <translation>Sitz der Blenden</translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation>&amp;Einheit</translation>
    </message>
    <message>
        <source>&amp;Construction</source>
        <translation>Bau&amp;art</translation>
    </message>
    <message>
        <source>&amp;Width, outside</source>
        <translation>&amp;Breite, außen</translation>
    </message>
    <message>
        <source>&amp;Height, outside</source>
        <translation>&amp;Höhe, außen</translation>
    </message>
    <message>
        <source>&amp;Depth, inside</source>
        <translation>&amp;Tiefe, innen</translation>
    </message>
    <message>
        <source>&amp;Frame: stiles and rails</source>
        <translation>&amp;Rahmen: Längs- und Querfriese</translation>
    </message>
    <message>
        <source>M&amp;embers between</source>
        <translation>Rahmenteile &amp;dazwischen</translation>
    </message>
    <message>
        <source>&amp;Shelves between drawers</source>
        <translation>&amp;Zwischenböden</translation>
    </message>
    <message>
        <source>&amp;Banks side by side</source>
        <translation>Blendenreihen &amp;nebeneinander</translation>
    </message>
    <message>
        <source>D&amp;rawers in each</source>
        <translation>S&amp;chubkästen in jeder</translation>
    </message>
    <message>
        <source>Fr&amp;onts</source>
        <translation>B&amp;lenden</translation>
    </message>
    <message>
        <source>&amp;Make the case</source>
        <translation>&amp;Korpus anlegen</translation>
    </message>
    <message>
        <source>&amp;Panels: sides, bottom, top</source>
        <translation>&amp;Platten: Seiten, Unter- und Oberboden</translation>
    </message>
    <message>
        <source>Thickness of the outer panels</source>
        <translation>Dicke der äußeren Platten</translation>
    </message>
    <message>
        <source>Divid&amp;ers between banks</source>
        <translation>Mittel&amp;wände zwischen den Reihen</translation>
    </message>
    <message>
        <source>Thickness of the dividers</source>
        <translation>Dicke der Mittelwände</translation>
    </message>
    <message>
        <source>Openings: %1. The first is %2 wide and %3 high.</source>
        <translation>Öffnungen: %1. Die erste ist %2 breit und %3 hoch.</translation>
    </message>
</context>
<context>
    <name>frontwright::NumberAnswer</name>
    <message>
        <source>It follows from:</source>
        <translation>Sie folgt aus:</translation>
    </message>
    <message>
        <source>How the number came about</source>
        <translation>Wie die Zahl zustande kam</translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation>Gehe zu: %1</translation>
    </message>
    <message>
        <source>%1 = %2
%3

Rule: %4</source>
        <translation>%1 = %2
%3

Regel: %4</translation>
    </message>
</context>
<context>
    <name>frontwright::NumbersPanel</name>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>How the number came about</source>
        <translation>Wie die Zahl zustande kam</translation>
    </message>
    <message>
        <source>Search: a word of the number&apos;s name</source>
        <translation>Suchen: ein Wort aus dem Namen der Zahl</translation>
    </message>
    <message>
        <source>Search the numbers</source>
        <translation>Zahlen durchsuchen</translation>
    </message>
    <message>
        <source>Of other parts; Enter goes there:</source>
        <translation>Von anderen Teilen; die Eingabetaste führt dorthin:</translation>
    </message>
    <message>
        <source>No number has such a name.</source>
        <translation>Keine Zahl heißt so.</translation>
    </message>
</context>
<context>
    <name>frontwright::NumbersTree</name>
    <message>
        <source>Computed numbers</source>
        <translation>Berechnete Zahlen</translation>
    </message>
    <message>
        <source>Number</source>
        <translation>Zahl</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
</context>
<context>
    <name>frontwright::OwnEntriesDialog</name>
    <message>
        <source>Catalogue</source>
        <translation>Katalog</translation>
    </message>
    <message>
        <source>What could not be done</source>
        <translation>Was nicht ging</translation>
    </message>
    <message>
        <source>What you type or add becomes the case&apos;s own entry and is kept in its file; the program&apos;s stay as they are.</source>
        <translation>Was Sie eintippen oder hinzufügen, wird ein eigener Eintrag des Korpus und steht in seiner Datei; die des Programms bleiben, wie sie sind.</translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation>Arten von Einträgen</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Shank</source>
        <translation>Schaft</translation>
    </message>
    <message>
        <source>Head</source>
        <translation>Kopf</translation>
    </message>
    <message>
        <source>Head&apos;s height</source>
        <translation>Kopfhöhe</translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation>Durchgangsbohrung</translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>Root</source>
        <translation>Kern</translation>
    </message>
    <message>
        <source>Stocked lengths</source>
        <translation>Vorrätige Längen</translation>
    </message>
    <message>
        <source>Wood screws</source>
        <translation>Holzschrauben</translation>
    </message>
    <message>
        <source>&amp;Wood screws</source>
        <translation>Holz&amp;schrauben</translation>
    </message>
    <message>
        <source>Thread</source>
        <translation>Gewinde</translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation>Durchmesser</translation>
    </message>
    <message>
        <source>Bolts</source>
        <translation>Gewindeschrauben</translation>
    </message>
    <message>
        <source>&amp;Bolts</source>
        <translation>Gewin&amp;deschrauben</translation>
    </message>
    <message>
        <source>Holes, right of the centre</source>
        <translation>Löcher, rechts der Mitte</translation>
    </message>
    <message>
        <source>Holes, above it</source>
        <translation>Löcher, darüber</translation>
    </message>
    <message>
        <source>Base&apos;s width</source>
        <translation>Sockelbreite</translation>
    </message>
    <message>
        <source>Base&apos;s height</source>
        <translation>Sockelhöhe</translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation>Ausladung</translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation>Gewindeschraube</translation>
    </message>
    <message>
        <source>Thread&apos;s depth</source>
        <translation>Gewindetiefe</translation>
    </message>
    <message>
        <source>Least engagement</source>
        <translation>Kleinste Einschraubtiefe</translation>
    </message>
    <message>
        <source>Handles</source>
        <translation>Griffe</translation>
    </message>
    <message>
        <source>&amp;Handles</source>
        <translation>&amp;Griffe</translation>
    </message>
    <message>
        <source>Kind</source>
        <translation>Art</translation>
    </message>
    <message>
        <source>Bears on</source>
        <translation>Liegt auf</translation>
    </message>
    <message>
        <source>Plate&apos;s width</source>
        <translation>Breite der Platte</translation>
    </message>
    <message>
        <source>Plate&apos;s height</source>
        <translation>Höhe der Platte</translation>
    </message>
    <message>
        <source>Plate&apos;s thickness</source>
        <translation>Dicke der Platte</translation>
    </message>
    <message>
        <source>Screw</source>
        <translation>Schraube</translation>
    </message>
    <message>
        <source>Screws, from the centre</source>
        <translation>Schrauben, von der Mitte</translation>
    </message>
    <message>
        <source>Bores</source>
        <translation>Bohrungen</translation>
    </message>
    <message>
        <source>Mortises</source>
        <translation>Ausstemmungen</translation>
    </message>
    <message>
        <source>Below the top edge</source>
        <translation>Unter der Oberkante</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Beschläge</translation>
    </message>
    <message>
        <source>&amp;Fittings</source>
        <translation>B&amp;eschläge</translation>
    </message>
    <message>
        <source>Runners</source>
        <translation>Führungen</translation>
    </message>
    <message>
        <source>&amp;Runners</source>
        <translation>&amp;Führungen</translation>
    </message>
    <message>
        <source>Specific gravity</source>
        <translation>Dichtezahl</translation>
    </message>
    <message>
        <source>Of the volume</source>
        <translation>Volumen</translation>
    </message>
    <message>
        <source>Moves, flat-sawn</source>
        <translation>Arbeitet, Fladerschnitt</translation>
    </message>
    <message>
        <source>Moves, quarter-sawn</source>
        <translation>Arbeitet, Riftschnitt</translation>
    </message>
    <message>
        <source>Woods</source>
        <translation>Hölzer</translation>
    </message>
    <message>
        <source>W&amp;oods</source>
        <translation>Hö&amp;lzer</translation>
    </message>
</context>
<context>
    <name>frontwright::PageView</name>
    <message>
        <source>Page preview</source>
        <translation>Seitenvorschau</translation>
    </message>
</context>
<context>
    <name>frontwright::PartDrag</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
    <message>
        <source>Move left by</source>
        <translation>Nach links um</translation>
    </message>
    <message>
        <source>Move right by</source>
        <translation>Nach rechts um</translation>
    </message>
    <message>
        <source>Move down by</source>
        <translation>Nach unten um</translation>
    </message>
    <message>
        <source>Move up by</source>
        <translation>Nach oben um</translation>
    </message>
    <message>
        <source>Snapping is suspended while Alt is held.</source>
        <translation>Solange Alt gedrückt ist, rastet nichts ein.</translation>
    </message>
    <message>
        <source>Type a distance to move by exactly that. Alt suspends snapping, Shift moves those down the bank along. Esc puts it back.</source>
        <translation>Einen Abstand tippen, um genau so weit zu versetzen. Alt hebt das Einrasten auf, Umschalt nimmt die der Blendenreihe mit. Esc setzt es zurück.</translation>
    </message>
    <message>
        <source>Move mounting hole</source>
        <translation>Befestigungsbohrung versetzen</translation>
    </message>
    <message>
        <source>Move handle</source>
        <translation>Griff versetzen</translation>
    </message>
    <message>
        <source>Move mounting holes down the bank</source>
        <translation>Befestigungsbohrungen der Blendenreihe versetzen</translation>
    </message>
    <message>
        <source>Move handles down the bank</source>
        <translation>Griffe der Blendenreihe versetzen</translation>
    </message>
</context>
<context>
    <name>frontwright::PartWords</name>
    <message>
        <source>hole %1 of %2</source>
        <translation>Bohrung %1 von %2</translation>
    </message>
    <message>
        <source>handle %1 of %2</source>
        <translation>Griff %1 von %2</translation>
    </message>
    <message>
        <source>handle of %1</source>
        <translation>Griff von %1</translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation>%1 nach links</translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation>%1 nach rechts</translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation>%1 nach unten</translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation>%1 nach oben</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Wo es war</translation>
    </message>
    <message>
        <source>Moved %1</source>
        <translation>Versetzt: %1</translation>
    </message>
    <message>
        <source>Moved %1, %2</source>
        <translation>Versetzt: %1, %2</translation>
    </message>
    <message>
        <source>Across: %1</source>
        <translation>Quer: %1</translation>
    </message>
    <message>
        <source>Height: %1</source>
        <translation>Höhe: %1</translation>
    </message>
    <message>
        <source>as it was</source>
        <translation>wie es war</translation>
    </message>
    <message>
        <source>centre line of the front</source>
        <translation>Mittellinie der Blende</translation>
    </message>
    <message>
        <source>centre line of the box wall</source>
        <translation>Mittellinie des Vorderstücks</translation>
    </message>
    <message>
        <source>centre line of the field</source>
        <translation>Mittellinie des Spiegels</translation>
    </message>
    <message>
        <source>edge of where a screw may go</source>
        <translation>Rand des Bereichs für Schrauben</translation>
    </message>
    <message>
        <source>base at the field&apos;s edge</source>
        <translation>Sockel am Rand des Spiegels</translation>
    </message>
    <message>
        <source>in line with %1</source>
        <translation>in einer Flucht mit %1</translation>
    </message>
    <message>
        <source>level with %1</source>
        <translation>auf einer Höhe mit %1</translation>
    </message>
    <message>
        <source>same height as %1</source>
        <translation>gleiche Höhe wie %1</translation>
    </message>
    <message>
        <source>mirrors %1</source>
        <translation>spiegelt %1</translation>
    </message>
</context>
<context>
    <name>frontwright::PresetActions</name>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation>Kantenprofil</translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation>Befestigungsschrauben</translation>
    </message>
    <message>
        <source>Use a pre&amp;set…</source>
        <translation>&amp;Vorgabe verwenden…</translation>
    </message>
    <message>
        <source>Give the selected fronts, or the case, the values of a preset</source>
        <translation>Den ausgewählten Blenden oder dem Korpus die Werte einer Vorgabe geben</translation>
    </message>
    <message>
        <source>Kee&amp;p as preset…</source>
        <translation>Als Vorgabe s&amp;ichern…</translation>
    </message>
    <message>
        <source>Keep the handle, profile, box or screws of the selected front, or of the case, under a name</source>
        <translation>Griff, Profil, Schubkasten oder Schrauben der ausgewählten Blende oder des Korpus unter einem Namen sichern</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>kind: name of the preset</comment>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>Use a preset</source>
        <translation>Vorgabe verwenden</translation>
    </message>
    <message>
        <source>&amp;Preset</source>
        <translation>&amp;Vorgabe</translation>
    </message>
    <message>
        <source>Keep as preset</source>
        <translation>Als Vorgabe sichern</translation>
    </message>
    <message>
        <source>&amp;What to keep</source>
        <translation>&amp;Was sichern</translation>
    </message>
</context>
<context>
    <name>frontwright::PresetNameDialog</name>
    <message>
        <source>&amp;Name, such as Deep drawers</source>
        <translation>&amp;Name, etwa Hohe Schubkästen</translation>
    </message>
    <message>
        <source>Name of the preset</source>
        <translation>Name der Vorgabe</translation>
    </message>
</context>
<context>
    <name>frontwright::PresetRow</name>
    <message>
        <source>mixed</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>≠ “%1”</source>
        <translation>≠ „%1“</translation>
    </message>
    <message>
        <source>≠ its own</source>
        <translation>≠ eigene</translation>
    </message>
    <message>
        <source>Follows</source>
        <translation>Folgt</translation>
    </message>
    <message>
        <source>Preset</source>
        <translation>Vorgabe</translation>
    </message>
    <message>
        <source>Keep these values under a name, or change a preset</source>
        <translation>Diese Werte unter einem Namen sichern oder eine Vorgabe ändern</translation>
    </message>
    <message>
        <source>The case’s (%1)</source>
        <translation>Die des Korpus (%1)</translation>
    </message>
    <message>
        <source>The case’s</source>
        <translation>Die des Korpus</translation>
    </message>
    <message>
        <source>Its own</source>
        <translation>Eigene</translation>
    </message>
    <message>
        <source>&amp;Keep as preset…</source>
        <translation>Als Vorgabe &amp;sichern…</translation>
    </message>
    <message>
        <source>&amp;Change “%1” to this, for all that follow</source>
        <translation>„%1“ hierzu &amp;ändern, für alle, die folgen</translation>
    </message>
    <message>
        <source>Change a preset</source>
        <translation>Vorgabe ändern</translation>
    </message>
    <message>
        <source>Re&amp;name “%1”…</source>
        <translation>„%1“ &amp;umbenennen…</translation>
    </message>
    <message>
        <source>&amp;Remove “%1”; its users keep their values</source>
        <translation>„%1“ &amp;entfernen; wer folgt, behält die Werte</translation>
    </message>
    <message>
        <source>Remove a preset</source>
        <translation>Vorgabe entfernen</translation>
    </message>
    <message>
        <source>≠ Departs from “%1”</source>
        <translation>≠ Weicht von „%1“ ab</translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts depart from “%3”</source>
        <translation>≠ %1 von %2 Blenden weichen von „%3“ ab</translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts depart from their presets</source>
        <translation>≠ %1 von %2 Blenden weichen von ihren Vorgaben ab</translation>
    </message>
    <message>
        <source>Back to “%1”</source>
        <translation>Zurück zu „%1“</translation>
    </message>
    <message>
        <source>Back to their presets</source>
        <translation>Zurück zu ihren Vorgaben</translation>
    </message>
    <message>
        <source>≠ Its own, not the case’s</source>
        <translation>≠ Eigene, nicht die des Korpus</translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts have their own</source>
        <translation>≠ %1 von %2 Blenden haben eigene</translation>
    </message>
    <message>
        <source>Back to the case’s</source>
        <translation>Zurück zu denen des Korpus</translation>
    </message>
    <message>
        <source>Follow the case</source>
        <translation>Dem Korpus folgen</translation>
    </message>
    <message>
        <source>Follow a preset</source>
        <translation>Einer Vorgabe folgen</translation>
    </message>
    <message>
        <source>Make its own</source>
        <translation>Eigene Werte geben</translation>
    </message>
    <message>
        <source>Keep as preset</source>
        <translation>Als Vorgabe sichern</translation>
    </message>
    <message>
        <source>Rename the preset</source>
        <translation>Vorgabe umbenennen</translation>
    </message>
    <message>
        <source>Rename a preset</source>
        <translation>Vorgabe umbenennen</translation>
    </message>
    <message>
        <source>Back to the preset</source>
        <translation>Zurück zur Vorgabe</translation>
    </message>
</context>
<context>
    <name>frontwright::PrinterPanel</name>
    <message>
        <source>&amp;Test page and correction…</source>
        <translation>&amp;Testseite und Korrektur…</translation>
    </message>
    <message>
        <source>PDF file, not corrected</source>
        <translation>PDF-Datei, unkorrigiert</translation>
    </message>
    <message>
        <source>Printer</source>
        <translation>Drucker</translation>
    </message>
    <message>
        <source>State of this printer and paper</source>
        <translation>Stand dieses Druckers und Papiers</translation>
    </message>
    <message>
        <source>P&amp;rinter</source>
        <translation>Dr&amp;ucker</translation>
    </message>
    <message>
        <source>%1 upright</source>
        <translation>%1 hoch</translation>
    </message>
    <message>
        <source>%1 landscape</source>
        <translation>%1 quer</translation>
    </message>
    <message>
        <source>%1: never checked.</source>
        <translation>%1: nie geprüft.</translation>
    </message>
    <message>
        <source>needs no correction</source>
        <translation>braucht keine Korrektur</translation>
    </message>
    <message>
        <source>corrected × %1 across, × %2 up</source>
        <translation>korrigiert × %1 quer, × %2 hinauf</translation>
    </message>
    <message>
        <source>%1: %2; measured %3, not proved by a second print yet.</source>
        <translation>%1: %2; gemessen %3, noch nicht durch einen zweiten Druck bewiesen.</translation>
    </message>
    <message>
        <source>%1: %2; last checked %3.</source>
        <translation>%1: %2; zuletzt geprüft %3.</translation>
    </message>
    <message>
        <source>100 %, not corrected for any printer. Choose a printer for its test page and its correction.</source>
        <translation>100 %, für keinen Drucker korrigiert. Einen Drucker wählen für seine Testseite und seine Korrektur.</translation>
    </message>
    <message>
        <source>100 %, never fitted to the page.</source>
        <translation>100 %, nie an die Seite angepasst.</translation>
    </message>
</context>
<context>
    <name>frontwright::PropertyForm</name>
    <message>
        <source>Fitting</source>
        <translation>Beschlag</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>another one</source>
        <translation>ein weiterer</translation>
    </message>
    <message>
        <source>Follow the case</source>
        <translation>Dem Korpus folgen</translation>
    </message>
    <message>
        <source>Follow the case: %1</source>
        <translation>Dem Korpus folgen: %1</translation>
    </message>
    <message>
        <source>mixed</source>
        <translation>verschieden</translation>
    </message>
    <message>
        <source>Why this &amp;number?</source>
        <translation>&amp;Warum diese Zahl?</translation>
    </message>
    <message>
        <source>This front decides for itself here. Click to follow the case again.</source>
        <translation>Diese Blende entscheidet hier selbst. Klicken, um wieder dem Korpus zu folgen.</translation>
    </message>
</context>
<context>
    <name>frontwright::Recovery</name>
    <message>
        <source>Recovered %1</source>
        <translation>Wiederhergestellt: %1</translation>
    </message>
</context>
<context>
    <name>frontwright::RecoveryDialog</name>
    <message>
        <source>Unsaved work was kept</source>
        <translation>Nicht gespeicherte Arbeit ist noch da</translation>
    </message>
    <message>
        <source>Frontwright was ended before these cases were saved. Each case file is as it was saved last. Open a copy to go on with it under a name of its own: both versions are kept.</source>
        <translation>Frontwright wurde beendet, bevor diese Korpusse gespeichert waren. Jede Korpusdatei ist, wie sie zuletzt gespeichert wurde. Öffnen Sie eine Kopie, um unter eigenem Namen weiterzuarbeiten: Beide Fassungen bleiben erhalten.</translation>
    </message>
    <message>
        <source>Recovery copies</source>
        <translation>Sicherungskopien</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Last step kept</source>
        <translation>Letzter Schritt gesichert</translation>
    </message>
    <message>
        <source>Size</source>
        <translation>Größe</translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation>Ort der Datei</translation>
    </message>
    <message>
        <source>never saved</source>
        <translation>nie gespeichert</translation>
    </message>
    <message>
        <source>&amp;Open the copy</source>
        <translation>Kopie ö&amp;ffnen</translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation>&amp;Verwerfen</translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation>&amp;Später</translation>
    </message>
</context>
<context>
    <name>frontwright::RulesDialog</name>
    <message>
        <source>Rules and their sources</source>
        <translation>Regeln und ihre Quellen</translation>
    </message>
    <message>
        <source>A word of the rule, its use or its source</source>
        <translation>Ein Wort der Regel, ihres Zwecks oder ihrer Quelle</translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation>Regeln durchsuchen</translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation>&amp;Suchen</translation>
    </message>
    <message>
        <source>Rules</source>
        <translation>Regeln</translation>
    </message>
    <message>
        <source>Rule</source>
        <translation>Regel</translation>
    </message>
    <message>
        <source>Value</source>
        <translation>Wert</translation>
    </message>
    <message>
        <source>Used for</source>
        <translation>Gebraucht für</translation>
    </message>
    <message>
        <source>Source</source>
        <translation>Quelle</translation>
    </message>
    <message>
        <source>Kind of source</source>
        <translation>Art der Quelle</translation>
    </message>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation>
            <numerusform>%n Regel</numerusform>
            <numerusform>%n Regeln</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>frontwright::RunnerColumns</name>
    <message>
        <source>Clearances only</source>
        <translation>Nur Luft</translation>
    </message>
    <message>
        <source>Wooden</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Side-mounted</source>
        <translation>Seitlich</translation>
    </message>
    <message>
        <source>Under-mounted</source>
        <translation>Unterflur</translation>
    </message>
    <message>
        <source>Centre</source>
        <translation>Mitte</translation>
    </message>
    <message>
        <source>Name</source>
        <translation>Name</translation>
    </message>
    <message>
        <source>Form</source>
        <translation>Form</translation>
    </message>
    <message>
        <source>At each side</source>
        <translation>Je Seite</translation>
    </message>
    <message>
        <source>Below</source>
        <translation>Unten</translation>
    </message>
    <message>
        <source>Above</source>
        <translation>Oben</translation>
    </message>
    <message>
        <source>Rating</source>
        <translation>Tragkraft</translation>
    </message>
    <message>
        <source>Stocked lengths</source>
        <translation>Vorrätige Längen</translation>
    </message>
    <message>
        <source>Behind the box&apos;s face</source>
        <translation>Hinter der Vorderseite</translation>
    </message>
    <message>
        <source>Section</source>
        <translation>Querschnitt</translation>
    </message>
    <message>
        <source>Top above box&apos;s lower edge</source>
        <translation>Oberkante über Schubkasten unten</translation>
    </message>
    <message>
        <source>For sides of</source>
        <translation>Für Seiten von</translation>
    </message>
    <message>
        <source>Side tolerance</source>
        <translation>Seitliche Toleranz</translation>
    </message>
    <message>
        <source>Notch in the back</source>
        <translation>Ausklinkung hinten</translation>
    </message>
    <message>
        <source>Notch in the wall</source>
        <translation>Ausklinkung vorn</translation>
    </message>
    <message>
        <source>Clear zone</source>
        <translation>Freiraum</translation>
    </message>
    <message>
        <source>Kicker</source>
        <translation>Kippleiste</translation>
    </message>
    <message>
        <source>Guide&apos;s height</source>
        <translation>Höhe der Streichleiste</translation>
    </message>
</context>
<context>
    <name>frontwright::SampleCard</name>
    <message>
        <source>Sample: %1</source>
        <translation>Beispiel: %1</translation>
    </message>
    <message>
        <source>Open a copy of this sample</source>
        <translation>Eine Kopie dieses Beispiels öffnen</translation>
    </message>
</context>
<context>
    <name>frontwright::SectionPanel</name>
    <message>
        <source>&amp;Upright</source>
        <translation>&amp;Senkrecht</translation>
    </message>
    <message>
        <source>Cut from top to bottom, seen from the left</source>
        <translation>Von oben bis unten geschnitten, von links gesehen</translation>
    </message>
    <message>
        <source>Leve&amp;l</source>
        <translation>&amp;Waagrecht</translation>
    </message>
    <message>
        <source>Cut across the width at the height of the selected hole, seen from above</source>
        <translation>In der Höhe der ausgewählten Bohrung quer durch die Breite geschnitten, von oben gesehen</translation>
    </message>
</context>
<context>
    <name>frontwright::SectionView</name>
    <message>
        <source>Upright section through the selected front</source>
        <translation>Senkrechter Schnitt durch die ausgewählte Blende</translation>
    </message>
    <message>
        <source>Level section through the selected front</source>
        <translation>Waagrechter Schnitt durch die ausgewählte Blende</translation>
    </message>
    <message>
        <source>Select a front to see how it is held: wall, front, screw and bolt.</source>
        <translation>Eine Blende auswählen, um zu sehen, wie sie befestigt ist: Vorderstück, Blende, Schraube und Gewindeschraube.</translation>
    </message>
</context>
<context>
    <name>frontwright::SelectionPanel</name>
    <message>
        <source>Width</source>
        <translation>Breite</translation>
    </message>
    <message>
        <source>Member</source>
        <translation>Rahmenteil</translation>
    </message>
    <message>
        <source>Set member width</source>
        <translation>Breite des Rahmenteils festlegen</translation>
    </message>
    <message>
        <source>Properties of what is selected</source>
        <translation>Eigenschaften des Ausgewählten</translation>
    </message>
    <message>
        <source>Opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>Pull-out board</source>
        <translation>Ausziehplatte</translation>
    </message>
    <message>
        <source>Case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>Round the case</source>
        <translation>Um den Korpus</translation>
    </message>
    <message>
        <source>System holes</source>
        <translation>Systembohrungen</translation>
    </message>
    <message>
        <source>Fit of the front</source>
        <translation>Sitz der Blende</translation>
    </message>
    <message>
        <source>Stock</source>
        <translation>Material</translation>
    </message>
    <message>
        <source>Wood</source>
        <translation>Holz</translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation>Kantenprofil</translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation>Befestigungsschrauben</translation>
    </message>
    <message>
        <source>Handle</source>
        <translation>Griff</translation>
    </message>
    <message>
        <source>Fittings</source>
        <translation>Beschläge</translation>
    </message>
    <message>
        <source>Document</source>
        <translation>Dokument</translation>
    </message>
    <message>
        <source>Limits</source>
        <translation>Grenzwerte</translation>
    </message>
    <message>
        <source>%1. What is changed here holds for it only.</source>
        <translation>%1. Was hier geändert wird, gilt nur dafür.</translation>
    </message>
    <message>
        <source>%1 openings. What is changed here holds for each of them.</source>
        <translation>%1 Öffnungen. Was hier geändert wird, gilt für jede von ihnen.</translation>
    </message>
    <message>
        <source>%1. Drag it, or nudge it with the arrow keys.</source>
        <translation>%1. Ziehen oder mit den Pfeiltasten verschieben.</translation>
    </message>
    <message>
        <source>The whole case. Click a front to change only that one.</source>
        <translation>Der ganze Korpus. Eine Blende anklicken, um nur diese zu ändern.</translation>
    </message>
</context>
<context>
    <name>frontwright::SheetChoice</name>
    <message>
        <source>Only the selected &amp;fronts (%1)</source>
        <translation>&amp;Nur die ausgewählten Blenden (%1)</translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation>Blätter</translation>
    </message>
    <message>
        <source>Tick what is to be printed; a tile alone can be printed again.</source>
        <translation>Ankreuzen, was gedruckt werden soll; auch eine einzelne Kachel lässt sich noch einmal drucken.</translation>
    </message>
    <message>
        <source>Fronts that were selected in the drawing, with their box walls</source>
        <translation>Blenden, die in der Zeichnung ausgewählt sind, mit ihren Vorderstücken</translation>
    </message>
    <message>
        <source>Fronts</source>
        <translation>Blenden</translation>
    </message>
    <message>
        <source>Box walls</source>
        <translation>Vorderstücke</translation>
    </message>
    <message>
        <source>Story sticks</source>
        <translation>Maßlatten</translation>
    </message>
    <message>
        <source>Keepers</source>
        <translation>Halteleisten</translation>
    </message>
    <message>
        <source>Tile %1, page %2</source>
        <translation>Kachel %1, Seite %2</translation>
    </message>
</context>
<context>
    <name>frontwright::SheetSetup</name>
    <message>
        <source>Width of the roll</source>
        <translation>Breite der Rolle</translation>
    </message>
    <message>
        <source>Width of the sheet</source>
        <translation>Breite des Blatts</translation>
    </message>
    <message>
        <source>Height of the sheet</source>
        <translation>Höhe des Blatts</translation>
    </message>
    <message>
        <source>Overlap of tiles</source>
        <translation>Überlappung der Kacheln</translation>
    </message>
    <message>
        <source>Margin of the sheets</source>
        <translation>Rand der Blätter</translation>
    </message>
    <message>
        <source>Roll…</source>
        <translation>Rolle…</translation>
    </message>
    <message>
        <source>Another size…</source>
        <translation>Andere Größe…</translation>
    </message>
    <message>
        <source>Paper</source>
        <translation>Papier</translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation>Papi&amp;er</translation>
    </message>
    <message>
        <source>Roll &amp;width</source>
        <translation>R&amp;ollenbreite</translation>
    </message>
    <message>
        <source>Sheet w&amp;idth</source>
        <translation>&amp;Blattbreite</translation>
    </message>
    <message>
        <source>Sheet &amp;height</source>
        <translation>Blatt&amp;höhe</translation>
    </message>
    <message>
        <source>Fewest pages</source>
        <translation>Wenigste Seiten</translation>
    </message>
    <message>
        <source>All upright</source>
        <translation>Alle hoch</translation>
    </message>
    <message>
        <source>All landscape</source>
        <translation>Alle quer</translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation>Ausrichtung</translation>
    </message>
    <message>
        <source>&amp;Orientation</source>
        <translation>&amp;Ausrichtung</translation>
    </message>
    <message>
        <source>O&amp;verlap</source>
        <translation>Über&amp;lappung</translation>
    </message>
    <message>
        <source>&amp;Margin</source>
        <translation>&amp;Rand der Blätter</translation>
    </message>
</context>
<context>
    <name>frontwright::SplitCount</name>
    <message>
        <source>Split into %1</source>
        <translation>In %1 teilen</translation>
    </message>
</context>
<context>
    <name>frontwright::StartNotes</name>
    <message>
        <source>Throw the copy away</source>
        <translation>Kopie verwerfen</translation>
    </message>
    <message>
        <source>The unsaved work on %1 can&apos;t be brought back after that.</source>
        <translation>Die nicht gespeicherte Arbeit an %1 lässt sich danach nicht zurückholen.</translation>
    </message>
    <message>
        <source>The copy can&apos;t be opened</source>
        <translation>Die Kopie lässt sich nicht öffnen</translation>
    </message>
    <message>
        <source>Settings could not be read</source>
        <translation>Einstellungen nicht lesbar</translation>
    </message>
    <message>
        <source>Frontwright starts with its defaults. Your cases are not touched. The old settings are kept in %1.</source>
        <translation>Frontwright beginnt mit den Voreinstellungen. Ihre Korpusse sind nicht betroffen. Die alten Einstellungen liegen in %1.</translation>
    </message>
    <message>
        <source>Frontwright ended by mistake</source>
        <translation>Frontwright wurde durch einen Fehler beendet</translation>
    </message>
    <message>
        <source>Your case files are as they were saved last; unsaved work is offered from its recovery copy. What happened is written in %1. Nothing was sent anywhere.</source>
        <translation>Ihre Korpusdateien sind, wie sie zuletzt gespeichert wurden; nicht gespeicherte Arbeit wird aus der Sicherungskopie angeboten. Was geschah, steht in %1. Nichts wurde irgendwohin gesendet.</translation>
    </message>
</context>
<context>
    <name>frontwright::StartPage</name>
    <message>
        <source>Start page</source>
        <translation>Startseite</translation>
    </message>
    <message>
        <source>Drawer fronts that fit</source>
        <translation>Schubkastenblenden, die passen</translation>
    </message>
    <message>
        <source>Every front, hole, screw and bolt in its place before the drill goes in.</source>
        <translation>Jede Blende, Bohrung, Schraube und Gewindeschraube an ihrem Platz, bevor gebohrt wird.</translation>
    </message>
    <message>
        <source>Look at a sample</source>
        <translation>Ein Beispiel ansehen</translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation>Die ersten Schritte</translation>
    </message>
    <message>
        <source>1. Make a new case from its outer size, its frame and its rows.</source>
        <translation>1. Einen neuen Korpus aus Außenmaß, Rahmen und Zeilen anlegen.</translation>
    </message>
    <message>
        <source>2. Drag the rails, or click a dimension and type it.</source>
        <translation>2. Die Querfriese ziehen oder ein Maß anklicken und eintippen.</translation>
    </message>
    <message>
        <source>3. Click a front and choose its profile, box, screws and handle.</source>
        <translation>3. Eine Blende anklicken und Profil, Schubkasten, Schrauben und Griff wählen.</translation>
    </message>
    <message>
        <source>4. Heed the findings, then print the templates at full size.</source>
        <translation>4. Die Befunde beachten, dann die Bohrschablonen in wahrer Größe drucken.</translation>
    </message>
    <message>
        <source>&amp;New case…</source>
        <translation>&amp;Neuer Korpus…</translation>
    </message>
    <message>
        <source>Start a case from a few numbers</source>
        <translation>Einen Korpus aus wenigen Zahlen beginnen</translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation>Ö&amp;ffnen…</translation>
    </message>
    <message>
        <source>Open a case file</source>
        <translation>Eine Korpusdatei öffnen</translation>
    </message>
    <message>
        <source>The case that is open stays as you left it</source>
        <translation>Der offene Korpus bleibt, wie er ist</translation>
    </message>
    <message>
        <source>Recent cases</source>
        <translation>Zuletzt geöffnete Korpusse</translation>
    </message>
    <message>
        <source>&amp;Back to %1</source>
        <translation>&amp;Zurück zu %1</translation>
    </message>
    <message>
        <source>None yet. Cases that you save or open stand here.</source>
        <translation>Noch keine. Hier stehen Korpusse, die Sie speichern oder öffnen.</translation>
    </message>
</context>
<context>
    <name>frontwright::TellTales</name>
    <message>
        <source>A4 pages on a printer set to Letter</source>
        <translation>A4-Seiten auf einem Drucker, der auf Letter steht</translation>
    </message>
    <message>
        <source>A4 page fitted to Letter</source>
        <translation>A4-Seite an Letter angepasst</translation>
    </message>
    <message>
        <source>page shrunk to the printable area</source>
        <translation>Seite auf den bedruckbaren Bereich verkleinert</translation>
    </message>
    <message>
        <source>Letter page fitted to the width of A4</source>
        <translation>Letter-Seite an die Breite von A4 angepasst</translation>
    </message>
    <message>
        <source>page enlarged to the other paper</source>
        <translation>Seite auf das andere Papier vergrößert</translation>
    </message>
    <message>
        <source>dots taken for the wrong size, 72 or 96 to the inch</source>
        <translation>Punkte in falscher Größe genommen, 72 oder 96 je Zoll</translation>
    </message>
    <message>
        <source>millimetres, centimetres or metres taken for one another</source>
        <translation>Millimeter, Zentimeter oder Meter verwechselt</translation>
    </message>
    <message>
        <source>inches and millimetres taken for one another</source>
        <translation>Zoll und Millimeter verwechselt</translation>
    </message>
    <message>
        <source>the two directions differ by more than 2 %: paper slipped</source>
        <translation>die beiden Richtungen weichen um mehr als 2 % ab: Papier gerutscht</translation>
    </message>
    <message>
        <source>Set the printer and this window to the paper that lies in the tray.</source>
        <translation>Drucker und dieses Fenster auf das Papier einstellen, das im Fach liegt.</translation>
    </message>
    <message>
        <source>Print at 100 % or “Actual size”, never “Fit”.</source>
        <translation>Mit 100 % oder „Tatsächliche Größe“ drucken, nie „Anpassen“.</translation>
    </message>
    <message>
        <source>Print from here or from another viewer, at “Actual size”.</source>
        <translation>Von hier oder aus einem anderen Betrachter mit „Tatsächliche Größe“ drucken.</translation>
    </message>
    <message>
        <source>Write the unit with the length: 180 mm, 7 1/16 in.</source>
        <translation>Die Einheit zum Maß schreiben: 180 mm, 7 1/16 in.</translation>
    </message>
    <message>
        <source>Print that page again, and measure both bars again.</source>
        <translation>Diese Seite noch einmal drucken und beide Maßstäbe noch einmal messen.</translation>
    </message>
    <message>
        <source>any</source>
        <translation>beliebig</translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation>%1 mm</translation>
    </message>
    <message>
        <source> or </source>
        <translation> oder </translation>
    </message>
    <message>
        <source>&lt;tr&gt;&lt;th align=&apos;left&apos;&gt;100 mm comes out at&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;what happened&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;what to do&lt;/th&gt;&lt;/tr&gt;</source>
        <translation>&lt;tr&gt;&lt;th align=&apos;left&apos;&gt;100 mm werden zu&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;was geschah&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;was zu tun ist&lt;/th&gt;&lt;/tr&gt;</translation>
    </message>
</context>
<context>
    <name>frontwright::TemplateDialog</name>
    <message>
        <source>Previous page</source>
        <translation>Vorige Seite</translation>
    </message>
    <message>
        <source>Next page</source>
        <translation>Nächste Seite</translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation>Als &amp;PDF speichern…</translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation>&amp;Drucken…</translation>
    </message>
    <message>
        <source>Templates at full size</source>
        <translation>Bohrschablonen in wahrer Größe</translation>
    </message>
    <message>
        <source>Til&amp;es of this template</source>
        <translation>&amp;Kacheln dieser Schablone</translation>
    </message>
    <message>
        <source>Page</source>
        <translation>Seite</translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation>&amp;Seite</translation>
    </message>
    <message>
        <source>Number of pages</source>
        <translation>Anzahl der Seiten</translation>
    </message>
    <message>
        <source>Problem</source>
        <translation>Hindernis</translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation>S&amp;chließen</translation>
    </message>
    <message>
        <source>Print at “Actual size”, never “Fit”. Measure the check bars in both directions before drilling.</source>
        <translation>Mit „Tatsächliche Größe“ drucken, nie „Anpassen“. Vor dem Bohren die Prüfmaßstäbe in beiden Richtungen nachmessen.</translation>
    </message>
    <message>
        <source> of %1</source>
        <translation> von %1</translation>
    </message>
    <message>
        <source>Nothing is ticked.</source>
        <translation>Nichts ist angekreuzt.</translation>
    </message>
    <message>
        <source>one page</source>
        <translation>eine Seite</translation>
    </message>
    <message>
        <source>No page.</source>
        <translation>Keine Seite.</translation>
    </message>
    <message>
        <source>Pages: %1.</source>
        <translation>Seiten: %1.</translation>
    </message>
    <message>
        <source>Pages: %1 of %2.</source>
        <translation>Seiten: %1 von %2.</translation>
    </message>
    <message>
        <source>fewest %1</source>
        <translation>wenigste %1</translation>
    </message>
    <message>
        <source>upright %1</source>
        <translation>hoch %1</translation>
    </message>
    <message>
        <source>landscape %1</source>
        <translation>quer %1</translation>
    </message>
    <message>
        <source>%1 On %2: %3.</source>
        <translation>%1 Auf %2: %3.</translation>
    </message>
    <message>
        <source>These pages are corrected for %1. On another printer they would come out wrong.</source>
        <translation>Diese Seiten sind für %1 korrigiert. Auf einem anderen Drucker kämen sie falsch heraus.</translation>
    </message>
    <message>
        <source>Save &amp;without correction</source>
        <translation>&amp;Ohne Korrektur speichern</translation>
    </message>
    <message>
        <source>Save &amp;for this printer</source>
        <translation>&amp;Für diesen Drucker speichern</translation>
    </message>
    <message>
        <source>Save the templates</source>
        <translation>Bohrschablonen speichern</translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation>PDF-Dateien (*.pdf)</translation>
    </message>
    <message>
        <source>-templates.pdf</source>
        <translation>-bohrschablonen.pdf</translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation>Gespeichert: %1</translation>
    </message>
    <message>
        <source>Sent to the printer. Measure the check bars before drilling.</source>
        <translation>An den Drucker gesendet. Vor dem Bohren die Prüfmaßstäbe nachmessen.</translation>
    </message>
    <message>
        <source>Nothing was printed: this printer leaves %1 blank at the edge, and marks would be lost. Set the margin to %1 or more.</source>
        <translation>Es wurde nichts gedruckt: Dieser Drucker lässt am Rand %1 frei, und Striche gingen verloren. Den Rand auf %1 oder mehr stellen.</translation>
    </message>
    <message>
        <source>Nothing was printed yet: %1 needs another correction, and the pages were laid anew for it. Look at them, then print.</source>
        <translation>Noch wurde nichts gedruckt: %1 braucht eine andere Korrektur, und die Seiten wurden dafür neu angelegt. Sehen Sie sie an, dann drucken Sie.</translation>
    </message>
    <message>
        <source>a file</source>
        <translation>eine Datei</translation>
    </message>
    <message>
        <source>Nothing was printed yet: the printer is set to %1, so that the pages would have been scaled or cut. They were laid anew for that paper. Look at them, then print.</source>
        <translation>Noch wurde nichts gedruckt: Der Drucker steht auf %1, die Seiten wären skaliert oder beschnitten worden. Sie wurden für dieses Papier neu angelegt. Sehen Sie sie an, dann drucken Sie.</translation>
    </message>
    <message>
        <source>PDF file</source>
        <translation>PDF-Datei</translation>
    </message>
    <message>
        <source>Test page</source>
        <translation>Testseite</translation>
    </message>
    <message>
        <source>Nothing was printed: this test page is for %1. Choose the printer in the templates&apos; window first.</source>
        <translation>Es wurde nichts gedruckt: Diese Testseite ist für %1. Wählen Sie den Drucker zuerst im Fenster der Bohrschablonen.</translation>
    </message>
    <message>
        <source>Nothing was printed: the printer is set to another paper than %1. Choose the same paper in both places.</source>
        <translation>Es wurde nichts gedruckt: Der Drucker steht auf einem anderen Papier als %1. Wählen Sie an beiden Stellen dasselbe Papier.</translation>
    </message>
</context>
<context>
    <name>frontwright::TileMapView</name>
    <message>
        <source>Tile map</source>
        <translation>Kachelplan</translation>
    </message>
    <message>
        <source>The tiles of this template; click one to see its page</source>
        <translation>Die Kacheln dieser Schablone; eine anklicken, um ihre Seite zu sehen</translation>
    </message>
    <message>
        <source>%1: tile %2 of %3</source>
        <translation>%1: Kachel %2 von %3</translation>
    </message>
</context>
<context>
    <name>frontwright::ValueEntry</name>
    <message>
        <source>Typed size</source>
        <translation>Eingetipptes Maß</translation>
    </message>
    <message>
        <source>It does not go that far: %1. Enter again leaves it where it is, Esc puts it back.</source>
        <translation>So weit geht es nicht: %1. Noch einmal Eingabe lässt es, wo es ist, Esc setzt es zurück.</translation>
    </message>
</context>
<context>
    <name>frontwright::ViewActions</name>
    <message>
        <source>Blueprint (dar&amp;k)</source>
        <translation>B&amp;laupause (dunkel)</translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation>Ver&amp;größern</translation>
    </message>
    <message>
        <source>See it larger</source>
        <translation>Größer sehen</translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation>Ver&amp;kleinern</translation>
    </message>
    <message>
        <source>See more of it</source>
        <translation>Mehr davon sehen</translation>
    </message>
    <message>
        <source>&amp;Fit the case</source>
        <translation>Korpus &amp;einpassen</translation>
    </message>
    <message>
        <source>Show the whole case</source>
        <translation>Den ganzen Korpus zeigen</translation>
    </message>
    <message>
        <source>&amp;Dimensions</source>
        <translation>&amp;Maße</translation>
    </message>
    <message>
        <source>Show the sizes round the case</source>
        <translation>Die Maße um den Korpus zeigen</translation>
    </message>
    <message>
        <source>&amp;Holes</source>
        <translation>&amp;Bohrungen</translation>
    </message>
    <message>
        <source>Show the holes for screws and handles</source>
        <translation>Die Bohrungen für Schrauben und Griffe zeigen</translation>
    </message>
    <message>
        <source>Fi&amp;elds</source>
        <translation>&amp;Spiegel der Blenden</translation>
    </message>
    <message>
        <source>Outline the flat, full-thickness part of each front</source>
        <translation>Den ebenen, voll dicken Teil jeder Blende umranden</translation>
    </message>
    <message>
        <source>&amp;Boxes behind the fronts</source>
        <translation>Schubkästen &amp;hinter den Blenden</translation>
    </message>
    <message>
        <source>Show each drawer box&apos;s outline</source>
        <translation>Den Umriss jedes Schubkastens zeigen</translation>
    </message>
    <message>
        <source>Botto&amp;ms</source>
        <translation>Schubkastenböde&amp;n</translation>
    </message>
    <message>
        <source>Show the bottom panel of each drawer box</source>
        <translation>Den Boden jedes Schubkastens zeigen</translation>
    </message>
    <message>
        <source>Where a mounting screw ma&amp;y go</source>
        <translation>&amp;Wo Befestigungsschrauben sitzen dürfen</translation>
    </message>
    <message>
        <source>Show the region of the box wall that is free</source>
        <translation>Den freien Bereich des Vorderstücks zeigen</translation>
    </message>
    <message>
        <source>&amp;Signs of findings</source>
        <translation>Zei&amp;chen der Befunde</translation>
    </message>
    <message>
        <source>Show a sign where something is to be heeded</source>
        <translation>Ein Zeichen zeigen, wo etwas zu beachten ist</translation>
    </message>
    <message>
        <source>Sys&amp;tem holes</source>
        <translation>S&amp;ystembohrungen</translation>
    </message>
    <message>
        <source>Show the rows of holes in a frameless case&apos;s panels</source>
        <translation>Die Lochreihen in den Platten eines Korpus ohne Rahmen zeigen</translation>
    </message>
    <message>
        <source>&amp;Inches</source>
        <translation>&amp;Zoll</translation>
    </message>
    <message>
        <source>Show sizes in inches; a bare number means inches</source>
        <translation>Maße in Zoll zeigen; eine bloße Zahl bedeutet Zoll</translation>
    </message>
    <message>
        <source>&amp;Millimetres</source>
        <translation>&amp;Millimeter</translation>
    </message>
    <message>
        <source>Show sizes in millimetres; a bare number means millimetres</source>
        <translation>Maße in Millimetern zeigen; eine bloße Zahl bedeutet Millimeter</translation>
    </message>
    <message>
        <source>Nearest 1/&amp;8 in</source>
        <translation>Auf 1/&amp;8 in</translation>
    </message>
    <message>
        <source>Nearest 1/&amp;16 in</source>
        <translation>Auf 1/&amp;16 in</translation>
    </message>
    <message>
        <source>Nearest 1/&amp;32 in</source>
        <translation>Auf 1/&amp;32 in</translation>
    </message>
    <message>
        <source>Nearest 1/&amp;64 in</source>
        <translation>Auf 1/&amp;64 in</translation>
    </message>
    <message>
        <source>Show sizes to the nearest 1/%1 in</source>
        <translation>Maße auf 1/%1 in genau zeigen</translation>
    </message>
    <message>
        <source>Light is ink on paper, dark is a blueprint</source>
        <translation>Hell ist Tinte auf Papier, dunkel eine Blaupause</translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation>Einhei&amp;ten</translation>
    </message>
</context>
<context>
    <name>frontwright::WaysPanel</name>
    <message>
        <source>Order of work: %1</source>
        <translation>Arbeitsfolge: %1</translation>
    </message>
    <message>
        <source>✓ fits</source>
        <translation>✓ passt</translation>
    </message>
    <message>
        <source>✗ too short by %1</source>
        <translation>✗ zu kurz um %1</translation>
    </message>
    <message>
        <source>✗ bottoms out by %1</source>
        <translation>✗ sitzt auf Grund auf, um %1 zu lang</translation>
    </message>
    <message>
        <source>✗ counterbore too deep</source>
        <translation>✗ Senkung zu tief</translation>
    </message>
    <message>
        <source>✗ none stocked fits</source>
        <translation>✗ keine vorrätige passt</translation>
    </message>
    <message>
        <source>Three ways to hold the handle</source>
        <translation>Drei Arten, den Griff zu befestigen</translation>
    </message>
    <message>
        <source>Counterbore</source>
        <translation>Senkung</translation>
    </message>
    <message>
        <source>Grip</source>
        <translation>Klemmdicke</translation>
    </message>
    <message>
        <source>Least bolt</source>
        <translation>Kürzeste Gewindeschraube</translation>
    </message>
    <message>
        <source>Greatest bolt</source>
        <translation>Längste Gewindeschraube</translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation>Gewindeschraube</translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation>Urteil</translation>
    </message>
    <message>
        <source>This front carries no handle.</source>
        <translation>Diese Blende trägt keinen Griff.</translation>
    </message>
    <message>
        <source>Select a front to compare the ways to hold its handle.</source>
        <translation>Eine Blende auswählen, um die Befestigungsarten ihres Griffs zu vergleichen.</translation>
    </message>
    <message>
        <source>● %1</source>
        <translation>● %1</translation>
    </message>
    <message>
        <source>none</source>
        <translation>keine</translation>
    </message>
    <message>
        <source>There is no box wall behind a fixed front: the bolt goes through the front alone, and goes in before the front is screwed on.</source>
        <translation>Hinter einer festen Blende ist kein Vorderstück: Die Schraube des Griffs geht durch die Blende allein und kommt hinein, bevor die Blende angeschraubt wird.</translation>
    </message>
    <message>
        <source>
Double-click a column, or press Enter in it, to choose that way.</source>
        <translation>
Ein Doppelklick auf eine Spalte oder die Eingabetaste darin wählt diese Art.</translation>
    </message>
    <message>
        <source>Choose how the handle is held</source>
        <translation>Befestigungsart des Griffs wählen</translation>
    </message>
</context>
<context>
    <name>frontwright::WoodPanel</name>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation>%1, %2: %3</translation>
    </message>
    <message>
        <source>Today</source>
        <translation>Heute</translation>
    </message>
    <message>
        <source>Wood and air</source>
        <translation>Holz und Luft</translation>
    </message>
    <message>
        <source>As cut</source>
        <translation>Wie zugeschnitten</translation>
    </message>
    <message>
        <source>At its driest (heating season)</source>
        <translation>Am trockensten (Heizzeit)</translation>
    </message>
    <message>
        <source>At its wettest (summer)</source>
        <translation>Am feuchtesten (Sommer)</translation>
    </message>
    <message>
        <source>Time of the year that the picture shows</source>
        <translation>Jahreszeit, die das Bild zeigt</translation>
    </message>
    <message>
        <source>change × </source>
        <translation>Änderung × </translation>
    </message>
    <message>
        <source>How many times larger than true the change is drawn</source>
        <translation>Wievielfach die Änderung gezeichnet ist</translation>
    </message>
    <message>
        <source>The change is drawn so many times larger than it is; 1 is true</source>
        <translation>Die Änderung ist so vielfach gezeichnet; 1 ist wahr</translation>
    </message>
    <message>
        <source>The case at that time of the year</source>
        <translation>Der Korpus zu dieser Jahreszeit</translation>
    </message>
    <message>
        <source>The change is drawn larger than it is: take no sizes from this picture.</source>
        <translation>Die Änderung ist größer gezeichnet, als sie ist: Aus diesem Bild keine Maße abnehmen.</translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation>&amp;Heute</translation>
    </message>
    <message>
        <source>The smallest gap over the air&apos;s humidity</source>
        <translation>Die kleinste Fuge über der Luftfeuchte</translation>
    </message>
    <message>
        <source>There is no gap between fronts to follow, or today&apos;s air is outside what can be told.</source>
        <translation>Es gibt keine Fuge zwischen Blenden zu verfolgen, oder die heutige Luft liegt außerhalb dessen, was sich sagen lässt.</translation>
    </message>
    <message>
        <source>Wood of all fronts that do not decide otherwise</source>
        <translation>Holz aller Blenden, die nicht anders entscheiden</translation>
    </message>
    <message>
        <source>Wood of the selected front</source>
        <translation>Holz der ausgewählten Blende</translation>
    </message>
    <message>
        <source>Wood of %1 selected fronts</source>
        <translation>Holz von %1 ausgewählten Blenden</translation>
    </message>
    <message>
        <source>Select a front to read what follows for it.</source>
        <translation>Eine Blende auswählen, um zu lesen, was für sie folgt.</translation>
    </message>
    <message>
        <source>Front %1:</source>
        <translation>Blende %1:</translation>
    </message>
</context>
</TS>
