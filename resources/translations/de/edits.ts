<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>divisions lie at most %1 deep</source>
        <translation>Teilungen liegen höchstens %1 tief ineinander</translation>
    </message>
    <message>
        <source>a case holds at most %1 openings</source>
        <translation>ein Korpus hat höchstens %1 Öffnungen</translation>
    </message>
    <message>
        <source>the opening does not stand in a bank</source>
        <translation>die Öffnung steht in keiner Blendenreihe</translation>
    </message>
    <message>
        <source>choose one between rails</source>
        <translation>eine zwischen Querfriesen wählen</translation>
    </message>
    <message>
        <source>both openings stand in the same bank</source>
        <translation>beide Öffnungen stehen in derselben Blendenreihe</translation>
    </message>
    <message>
        <source>choose an opening of another</source>
        <translation>eine Öffnung einer anderen wählen</translation>
    </message>
    <message>
        <source>the spacing of a keeper strip&apos;s screws</source>
        <translation>der Abstand der Schrauben einer Halteleiste</translation>
    </message>
    <message>
        <source>a keeper strip&apos;s measure</source>
        <translation>ein Maß einer Halteleiste</translation>
    </message>
    <message>
        <source>a fastener to reach is on the left or on the right</source>
        <translation>ein Verbindungsmittel, das erreichbar bleibt, sitzt links oder rechts</translation>
    </message>
    <message>
        <source>a fastener&apos;s place</source>
        <translation>die Lage eines Verbindungsmittels</translation>
    </message>
    <message>
        <source>the thickness of a board</source>
        <translation>die Dicke einer Platte</translation>
    </message>
    <message>
        <source>the depth of a board</source>
        <translation>die Tiefe einer Platte</translation>
    </message>
    <message>
        <source>a board&apos;s measure</source>
        <translation>ein Maß einer Platte</translation>
    </message>
    <message>
        <source>a load at a board&apos;s edge cannot be less than nothing</source>
        <translation>eine Last an der Vorderkante einer Platte kann nicht kleiner als null sein</translation>
    </message>
    <message>
        <source>the opening is not for a board</source>
        <translation>die Öffnung ist nicht für eine Platte</translation>
    </message>
    <message>
        <source>make it one for a board</source>
        <translation>sie für eine Platte bestimmen</translation>
    </message>
    <message>
        <source>the thickness of a front</source>
        <translation>die Dicke einer Blende</translation>
    </message>
    <message>
        <source>the species</source>
        <translation>die Holzart</translation>
    </message>
    <message>
        <source>inches are shown in 8ths, 16ths, 32nds or 64ths</source>
        <translation>Zoll werden in 8teln, 16teln, 32steln oder 64steln gezeigt</translation>
    </message>
    <message>
        <source>the title</source>
        <translation>der Titel</translation>
    </message>
    <message>
        <source>the note</source>
        <translation>die Bemerkung</translation>
    </message>
    <message>
        <source>the name</source>
        <translation>der Name</translation>
    </message>
    <message>
        <source>the width of a frame member</source>
        <translation>die Breite eines Rahmenteils</translation>
    </message>
    <message>
        <source>the thickness of the frame</source>
        <translation>die Dicke des Rahmens</translation>
    </message>
    <message>
        <source>the depth of the case</source>
        <translation>die Tiefe des Korpus</translation>
    </message>
    <message>
        <source>the grid</source>
        <translation>das Raster</translation>
    </message>
    <message>
        <source>the width of a member</source>
        <translation>die Breite eines Rahmenteils</translation>
    </message>
    <message>
        <source>%1 must be more than 0</source>
        <translation>%1 muss größer als 0 sein</translation>
    </message>
    <message>
        <source>%1 cannot be negative</source>
        <translation>%1 kann nicht negativ sein</translation>
    </message>
    <message>
        <source>an overlay</source>
        <translation>ein Aufschlag</translation>
    </message>
    <message>
        <source>a gap</source>
        <translation>eine Fuge</translation>
    </message>
    <message>
        <source>the gap of an inset front</source>
        <translation>die Fuge einer einliegenden Blende</translation>
    </message>
    <message>
        <source>the width of the profile</source>
        <translation>die Breite des Profils</translation>
    </message>
    <message>
        <source>the depth of the profile</source>
        <translation>die Tiefe des Profils</translation>
    </message>
    <message>
        <source>the step of the profile</source>
        <translation>der Absatz des Profils</translation>
    </message>
    <message>
        <source>the step of a raised profile cannot be higher than the profile is deep</source>
        <translation>der Absatz einer Abplattung kann nicht höher sein, als das Profil tief ist</translation>
    </message>
    <message>
        <source>make the step smaller or the profile deeper</source>
        <translation>den Absatz kleiner oder das Profil tiefer machen</translation>
    </message>
    <message>
        <source>the height of the box</source>
        <translation>die Höhe des Schubkastens</translation>
    </message>
    <message>
        <source>the depth of the box</source>
        <translation>die Tiefe des Schubkastens</translation>
    </message>
    <message>
        <source>the length of the runner</source>
        <translation>die Länge der Führung</translation>
    </message>
    <message>
        <source>the box wall&apos;s thickness</source>
        <translation>die Dicke des Vorderstücks</translation>
    </message>
    <message>
        <source>the box sides&apos; thickness</source>
        <translation>die Dicke der Schubkastenseiten</translation>
    </message>
    <message>
        <source>the bottom&apos;s thickness</source>
        <translation>die Dicke des Bodens</translation>
    </message>
    <message>
        <source>the clearance at the sides</source>
        <translation>die Luft an den Seiten</translation>
    </message>
    <message>
        <source>the clearance below the box</source>
        <translation>die Luft unter dem Schubkasten</translation>
    </message>
    <message>
        <source>the clearance above the box</source>
        <translation>die Luft über dem Schubkasten</translation>
    </message>
    <message>
        <source>the height of the bottom&apos;s groove</source>
        <translation>die Nuthöhe des Bodens</translation>
    </message>
    <message>
        <source>the distance to the case&apos;s side</source>
        <translation>der Abstand zur Seite des Korpus</translation>
    </message>
    <message>
        <source>the length of the screw</source>
        <translation>die Länge der Schraube</translation>
    </message>
    <message>
        <source>the recess tool&apos;s diameter</source>
        <translation>der Durchmesser des Senkers</translation>
    </message>
    <message>
        <source>the clearance hole</source>
        <translation>die Durchgangsbohrung</translation>
    </message>
    <message>
        <source>the recess</source>
        <translation>die Kopfversenkung</translation>
    </message>
    <message>
        <source>the distance from the sides</source>
        <translation>der Abstand von den Seiten</translation>
    </message>
    <message>
        <source>the height of the lower row of screws</source>
        <translation>die Höhe der unteren Schraubenreihe</translation>
    </message>
    <message>
        <source>the distance of the upper row from the top</source>
        <translation>der Abstand der oberen Schraubenreihe von der Oberkante</translation>
    </message>
    <message>
        <source>the pilot hole</source>
        <translation>die Vorbohrung</translation>
    </message>
    <message>
        <source>no screw is placed</source>
        <translation>es ist keine Schraube gesetzt</translation>
    </message>
    <message>
        <source>place at least one, or choose a pattern</source>
        <translation>mindestens eine setzen oder ein Lochbild wählen</translation>
    </message>
    <message>
        <source>the length of the bolt</source>
        <translation>die Länge der Gewindeschraube</translation>
    </message>
    <message>
        <source>the counterbore&apos;s diameter</source>
        <translation>der Durchmesser der zylindrischen Senkung</translation>
    </message>
    <message>
        <source>the access hole&apos;s diameter</source>
        <translation>der Durchmesser der Zugangsbohrung</translation>
    </message>
    <message>
        <source>the width past which a front carries two handles</source>
        <translation>die Breite, ab der eine Blende zwei Griffe trägt</translation>
    </message>
    <message>
        <source>the width past which a front carries three handles</source>
        <translation>die Breite, ab der eine Blende drei Griffe trägt</translation>
    </message>
    <message>
        <source>a fitting&apos;s distance from the side</source>
        <translation>der Abstand eines Beschlags von der Seite</translation>
    </message>
    <message>
        <source>a fitting&apos;s distance from the edge</source>
        <translation>der Abstand eines Beschlags von der Kante</translation>
    </message>
    <message>
        <source>the length of a fitting&apos;s screws</source>
        <translation>die Länge der Schrauben eines Beschlags</translation>
    </message>
    <message>
        <source>the distance from the top</source>
        <translation>der Abstand von der Oberkante</translation>
    </message>
    <message>
        <source>the depth of the counterbore</source>
        <translation>die Tiefe der zylindrischen Senkung</translation>
    </message>
    <message>
        <source>the optical centre is raised by a part of the height, 1 in 1 or less</source>
        <translation>die optische Mitte liegt um einen Teil der Höhe höher, höchstens um die ganze</translation>
    </message>
    <message>
        <source>write 20 for a twentieth</source>
        <translation>für ein Zwanzigstel 20 schreiben</translation>
    </message>
    <message>
        <source>two handles stand at more than 0 and less than 50 per cent of the width</source>
        <translation>zwei Griffe sitzen bei mehr als 0 und weniger als 50 Prozent der Breite</translation>
    </message>
    <message>
        <source>the least opening</source>
        <translation>die kleinste Öffnung</translation>
    </message>
    <message>
        <source>the least penetration</source>
        <translation>die kleinste Eindringtiefe</translation>
    </message>
    <message>
        <source>the least tip cover</source>
        <translation>das kleinste Restholz vor der Schraubenspitze</translation>
    </message>
    <message>
        <source>the margin round a screw</source>
        <translation>der Rand um eine Schraube</translation>
    </message>
    <message>
        <source>the least wall under a head</source>
        <translation>die kleinste Wanddicke unter einem Kopf</translation>
    </message>
    <message>
        <source>the least wood under a bolt&apos;s head</source>
        <translation>das wenigste Holz unter dem Kopf einer Gewindeschraube</translation>
    </message>
    <message>
        <source>the allowance round a head</source>
        <translation>die Zugabe um einen Kopf</translation>
    </message>
    <message>
        <source>the least gap</source>
        <translation>die kleinste Fuge</translation>
    </message>
    <message>
        <source>the wood between holes</source>
        <translation>das Holz zwischen Bohrungen</translation>
    </message>
    <message>
        <source>the difference at which gaps look uneven</source>
        <translation>der Unterschied, bei dem Fugen ungleich aussehen</translation>
    </message>
    <message>
        <source>the least wood round a screw&apos;s hole</source>
        <translation>das kleinste Holz rings um eine Schraubenbohrung</translation>
    </message>
    <message>
        <source>the shadow of a filler strip</source>
        <translation>die Schattenbreite einer Füllleiste</translation>
    </message>
    <message>
        <source>the greatest bend of a filler strip</source>
        <translation>die größte Durchbiegung einer Füllleiste</translation>
    </message>
    <message>
        <source>%1 is longer than 10 000 bytes</source>
        <translation>%1 ist länger als 10 000 Byte</translation>
    </message>
    <message>
        <source>shorten it</source>
        <translation>kürzer fassen</translation>
    </message>
    <message>
        <source>%1 must be one line without control characters</source>
        <translation>%1 muss eine Zeile ohne Steuerzeichen sein</translation>
    </message>
    <message>
        <source>the distance from the case</source>
        <translation>der Abstand vom Korpus</translation>
    </message>
    <message>
        <source>the distance of the neighbour&apos;s front from its case&apos;s edge</source>
        <translation>der Abstand der Nachbarblende von der Kante ihres Korpus</translation>
    </message>
    <message>
        <source>the thickness</source>
        <translation>die Dicke</translation>
    </message>
    <message>
        <source>the height</source>
        <translation>die Höhe</translation>
    </message>
    <message>
        <source>the width</source>
        <translation>die Breite</translation>
    </message>
    <message>
        <source>the overhang at the front</source>
        <translation>der Überstand vorn</translation>
    </message>
    <message>
        <source>the overhang at the sides</source>
        <translation>der Überstand an den Seiten</translation>
    </message>
    <message>
        <source>the projection</source>
        <translation>die Ausladung</translation>
    </message>
    <message>
        <source>the setback</source>
        <translation>der Rücksprung</translation>
    </message>
    <message>
        <source>the lip</source>
        <translation>der Überhang</translation>
    </message>
    <message>
        <source>the gap</source>
        <translation>die Fuge</translation>
    </message>
    <message>
        <source>the diameter of the system holes</source>
        <translation>der Durchmesser der Systembohrungen</translation>
    </message>
    <message>
        <source>the pitch of the system holes</source>
        <translation>der Lochabstand der Systembohrungen</translation>
    </message>
    <message>
        <source>holes at this pitch run into one another</source>
        <translation>Bohrungen in diesem Abstand laufen ineinander</translation>
    </message>
    <message>
        <source>the pitch is from centre to centre: 32 mm is usual</source>
        <translation>der Abstand gilt von Mitte zu Mitte: üblich sind 32 mm</translation>
    </message>
    <message>
        <source>the height of the first hole</source>
        <translation>die Höhe der ersten Bohrung</translation>
    </message>
    <message>
        <source>the setback of the front row</source>
        <translation>der Rücksprung der vorderen Reihe</translation>
    </message>
    <message>
        <source>the rear row must stand behind the front row</source>
        <translation>die hintere Reihe muss hinter der vorderen stehen</translation>
    </message>
    <message>
        <source>measure both from the panels&apos; front edge</source>
        <translation>beide von der Vorderkante der Platten messen</translation>
    </message>
    <message>
        <source>that cannot stand at this side of the case</source>
        <translation>das kann an dieser Seite des Korpus nicht stehen</translation>
    </message>
    <message>
        <source>a top lies above, a plinth and legs stand below</source>
        <translation>eine Deckplatte liegt oben, Sockel und Füße stehen unten</translation>
    </message>
    <message>
        <source>an opening on the left would be under %1 wide</source>
        <translation>eine Öffnung links wäre schmaler als %1</translation>
    </message>
    <message>
        <source>sizes on the left are locked</source>
        <translation>die Maße links sind festgehalten</translation>
    </message>
    <message>
        <source>graduated run on the left; end the graduation to move it</source>
        <translation>links liegt eine abgestufte Folge; zum Versetzen die Abstufung beenden</translation>
    </message>
    <message>
        <source>an opening on the right would be under %1 wide</source>
        <translation>eine Öffnung rechts wäre schmaler als %1</translation>
    </message>
    <message>
        <source>sizes on the right are locked</source>
        <translation>die Maße rechts sind festgehalten</translation>
    </message>
    <message>
        <source>graduated run on the right; end the graduation to move it</source>
        <translation>rechts liegt eine abgestufte Folge; zum Versetzen die Abstufung beenden</translation>
    </message>
    <message>
        <source>an opening above would be under %1 high</source>
        <translation>eine Öffnung darüber wäre niedriger als %1</translation>
    </message>
    <message>
        <source>sizes above are locked</source>
        <translation>die Maße darüber sind festgehalten</translation>
    </message>
    <message>
        <source>graduated run above; end the graduation to move it</source>
        <translation>darüber liegt eine abgestufte Folge; zum Versetzen die Abstufung beenden</translation>
    </message>
    <message>
        <source>an opening below would be under %1 high</source>
        <translation>eine Öffnung darunter wäre niedriger als %1</translation>
    </message>
    <message>
        <source>sizes below are locked</source>
        <translation>die Maße darunter sind festgehalten</translation>
    </message>
    <message>
        <source>graduated run below; end the graduation to move it</source>
        <translation>darunter liegt eine abgestufte Folge; zum Versetzen die Abstufung beenden</translation>
    </message>
    <message>
        <source>sizes inside the frame are locked</source>
        <translation>die Maße innerhalb des Rahmens sind festgehalten</translation>
    </message>
    <message>
        <source>an opening inside the frame would be under %1 wide</source>
        <translation>eine Öffnung innerhalb des Rahmens wäre schmaler als %1</translation>
    </message>
    <message>
        <source>an opening inside the frame would be under %1 high</source>
        <translation>eine Öffnung innerhalb des Rahmens wäre niedriger als %1</translation>
    </message>
    <message>
        <source>the member would be under %1 wide</source>
        <translation>das Rahmenteil wäre schmaler als %1</translation>
    </message>
    <message>
        <source>the openings do not stand side by side in one split</source>
        <translation>die Öffnungen stehen nicht nebeneinander in einer Teilung</translation>
    </message>
    <message>
        <source>choose openings of one row or of one bank</source>
        <translation>Öffnungen einer Zeile oder einer Blendenreihe wählen</translation>
    </message>
    <message>
        <source>no opening is chosen</source>
        <translation>es ist keine Öffnung gewählt</translation>
    </message>
    <message>
        <source>choose the openings to make equal</source>
        <translation>die Öffnungen wählen, die gleich werden sollen</translation>
    </message>
    <message>
        <source>there is nothing to be equal to: the other sizes are locked</source>
        <translation>es gibt nichts, dem sie gleich werden könnte: Die anderen Maße sind festgehalten</translation>
    </message>
    <message>
        <source>choose at least two openings, or unlock one</source>
        <translation>mindestens zwei Öffnungen wählen oder eine freigeben</translation>
    </message>
    <message>
        <source>an opening would be %1, under the least of %2</source>
        <translation>eine Öffnung wäre %1, weniger als die kleinste von %2</translation>
    </message>
    <message>
        <source>make fewer fronts alike, or take a smaller overlay</source>
        <translation>machen Sie weniger Blenden gleich, oder nehmen Sie einen kleineren Aufschlag</translation>
    </message>
    <message>
        <source>the bank beside it does not begin and end where the opening does: its nearest openings are %1 off</source>
        <translation>die Blendenreihe daneben beginnt und endet nicht dort, wo die Öffnung es tut: ihre nächsten Öffnungen liegen %1 daneben</translation>
    </message>
    <message>
        <source>the columns above or below do not begin and end where the opening does: the nearest openings are %1 off</source>
        <translation>die Spalten darüber oder darunter beginnen und enden nicht dort, wo die Öffnung es tut: die nächsten Öffnungen liegen %1 daneben</translation>
    </message>
    <message>
        <source>set the heights or widths alike first, or divide the face by hand</source>
        <translation>zuerst Höhen oder Breiten angleichen, oder die Ansicht von Hand teilen</translation>
    </message>
    <message>
        <source>the bank beside it is not divided over the opening&apos;s height or width</source>
        <translation>die Blendenreihe daneben ist über die Höhe oder Breite der Öffnung nicht geteilt</translation>
    </message>
    <message>
        <source>choose another bank, or divide the face by hand</source>
        <translation>eine andere Blendenreihe wählen, oder die Ansicht von Hand teilen</translation>
    </message>
    <message>
        <source>the face of the opening is not divided</source>
        <translation>die Ansicht der Öffnung ist nicht geteilt</translation>
    </message>
    <message>
        <source>there is no bank beside the opening</source>
        <translation>neben der Öffnung ist keine Blendenreihe</translation>
    </message>
    <message>
        <source>divide the face by hand</source>
        <translation>die Ansicht von Hand teilen</translation>
    </message>
    <message>
        <source>several fronts lie over this opening already</source>
        <translation>über dieser Öffnung liegen schon mehrere Blenden</translation>
    </message>
    <message>
        <source>make one front of them first</source>
        <translation>machen Sie zuerst eine Blende daraus</translation>
    </message>
    <message>
        <source>the ratio of a graduated run must be more than 0 and at most 1000</source>
        <translation>das Verhältnis einer abgestuften Folge muss größer als 0 und höchstens 1000 sein</translation>
    </message>
    <message>
        <source>fewer than two sizes are left to graduate: the others are locked</source>
        <translation>weniger als zwei Maße lassen sich abstufen: Die anderen sind festgehalten</translation>
    </message>
    <message>
        <source>unlock them first</source>
        <translation>diese zuerst freigeben</translation>
    </message>
    <message>
        <source>the opening does not stand in a graduated run</source>
        <translation>die Öffnung steht in keiner abgestuften Folge</translation>
    </message>
    <message>
        <source>the graduated run in the same split would change its sizes</source>
        <translation>die abgestufte Folge in derselben Teilung würde ihre Maße ändern</translation>
    </message>
    <message>
        <source>end the graduation first</source>
        <translation>zuerst die Abstufung beenden</translation>
    </message>
    <message>
        <source>columns that grow by this ratio cannot be mirrored exactly</source>
        <translation>Spalten, die in diesem Verhältnis wachsen, lassen sich nicht genau spiegeln</translation>
    </message>
    <message>
        <source>end the graduation first; the sizes stay</source>
        <translation>zuerst die Abstufung beenden; die Maße bleiben</translation>
    </message>
    <message>
        <source>nothing is chosen to mirror</source>
        <translation>es ist nichts zum Spiegeln gewählt</translation>
    </message>
    <message>
        <source>choose openings</source>
        <translation>Öffnungen wählen</translation>
    </message>
    <message>
        <source>there are no columns to mirror</source>
        <translation>es gibt keine Spalten zu spiegeln</translation>
    </message>
    <message>
        <source>split into columns first</source>
        <translation>zuerst in Spalten teilen</translation>
    </message>
    <message>
        <source>the part is not divided into columns</source>
        <translation>der Teil ist nicht in Spalten geteilt</translation>
    </message>
    <message>
        <source>choose openings of a part that is</source>
        <translation>Öffnungen eines Teils wählen, der es ist</translation>
    </message>
    <message>
        <source>columns of a graduated run differ from side to side</source>
        <translation>Spalten einer Abstufung sind links und rechts verschieden</translation>
    </message>
    <message>
        <source>a stocked length must be more than 0</source>
        <translation>eine vorrätige Länge muss größer als 0 sein</translation>
    </message>
    <message>
        <source>stocked lengths must ascend, each of them once</source>
        <translation>vorrätige Längen müssen aufsteigen, jede nur einmal</translation>
    </message>
    <message>
        <source>write the shortest first</source>
        <translation>die kürzeste zuerst schreiben</translation>
    </message>
    <message>
        <source>the shank&apos;s diameter</source>
        <translation>der Schaftdurchmesser</translation>
    </message>
    <message>
        <source>the head&apos;s diameter</source>
        <translation>der Kopfdurchmesser</translation>
    </message>
    <message>
        <source>the head&apos;s height</source>
        <translation>die Kopfhöhe</translation>
    </message>
    <message>
        <source>the root&apos;s diameter</source>
        <translation>der Kerndurchmesser</translation>
    </message>
    <message>
        <source>the root cannot be thicker than the shank</source>
        <translation>der Kern kann nicht dicker sein als der Schaft</translation>
    </message>
    <message>
        <source>the thread&apos;s diameter</source>
        <translation>der Gewindedurchmesser</translation>
    </message>
    <message>
        <source>a handle has one hole at least</source>
        <translation>ein Griff hat mindestens eine Bohrung</translation>
    </message>
    <message>
        <source>the least engagement cannot be more than the thread is deep</source>
        <translation>die kleinste Einschraubtiefe kann nicht größer sein als die Gewindetiefe</translation>
    </message>
    <message>
        <source>the base&apos;s width</source>
        <translation>die Breite des Griffsockels</translation>
    </message>
    <message>
        <source>the base&apos;s height</source>
        <translation>die Höhe des Griffsockels</translation>
    </message>
    <message>
        <source>the thread&apos;s depth</source>
        <translation>die Gewindetiefe</translation>
    </message>
    <message>
        <source>the least engagement</source>
        <translation>die kleinste Einschraubtiefe</translation>
    </message>
    <message>
        <source>a clearance</source>
        <translation>die Luft</translation>
    </message>
    <message>
        <source>a rating must be more than 0</source>
        <translation>eine Tragkraft muss größer als 0 sein</translation>
    </message>
    <message>
        <source>leave it empty where it is not known</source>
        <translation>leer lassen, wenn sie nicht bekannt ist</translation>
    </message>
    <message>
        <source>a wood&apos;s specific gravity lies between 0.05 and 1.5</source>
        <translation>die Dichtezahl eines Holzes liegt zwischen 0,05 und 1,5</translation>
    </message>
    <message>
        <source>a fitting&apos;s screws need both a kind and places</source>
        <translation>die Schrauben eines Beschlags brauchen eine Art und Plätze</translation>
    </message>
    <message>
        <source>leave both empty where no screws hold it</source>
        <translation>beides leer lassen, wo keine Schrauben ihn halten</translation>
    </message>
    <message>
        <source>the bore&apos;s diameter</source>
        <translation>der Durchmesser der Bohrung</translation>
    </message>
    <message>
        <source>the mortise&apos;s width</source>
        <translation>die Breite der Ausstemmung</translation>
    </message>
    <message>
        <source>the mortise&apos;s height</source>
        <translation>die Höhe der Ausstemmung</translation>
    </message>
    <message>
        <source>the mortise&apos;s depth</source>
        <translation>die Tiefe der Ausstemmung</translation>
    </message>
    <message>
        <source>the plate&apos;s thickness</source>
        <translation>die Dicke der Platte</translation>
    </message>
    <message>
        <source>the plate&apos;s width</source>
        <translation>die Breite der Platte</translation>
    </message>
    <message>
        <source>the plate&apos;s height</source>
        <translation>die Höhe der Platte</translation>
    </message>
    <message>
        <source>the id</source>
        <translation>das Kennzeichen</translation>
    </message>
    <message>
        <source>%1 is missing</source>
        <translation>%1 fehlt</translation>
    </message>
    <message>
        <source>give every entry one of its own</source>
        <translation>jedem Eintrag ein eigenes geben</translation>
    </message>
    <message>
        <source>there is no entry &quot;%1&quot; of your own</source>
        <translation>es gibt keinen eigenen Eintrag „%1“</translation>
    </message>
    <message>
        <source>entries that come with the program stay</source>
        <translation>Einträge, die mit dem Programm kommen, bleiben</translation>
    </message>
    <message>
        <source>a third handle stands in the middle of the width</source>
        <translation>ein dritter Griff steht in der Mitte der Breite</translation>
    </message>
    <message>
        <source>two handles stand at a whole per cent of the width</source>
        <translation>zwei Griffe sitzen bei ganzen Prozenten der Breite</translation>
    </message>
    <message>
        <source>there is no such hole or handle</source>
        <translation>diese Bohrung oder diesen Griff gibt es nicht</translation>
    </message>
    <message>
        <source>there is no preset &quot;%1&quot;</source>
        <translation>es gibt keine Vorgabe „%1“</translation>
    </message>
    <message>
        <source>choose a preset that is there</source>
        <translation>eine vorhandene Vorgabe wählen</translation>
    </message>
    <message>
        <source>the name of the preset</source>
        <translation>der Name der Vorgabe</translation>
    </message>
    <message>
        <source>a preset needs a name</source>
        <translation>eine Vorgabe braucht einen Namen</translation>
    </message>
    <message>
        <source>write what it is for, such as Deep drawers</source>
        <translation>schreiben, wofür sie ist, etwa „Tiefe Schubkästen“</translation>
    </message>
    <message>
        <source>there is already a preset &quot;%1&quot;</source>
        <translation>es gibt schon eine Vorgabe „%1“</translation>
    </message>
    <message>
        <source>choose another name</source>
        <translation>einen anderen Namen wählen</translation>
    </message>
    <message>
        <source>it departs from no preset</source>
        <translation>es weicht von keiner Vorgabe ab</translation>
    </message>
    <message>
        <source>change it first, then the preset to it</source>
        <translation>zuerst dies ändern, dann die Vorgabe danach</translation>
    </message>
    <message>
        <source>the first and the last size must be more than 0</source>
        <translation>das erste und das letzte Maß müssen größer als 0 sein</translation>
    </message>
    <message>
        <source>a series has a first, a last and at least one between</source>
        <translation>eine Reihe hat ein erstes, ein letztes und mindestens ein Maß dazwischen</translation>
    </message>
    <message>
        <source>split the opening into three or more</source>
        <translation>die Öffnung in drei oder mehr teilen</translation>
    </message>
    <message>
        <source>all sizes between the first and the last are locked</source>
        <translation>alle Maße zwischen dem ersten und dem letzten sind festgehalten</translation>
    </message>
    <message>
        <source>the first and the last size are too unlike</source>
        <translation>das erste und das letzte Maß sind zu verschieden</translation>
    </message>
    <message>
        <source>there is no room between a first of %1 and a last of %2</source>
        <translation>zwischen einem ersten von %1 und einem letzten von %2 ist kein Platz</translation>
    </message>
    <message>
        <source>let the case follow, or take smaller ones</source>
        <translation>den Korpus folgen lassen oder kleinere nehmen</translation>
    </message>
    <message>
        <source>the bank does not span the case</source>
        <translation>die Blendenreihe reicht nicht durch den ganzen Korpus</translation>
    </message>
    <message>
        <source>keep the room, or choose a bank that does</source>
        <translation>den Platz behalten oder eine wählen, die es tut</translation>
    </message>
    <message>
        <source>all other rows of this split are locked</source>
        <translation>alle anderen Zeilen dieser Teilung sind festgehalten</translation>
    </message>
    <message>
        <source>all other columns of this split are locked</source>
        <translation>alle anderen Spalten dieser Teilung sind festgehalten</translation>
    </message>
    <message>
        <source>unlock one of them first</source>
        <translation>zuerst eine davon freigeben</translation>
    </message>
    <message>
        <source>%1 would be left over: the other sizes are locked</source>
        <translation>%1 blieben übrig: Die anderen Maße sind festgehalten</translation>
    </message>
    <message>
        <source>%1 of room is missing beside the locked sizes and the least openings of %2</source>
        <translation>neben den festgehaltenen Maßen und den kleinsten Öffnungen von %2 fehlen %1 Platz</translation>
    </message>
    <message>
        <source>at most %1 has room here</source>
        <translation>höchstens %1 haben hier Platz</translation>
    </message>
    <message>
        <source>the size of an opening must be more than 0</source>
        <translation>das Maß einer Öffnung muss größer als 0 sein</translation>
    </message>
    <message>
        <source>the opening has its place in a graduated run</source>
        <translation>die Öffnung hat ihren Platz in einer abgestuften Folge</translation>
    </message>
    <message>
        <source>the size of a case must be more than 0</source>
        <translation>das Maß eines Korpus muss größer als 0 sein</translation>
    </message>
    <message>
        <source>an opening is split into at least two</source>
        <translation>eine Öffnung wird in mindestens zwei geteilt</translation>
    </message>
    <message>
        <source>split into fewer</source>
        <translation>in weniger teilen</translation>
    </message>
    <message>
        <source>each opening would be %1 high, under the least of %2</source>
        <translation>jede Öffnung wäre %1 hoch, niedriger als die kleinste von %2</translation>
    </message>
    <message>
        <source>each opening would be %1 wide, under the least of %2</source>
        <translation>jede Öffnung wäre %1 breit, schmaler als die kleinste von %2</translation>
    </message>
    <message>
        <source>split into fewer, or take narrower members</source>
        <translation>in weniger teilen oder schmalere Rahmenteile nehmen</translation>
    </message>
    <message>
        <source>no front lies over the opening</source>
        <translation>über der Öffnung liegt keine Blende</translation>
    </message>
    <message>
        <source>make it a drawer, a door or a fixed front first</source>
        <translation>zuerst eine Schublade, eine Tür oder eine feste Blende daraus machen</translation>
    </message>
    <message>
        <source>the outer members of the frame hold the case together</source>
        <translation>die äußeren Rahmenteile halten den Korpus zusammen</translation>
    </message>
    <message>
        <source>make it narrower instead</source>
        <translation>es stattdessen schmaler machen</translation>
    </message>
    <message>
        <source>one opening is not enough to join</source>
        <translation>eine Öffnung genügt nicht zum Verbinden</translation>
    </message>
    <message>
        <source>choose at least two neighbours</source>
        <translation>mindestens zwei benachbarte wählen</translation>
    </message>
    <message>
        <source>the openings do not fill one stretch of a split</source>
        <translation>die Öffnungen füllen keinen zusammenhängenden Abschnitt einer Teilung</translation>
    </message>
    <message>
        <source>choose neighbours with everything between them</source>
        <translation>benachbarte mit allem dazwischen wählen</translation>
    </message>
    <message>
        <source>the opening spans the case&apos;s full height</source>
        <translation>die Öffnung nimmt die ganze Höhe des Korpus ein</translation>
    </message>
    <message>
        <source>change the height of the case, or split it</source>
        <translation>die Höhe des Korpus ändern oder ihn teilen</translation>
    </message>
    <message>
        <source>the opening spans the case&apos;s full width</source>
        <translation>die Öffnung nimmt die ganze Breite des Korpus ein</translation>
    </message>
    <message>
        <source>change the width of the case, or split it</source>
        <translation>die Breite des Korpus ändern oder ihn teilen</translation>
    </message>
    <message>
        <source>there is no such opening in the case</source>
        <translation>diese Öffnung gibt es im Korpus nicht</translation>
    </message>
    <message>
        <source>there is no such member in the case</source>
        <translation>dieses Rahmenteil gibt es im Korpus nicht</translation>
    </message>
    <message>
        <source>the wood, the air and the sizes when cut</source>
        <translation>das Holz, die Luftfeuchte und die Maße beim Zuschnitt</translation>
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
        <source>the case and what stands round it</source>
        <translation>dem Korpus und dem, was um ihn steht</translation>
    </message>
    <message>
        <source>the air</source>
        <translation>die Raumluft</translation>
    </message>
    <message>
        <source>all drawers and the frame</source>
        <translation>alle Schubkästen und der Rahmen</translation>
    </message>
    <message>
        <source>Set member width</source>
        <translation>Breite des Rahmenteils festlegen</translation>
    </message>
    <message>
        <source>the parts that it runs between</source>
        <translation>die Teile, zwischen denen es verläuft</translation>
    </message>
    <message>
        <source>the member&apos;s width and the overlays</source>
        <translation>die Breite des Rahmenteils und die Aufschläge</translation>
    </message>
    <message>
        <source>Set opening width</source>
        <translation>Öffnungsbreite festlegen</translation>
    </message>
    <message>
        <source>Set opening height</source>
        <translation>Öffnungshöhe festlegen</translation>
    </message>
    <message>
        <source>Set front width</source>
        <translation>Blendenbreite festlegen</translation>
    </message>
    <message>
        <source>Set front height</source>
        <translation>Blendenhöhe festlegen</translation>
    </message>
    <message>
        <source>Set front thickness</source>
        <translation>Blendendicke festlegen</translation>
    </message>
    <message>
        <source>Set overlay</source>
        <translation>Aufschlag festlegen</translation>
    </message>
    <message>
        <source>Set gap</source>
        <translation>Fuge festlegen</translation>
    </message>
    <message>
        <source>the overlay and what stands round the case</source>
        <translation>dem Aufschlag und dem, was um den Korpus steht</translation>
    </message>
    <message>
        <source>the openings and the gaps</source>
        <translation>den Öffnungen und den Fugen</translation>
    </message>
    <message>
        <source>the edge profile</source>
        <translation>das Kantenprofil</translation>
    </message>
    <message>
        <source>the opening and the side clearance</source>
        <translation>die Öffnung und die Luft an den Seiten</translation>
    </message>
    <message>
        <source>Set box height</source>
        <translation>Höhe des Schubkastens festlegen</translation>
    </message>
    <message>
        <source>Set box depth</source>
        <translation>Tiefe des Schubkastens festlegen</translation>
    </message>
    <message>
        <source>how the front fits and its thickness</source>
        <translation>wie die Blende sitzt und ihre Dicke</translation>
    </message>
    <message>
        <source>the groove&apos;s height and the bottom</source>
        <translation>die Nuthöhe und der Boden</translation>
    </message>
    <message>
        <source>Set side clearance</source>
        <translation>Seitliche Luft setzen</translation>
    </message>
    <message>
        <source>Set runner length</source>
        <translation>Länge der Führung setzen</translation>
    </message>
    <message>
        <source>the kind of runners</source>
        <translation>die Art der Führungen</translation>
    </message>
    <message>
        <source>the box&apos;s height and its clearances</source>
        <translation>die Höhe des Schubkastens und seine Luft</translation>
    </message>
    <message>
        <source>Set furring</source>
        <translation>Auffütterung setzen</translation>
    </message>
    <message>
        <source>Set screw length</source>
        <translation>Schraubenlänge festlegen</translation>
    </message>
    <message>
        <source>wall, front, recess and the least penetration and cover</source>
        <translation>Vorderstück, Blende, Kopfversenkung sowie die kleinste Eindringtiefe und das kleinste Restholz</translation>
    </message>
    <message>
        <source>screw, recess, wall and front</source>
        <translation>Schraube, Kopfversenkung, Vorderstück und Blende</translation>
    </message>
    <message>
        <source>Move screw hole</source>
        <translation>Schraubenbohrung versetzen</translation>
    </message>
    <message>
        <source>the bottom and the recess tool</source>
        <translation>der Boden und der Senker</translation>
    </message>
    <message>
        <source>where the screws are</source>
        <translation>wo die Schrauben sitzen</translation>
    </message>
    <message>
        <source>Set clearance hole</source>
        <translation>Durchgangsbohrung festlegen</translation>
    </message>
    <message>
        <source>the screw&apos;s head and the clearance hole</source>
        <translation>dem Schraubenkopf und der Durchgangsbohrung</translation>
    </message>
    <message>
        <source>Set pilot hole</source>
        <translation>Vorbohrung festlegen</translation>
    </message>
    <message>
        <source>screw, recess and wall</source>
        <translation>Schraube, Kopfversenkung und Vorderstück</translation>
    </message>
    <message>
        <source>screws, wood and handle</source>
        <translation>Schrauben, Holz und Griff</translation>
    </message>
    <message>
        <source>where the hole lies on the box wall</source>
        <translation>wo die Bohrung auf dem Vorderstück liegt</translation>
    </message>
    <message>
        <source>Move handle</source>
        <translation>Griff versetzen</translation>
    </message>
    <message>
        <source>front, wall and counterbore</source>
        <translation>Blende, Vorderstück und zylindrische Senkung</translation>
    </message>
    <message>
        <source>the grip and the handle&apos;s thread</source>
        <translation>die Klemmdicke und das Gewinde des Griffs</translation>
    </message>
    <message>
        <source>Set bolt length</source>
        <translation>Länge der Gewindeschraube festlegen</translation>
    </message>
    <message>
        <source>Set counterbore depth</source>
        <translation>Tiefe der zylindrischen Senkung festlegen</translation>
    </message>
    <message>
        <source>the bolt and the grip</source>
        <translation>die Gewindeschraube und die Klemmdicke</translation>
    </message>
    <message>
        <source>the handle that was chosen</source>
        <translation>dem gewählten Griff</translation>
    </message>
    <message>
        <source>Move fitting</source>
        <translation>Beschlag versetzen</translation>
    </message>
    <message>
        <source>Set the fitting&apos;s screws</source>
        <translation>Schrauben des Beschlags festlegen</translation>
    </message>
    <message>
        <source>the fitting&apos;s screws and the front</source>
        <translation>den Schrauben des Beschlags und der Blende</translation>
    </message>
    <message>
        <source>the fitting&apos;s mortise and the front</source>
        <translation>der Ausstemmung des Beschlags und der Blende</translation>
    </message>
    <message>
        <source>the wood and the sizes</source>
        <translation>das Holz und die Maße</translation>
    </message>
    <message>
        <source>the box and what it is for</source>
        <translation>der Schubkasten und wofür er ist</translation>
    </message>
    <message>
        <source>the runner</source>
        <translation>der Führung</translation>
    </message>
    <message>
        <source>the fronts beside the gap</source>
        <translation>den Blenden neben der Fuge</translation>
    </message>
    <message>
        <source>the fronts&apos; edges and the shadow</source>
        <translation>den Kanten der Blenden und der Schattenbreite</translation>
    </message>
    <message>
        <source>the gap and the screws beside it</source>
        <translation>der Fuge und den Schrauben daneben</translation>
    </message>
    <message>
        <source>the rule that places two handles on this front: %1</source>
        <translation>die Regel für zwei Griffe auf dieser Blende: %1</translation>
    </message>
    <message>
        <source>the lock&apos;s own height below the top edge</source>
        <translation>dem eigenen Abstand des Schlosses von der Oberkante</translation>
    </message>
    <message>
        <source>follows from %1</source>
        <translation>folgt aus anderen Angaben (%1)</translation>
    </message>
    <message>
        <source>change that instead</source>
        <translation>stattdessen diese ändern</translation>
    </message>
</context>
</TS>
