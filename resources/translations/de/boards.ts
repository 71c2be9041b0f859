<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>statics of stiff parts, common practice</source>
        <translation>Statik starrer Teile, allgemeine Praxis</translation>
    </message>
    <message>
        <source>statics; friction of dry wood 0.5, the upper end of 0.3 to 0.5: Wood Handbook, 1999, chapter 4, from memory</source>
        <translation>Statik; Reibung trockenen Holzes 0,5, das obere Ende von 0,3 bis 0,5: Wood Handbook, 1999, Kapitel 4, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>width × cos θ + length guided × sin θ = width + play at the frame + play inside</source>
        <translation>Breite × cos θ + geführte Länge × sin θ = Breite + Spiel am Rahmen + Spiel innen</translation>
    </message>
    <message>
        <source>width × cos θ + frame × sin θ = width + 2 × side play: the frame alone holds it</source>
        <translation>Breite × cos θ + Rahmendicke × sin θ = Breite + 2 × seitliches Spiel: Der Rahmen allein hält sie</translation>
    </message>
    <message>
        <source>Front edge aside, pulled out</source>
        <translation>Versatz der Vorderkante zur Seite, ausgezogen</translation>
    </message>
    <message>
        <source>sin θ × pull-out</source>
        <translation>sin θ × Auszug</translation>
    </message>
    <message>
        <source>Jams at this length in the case</source>
        <translation>Verkantet bei dieser Länge im Korpus</translation>
    </message>
    <message>
        <source>2 × friction × how far from the middle it is pulled</source>
        <translation>2 × Reibung × Abstand des Zugs von der Mitte</translation>
    </message>
    <message>
        <source>1 / (1 − length at which it jams / length in the case)</source>
        <translation>1 / (1 − Länge, bei der sie verkantet / Länge im Korpus)</translation>
    </message>
    <message>
        <source>Moment about the runners&apos; front end</source>
        <translation>Moment um das vordere Ende der Führungen</translation>
    </message>
    <message>
        <source>load × (pull-out + frame)</source>
        <translation>Last × (Auszug + Rahmendicke)</translation>
    </message>
    <message>
        <source>load × (pull-out + frame) + board&apos;s weight × (pull-out + frame − depth / 2), at least 0</source>
        <translation>Last × (Auszug + Rahmendicke) + Gewicht der Platte × (Auszug + Rahmendicke − Tiefe / 2), mindestens 0</translation>
    </message>
    <message>
        <source>Keeper strip left over the board</source>
        <translation>Verbleibende Halteleiste über der Platte</translation>
    </message>
    <message>
        <source>all pieces before the board&apos;s back</source>
        <translation>alle Stücke vor der Hinterkante der Platte</translation>
    </message>
    <message>
        <source>Uplift of the keeper strip</source>
        <translation>Abhebende Kraft an der Halteleiste</translation>
    </message>
    <message>
        <source>moment / lever</source>
        <translation>Moment / Hebelarm</translation>
    </message>
    <message>
        <source>Pull on the most loaded screw</source>
        <translation>Zug an der am stärksten belasteten Schraube</translation>
    </message>
    <message>
        <source>its part of the uplift × prying</source>
        <translation>ihr Anteil an der abhebenden Kraft × Hebelwirkung</translation>
    </message>
    <message>
        <source>Droop at the front edge</source>
        <translation>Absinken der Vorderkante</translation>
    </message>
    <message>
        <source>play in height × (pull-out + frame) / lever</source>
        <translation>Spiel in der Höhe × (Auszug + Rahmendicke) / Hebelarm</translation>
    </message>
    <message>
        <source>Use of the most loaded screw</source>
        <translation>Ausnutzung der am stärksten belasteten Schraube</translation>
    </message>
    <message>
        <source>pull / withdrawal + uplift / load across the shank, design values; 1 at most</source>
        <translation>Zug / Auszugswiderstand + abhebende Kraft / Tragkraft quer zum Schaft, Bemessungswerte; höchstens 1</translation>
    </message>
    <message>
        <source>pull / withdrawal, design value; 1 at most</source>
        <translation>Zug / Auszugswiderstand, Bemessungswert; höchstens 1</translation>
    </message>
    <message>
        <source>National Design Specification (NDS), withdrawal; Wood Handbook, chapter 8, older editions, across the shank, from memory</source>
        <translation>National Design Specification (NDS), Auszug; Wood Handbook, Kapitel 8, ältere Ausgaben, quer zum Schaft, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Brad in the left side panel</source>
        <translation>Stift in der linken Seitenwand</translation>
    </message>
    <message>
        <source>Brad in the right side panel</source>
        <translation>Stift in der rechten Seitenwand</translation>
    </message>
    <message>
        <source>brad + set − furring</source>
        <translation>Stift + Versenkung − Auffütterung</translation>
    </message>
    <message>
        <source>Keeper&apos;s screw in the left side panel</source>
        <translation>Schraube der Halteleiste in der linken Seitenwand</translation>
    </message>
    <message>
        <source>Keeper&apos;s screw in the right side panel</source>
        <translation>Schraube der Halteleiste in der rechten Seitenwand</translation>
    </message>
    <message>
        <source>screw + recess − keeper strip − furring</source>
        <translation>Schraube + Kopfversenkung − Halteleiste − Auffütterung</translation>
    </message>
    <message>
        <source>Forest Products Laboratory, Wood Handbook, chapter 13: change of size by coefficients</source>
        <translation>Forest Products Laboratory, Wood Handbook, Kapitel 13: Maßänderung nach Beiwerten</translation>
    </message>
    <message>
        <source>Side play in the wettest air</source>
        <translation>Seitliches Spiel in der feuchtesten Luft</translation>
    </message>
    <message>
        <source>side play − half of what the width swells</source>
        <translation>seitliches Spiel − die Hälfte dessen, um was die Breite quillt</translation>
    </message>
    <message>
        <source>Play in height in the wettest air</source>
        <translation>Spiel in der Höhe in der feuchtesten Luft</translation>
    </message>
    <message>
        <source>play in height − what the thickness swells</source>
        <translation>Spiel in der Höhe − um was die Dicke quillt</translation>
    </message>
    <message>
        <source>Skew, closed</source>
        <translation>Schräglauf, geschlossen</translation>
    </message>
    <message>
        <source>Skew, pulled out</source>
        <translation>Schräglauf, ausgezogen</translation>
    </message>
    <message>
        <source>Times as hard to pull as straight, closed</source>
        <translation>So viel Mal schwerer als gerade gezogen, geschlossen</translation>
    </message>
    <message>
        <source>Times as hard to pull as straight, pulled out</source>
        <translation>So viel Mal schwerer als gerade gezogen, ausgezogen</translation>
    </message>
    <message>
        <source>Board width</source>
        <translation>Breite der Platte</translation>
    </message>
    <message>
        <source>opening − 2 × side play</source>
        <translation>Öffnung − 2 × seitliches Spiel</translation>
    </message>
    <message>
        <source>Furring on the left, thickness</source>
        <translation>Dicke der linken Auffütterung</translation>
    </message>
    <message>
        <source>Furring on the right, thickness</source>
        <translation>Dicke der rechten Auffütterung</translation>
    </message>
    <message>
        <source>side panel to the opening&apos;s edge − working allowance</source>
        <translation>Seitenwand bis Öffnungskante − Arbeitszugabe</translation>
    </message>
    <message>
        <source>Setup block for the runner: its top above the opening&apos;s lower edge</source>
        <translation>Einstellklotz für die Führung: ihre Oberkante über der Unterkante der Öffnung</translation>
    </message>
    <message>
        <source>as given</source>
        <translation>wie angegeben</translation>
    </message>
    <message>
        <source>(opening&apos;s height − board) / 2</source>
        <translation>(Höhe der Öffnung − Platte) / 2</translation>
    </message>
    <message>
        <source>Runner&apos;s underside above the opening&apos;s lower edge</source>
        <translation>Unterseite der Führung über der Unterkante der Öffnung</translation>
    </message>
    <message>
        <source>runner&apos;s top − its height</source>
        <translation>Oberkante der Führung − ihre Höhe</translation>
    </message>
    <message>
        <source>Setup block for the keeper strip: its underside above the runner</source>
        <translation>Einstellklotz für die Halteleiste: ihre Unterseite über der Führung</translation>
    </message>
    <message>
        <source>board + play in height</source>
        <translation>Platte + Spiel in der Höhe</translation>
    </message>
    <message>
        <source>Keeper strip&apos;s underside above the opening&apos;s lower edge</source>
        <translation>Unterseite der Halteleiste über der Unterkante der Öffnung</translation>
    </message>
    <message>
        <source>runner&apos;s top + board + play in height</source>
        <translation>Oberkante der Führung + Platte + Spiel in der Höhe</translation>
    </message>
    <message>
        <source>Left under the top rail</source>
        <translation>Rest unter dem oberen Querfries</translation>
    </message>
    <message>
        <source>opening&apos;s height − runner&apos;s top − board</source>
        <translation>Höhe der Öffnung − Oberkante der Führung − Platte</translation>
    </message>
    <message>
        <source>Left behind the closed board</source>
        <translation>Rest hinter der geschlossenen Platte</translation>
    </message>
    <message>
        <source>frame + depth inside − board&apos;s depth</source>
        <translation>Rahmendicke + Tiefe innen − Tiefe der Platte</translation>
    </message>
    <message>
        <source>Keeper strip on the left, piece %1</source>
        <translation>Linke Halteleiste, Stück %1</translation>
    </message>
    <message>
        <source>Keeper strip on the right, piece %1</source>
        <translation>Rechte Halteleiste, Stück %1</translation>
    </message>
    <message>
        <source>its end − its beginning, from the case&apos;s front</source>
        <translation>sein Ende − sein Anfang, von der Vorderseite des Korpus</translation>
    </message>
    <message>
        <source>The board does not pass under the top rail: %1 are missing</source>
        <translation>Die Platte geht nicht unter dem oberen Querfries durch: Es fehlen %1</translation>
    </message>
    <message>
        <source>opening&apos;s height − runner&apos;s top %1 − board %2 is negative</source>
        <translation>Höhe der Öffnung − Oberkante der Führung %1 − Platte %2 ist negativ</translation>
    </message>
    <message>
        <source>Set the runners lower by %1, or plane the board thinner</source>
        <translation>Die Führungen um %1 tiefer setzen oder die Platte dünner hobeln</translation>
    </message>
    <message>
        <source>The board is deeper than its case by %1</source>
        <translation>Die Platte ist um %1 tiefer als ihr Korpus</translation>
    </message>
    <message>
        <source>frame and depth inside are %1, the board&apos;s depth is %2</source>
        <translation>Rahmendicke und Tiefe innen sind zusammen %1, die Platte ist %2 tief</translation>
    </message>
    <message>
        <source>Make the board at most %1 deep</source>
        <translation>Die Platte höchstens %1 tief machen</translation>
    </message>
    <message>
        <source>There is no furring for the keeper strips to lie on</source>
        <translation>Es gibt keine Auffütterung, auf der die Halteleisten liegen könnten</translation>
    </message>
    <message>
        <source>They are to be screwed down into the furring&apos;s upper edge</source>
        <translation>Sie sollen von oben in die Kante der Auffütterung geschraubt werden</translation>
    </message>
    <message>
        <source>Fit furring, or screw the strips to the side panels</source>
        <translation>Auffüttern oder die Leisten an die Seitenwände schrauben</translation>
    </message>
    <message>
        <source>The keeper strips do not lie over the board, so that it tips out</source>
        <translation>Die Halteleisten liegen nicht über der Platte, sodass sie herauskippt</translation>
    </message>
    <message>
        <source>They stand out by %1, and the board&apos;s edge is %2 away</source>
        <translation>Sie stehen %1 vor, und die Kante der Platte ist %2 entfernt</translation>
    </message>
    <message>
        <source>Make the strips wider, or fit furring</source>
        <translation>Die Leisten breiter machen oder auffüttern</translation>
    </message>
    <message>
        <source>Pulled %1 from its middle, a board jams where no more than 2 × friction %2 × %1 = %3 of it is guided: what presses at its two corners rubs as hard as it is pulled, however hard that is</source>
        <translation>Wird eine Platte %1 neben ihrer Mitte gezogen, verkantet sie, wo höchstens 2 × Reibung %2 × %1 = %3 von ihr geführt sind: Was an ihren beiden Ecken drückt, reibt so stark, wie gezogen wird, wie stark das auch sei</translation>
    </message>
    <message>
        <source>The board jams: only the frame guides it, over %1</source>
        <translation>Die Platte verkantet: Nur der Rahmen führt sie, auf %1</translation>
    </message>
    <message>
        <source>Fit furring, which guides it over its whole depth</source>
        <translation>Auffüttern, damit sie auf ihrer ganzen Tiefe geführt wird</translation>
    </message>
    <message>
        <source>The board jams where it lies: %1 of it are guided, %2 of its width</source>
        <translation>Die Platte verkantet, wo sie liegt: %1 von ihr sind geführt, das %2-Fache ihrer Breite</translation>
    </message>
    <message>
        <source>Make the board deeper, or pull it nearer to its middle</source>
        <translation>Die Platte tiefer machen oder näher an ihrer Mitte ziehen</translation>
    </message>
    <message>
        <source>The board jams before it is %1 out: then %2 of it are guided</source>
        <translation>Die Platte verkantet, bevor sie %1 ausgezogen ist: Dann sind %2 von ihr geführt</translation>
    </message>
    <message>
        <source>Stop it at %1, make it deeper, or pull it nearer to its middle</source>
        <translation>Den Auszug bei %1 begrenzen, die Platte tiefer machen oder näher an ihrer Mitte ziehen</translation>
    </message>
    <message>
        <source>Stop it at %1</source>
        <translation>Den Auszug bei %1 begrenzen</translation>
    </message>
    <message>
        <source>Pulled out %1, the board&apos;s front edge sinks by %2, more than %3</source>
        <translation>%1 herausgezogen, sinkt die Vorderkante der Platte um %2 ab, mehr als %3</translation>
    </message>
    <message>
        <source>droop = play in height × (pull-out + frame) / lever: %1 × (%2 + %3) / %4</source>
        <translation>Absinken = Spiel in der Höhe × (Auszug + Rahmendicke) / Hebelarm: %1 × (%2 + %3) / %4</translation>
    </message>
    <message>
        <source>Pulled out %1, the board has no keeper strip over its back and tips</source>
        <translation>%1 ausgezogen, hat die Platte hinten keine Halteleiste mehr über sich und kippt</translation>
    </message>
    <message>
        <source>%1 of strip are left over the board</source>
        <translation>%1 Leiste bleiben über der Platte</translation>
    </message>
    <message>
        <source>Pulled out %1, with %2 at its edge, the board lifts its keeper strip with %3</source>
        <translation>%1 ausgezogen und an der Kante mit %2 belastet, drückt die Platte ihre Halteleiste mit %3 nach oben</translation>
    </message>
    <message>
        <source>The most loaded screw bears %1 times its design value; up to %2 it would not be more than once</source>
        <translation>Die am stärksten belastete Schraube trägt das %1-Fache ihres Bemessungswerts; bis %2 wäre es höchstens das Einfache</translation>
    </message>
    <message>
        <source>In the wettest air the board is wider than its opening by %1</source>
        <translation>In der feuchtesten Luft ist die Platte um %1 breiter als ihre Öffnung</translation>
    </message>
    <message>
        <source>Its width swells by %1, and its side play is 2 × %2</source>
        <translation>Ihre Breite quillt um %1, und ihr seitliches Spiel ist 2 × %2</translation>
    </message>
    <message>
        <source>Leave %1 on each side, or let its grain run from side to side</source>
        <translation>Auf jeder Seite %1 lassen oder die Faser von Seite zu Seite laufen lassen</translation>
    </message>
    <message>
        <source>In the wettest air the board is thicker than the room under its keeper strips by %1</source>
        <translation>In der feuchtesten Luft ist die Platte um %1 dicker als der Raum unter ihren Halteleisten</translation>
    </message>
    <message>
        <source>Its thickness swells by %1, and its play in height is %2</source>
        <translation>Ihre Dicke quillt um %1, und ihr Spiel in der Höhe ist %2</translation>
    </message>
    <message>
        <source>Leave %1 of play in height</source>
        <translation>%1 Spiel in der Höhe lassen</translation>
    </message>
    <message>
        <source>Pulled %1 from its middle, the board runs %2 times as hard as pulled straight</source>
        <translation>%1 neben ihrer Mitte gezogen, läuft die Platte %2-mal so schwer wie gerade gezogen</translation>
    </message>
    <message>
        <source>%1 of it are guided, and at %2 it would jam; a board wider than it is guided racks</source>
        <translation>%1 von ihr sind geführt, und bei %2 würde sie verkanten; eine Platte, die breiter ist, als sie geführt wird, läuft schief</translation>
    </message>
    <message>
        <source>Make the board deeper, pull it in its middle, or wax its edges</source>
        <translation>Die Platte tiefer machen, in ihrer Mitte ziehen oder ihre Kanten wachsen</translation>
    </message>
    <message>
        <source>Pulled out %1, the board is near to jamming: %2 of it are guided, and at %3 it jams</source>
        <translation>%1 herausgezogen, ist die Platte nahe daran zu verkanten: %2 von ihr sind geführt, und bei %3 verkantet sie</translation>
    </message>
    <message>
        <source>At least 5/4 × %1 = %2 should be guided, so that damp or dirt does not jam it</source>
        <translation>Mindestens 5/4 × %1 = %2 sollten geführt sein, damit Feuchte oder Schmutz sie nicht verkanten lassen</translation>
    </message>
    <message>
        <source>The keeper strips&apos; screws go down into a furring only %1 thick, less than %2: they may split it</source>
        <translation>Die Schrauben der Halteleisten gehen von oben in eine nur %1 dicke Auffütterung, weniger als %2: Sie können sie spalten</translation>
    </message>
    <message>
        <source>least thickness = 2 × 2.5 × the screw&apos;s shank = %1: its least distance to an edge on both sides</source>
        <translation>kleinste Dicke = 2 × 2,5 × Schaft der Schraube = %1: ihr kleinster Abstand von einer Kante auf beiden Seiten</translation>
    </message>
    <message>
        <source>Screw the strips sideways through the furring into the side panels, or use thinner screws</source>
        <translation>Die Leisten seitlich durch die Auffütterung in die Seitenwände schrauben oder dünnere Schrauben nehmen</translation>
    </message>
    <message>
        <source>NDS commentary, edge and end distances of wood screws, from memory</source>
        <translation>NDS-Kommentar, Abstände von Holzschrauben zu Kante und Hirnholz, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>The keeper strips&apos; screws go only %1 into the wood behind and are not counted on: the board is safe to %2 only</source>
        <translation>Die Schrauben der Halteleisten gehen nur %1 in das Holz dahinter und zählen nicht als tragend: Die Platte ist nur bis %2 sicher</translation>
    </message>
    <message>
        <source>Across its shank a screw is counted on from 4 × the shank&apos;s diameter of penetration on</source>
        <translation>Quer zum Schaft zählt eine Schraube ab einer Einschraubtiefe von 4 × Schaftdurchmesser</translation>
    </message>
    <message>
        <source>Take thinner or longer screws, a narrower keeper strip, or a thicker side panel</source>
        <translation>Dünnere oder längere Schrauben nehmen, eine schmalere Halteleiste oder eine dickere Seitenwand</translation>
    </message>
    <message>
        <source>Wood Handbook, chapter 8, older editions, across the shank, from memory</source>
        <translation>Wood Handbook, Kapitel 8, ältere Ausgaben, quer zum Schaft, aus dem Gedächtnis</translation>
    </message>
    <message>
        <source>Without furring the board turns by %1 in its case, its back aside by up to %2</source>
        <translation>Ohne Auffütterung dreht sich die Platte in ihrem Korpus um %1, hinten um bis zu %2 zur Seite</translation>
    </message>
    <message>
        <source>Behind the frame nothing guides it up to the side panels</source>
        <translation>Hinter dem Rahmen führt sie nichts bis zu den Seitenwänden</translation>
    </message>
    <message>
        <source>Fit furring from the side panels to the opening&apos;s edges</source>
        <translation>Von den Seitenwänden bis zu den Öffnungskanten auffüttern</translation>
    </message>
    <message>
        <source>Between fasteners on the left, %1 is too short for a piece of the keeper strip</source>
        <translation>Zwischen Befestigungen links sind %1 zu kurz für ein Stück der Halteleiste</translation>
    </message>
    <message>
        <source>Between fasteners on the right, %1 is too short for a piece of the keeper strip</source>
        <translation>Zwischen Befestigungen rechts sind %1 zu kurz für ein Stück der Halteleiste</translation>
    </message>
    <message>
        <source>Pieces shorter than %1 are left out</source>
        <translation>Stücke, die kürzer als %1 sind, werden weggelassen</translation>
    </message>
    <message>
        <source>Nothing needs to be done where the other pieces hold the board</source>
        <translation>Nichts ist zu tun, wo die anderen Stücke die Platte halten</translation>
    </message>
    <message>
        <source>The runners are of softer wood than the board that slides on them</source>
        <translation>Die Führungen sind aus weicherem Holz als die Platte, die auf ihnen gleitet</translation>
    </message>
    <message>
        <source>The softer wood is worn hollow</source>
        <translation>Das weichere Holz läuft sich hohl</translation>
    </message>
    <message>
        <source>Make the runners of wood as hard as the board</source>
        <translation>Die Führungen aus ebenso hartem Holz wie die Platte machen</translation>
    </message>
    <message>
        <source>The furring&apos;s brads come through the show side of the case by %1</source>
        <translation>Die Stifte der Auffütterung treten %1 aus der Sichtseite des Korpus aus</translation>
    </message>
    <message>
        <source>The keeper strips&apos; screws come through the show side of the case by %1</source>
        <translation>Die Schrauben der Halteleisten treten %1 aus der Sichtseite des Korpus aus</translation>
    </message>
    <message>
        <source>The furring&apos;s brads go only %1 into the side panel, less than %2</source>
        <translation>Die Stifte der Auffütterung gehen nur %1 in die Seitenwand, weniger als %2</translation>
    </message>
    <message>
        <source>The keeper strips&apos; screws go only %1 into the side panel, less than %2</source>
        <translation>Die Schrauben der Halteleisten gehen nur %1 in die Seitenwand, weniger als %2</translation>
    </message>
    <message>
        <source>Before the tips of the furring&apos;s brads only %1 of wood is left, less than %2</source>
        <translation>Vor den Spitzen der Stifte bleibt nur %1 Restholz, weniger als %2</translation>
    </message>
    <message>
        <source>Before the tips of the keeper strips&apos; screws only %1 of wood is left, less than %2</source>
        <translation>Vor den Spitzen der Schrauben der Halteleisten bleibt nur %1 Restholz, weniger als %2</translation>
    </message>
    <message>
        <source>No length fits: glue the parts, or change the thickness of one</source>
        <translation>Keine Länge passt: Die Teile leimen oder die Dicke eines Teils ändern</translation>
    </message>
    <message>
        <source>Use a length from %1 to %2</source>
        <translation>Eine Länge von %1 bis %2 nehmen</translation>
    </message>
    <message>
        <source>length and set − layers passed %1 = %2 in a side panel of %3</source>
        <translation>Länge und Versenkung − durchquerte Lagen %1 = %2 in einer Seitenwand von %3</translation>
    </message>
    <message>
        <source>&quot;%1&quot; does not begin with L or R</source>
        <translation>„%1“ beginnt nicht mit L oder R</translation>
    </message>
    <message>
        <source>write a side, a depth and a diameter, as in L 4 in : 1 in</source>
        <translation>Seite, Tiefe und Durchmesser schreiben, etwa L 100 mm : 25 mm</translation>
    </message>
    <message>
        <source>depth − 5/4 × length at which it jams: a quarter more is kept guided, so that it does not jam</source>
        <translation>Tiefe − 5/4 × Länge, bei der sie verkantet: Ein Viertel mehr bleibt geführt, damit sie nicht verkantet</translation>
    </message>
    <message>
        <source>until only the frame guides it, over less than 5/4 × the length at which it jams</source>
        <translation>bis nur noch der Rahmen sie führt, über weniger als 5/4 × die Länge, bei der sie verkantet</translation>
    </message>
    <message>
        <source>less of it is guided than 5/4 × the length at which it jams, even closed</source>
        <translation>sogar geschlossen ist weniger von ihr geführt als 5/4 × die Länge, bei der sie verkantet</translation>
    </message>
    <message>
        <source>until it would tip by itself: the keeper strips&apos; screws go less than 4 × their shank into the wood behind, and are not counted on to bear across it; take thinner or longer ones, or a thicker panel</source>
        <translation>bis sie von selbst kippen würde: Die Schrauben der Halteleisten gehen weniger als 4 × Schaft in das Holz dahinter und zählen quer dazu nicht als tragend; dünnere oder längere nehmen, oder eine dickere Wand</translation>
    </message>
    <message>
        <source>until the most loaded screw of the keeper strip bears its design value: its use by uplift = moment / lever, 1 at most</source>
        <translation>bis die am stärksten belastete Schraube der Halteleiste ihren Bemessungswert trägt: ihre Ausnutzung durch die abhebende Kraft = Moment / Hebelarm, höchstens 1</translation>
    </message>
    <message>
        <source>until its front edge sinks too far: play in height × (pull-out + frame) / lever</source>
        <translation>bis ihre Vorderkante zu weit absinkt: Spiel in der Höhe × (Auszug + Rahmendicke) / Hebelarm</translation>
    </message>
    <message>
        <source>the keeper strips do not hold its back down</source>
        <translation>die Halteleisten halten sie hinten nicht nieder</translation>
    </message>
    <message>
        <source>depth − front end of the keeper strip: until nothing is left to hold its back down</source>
        <translation>Tiefe − vorderes Ende der Halteleiste: bis nichts mehr sie hinten niederhält</translation>
    </message>
    <message>
        <source>Safe pull-out</source>
        <translation>Sicherer Auszug</translation>
    </message>
</context>
</TS>
