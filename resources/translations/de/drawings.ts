<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>side play %1</source>
        <translation>Seitenspiel %1</translation>
    </message>
    <message>
        <source>board %1</source>
        <translation>Platte %1</translation>
    </message>
    <message>
        <source>opening %1</source>
        <translation>Öffnung %1</translation>
    </message>
    <message>
        <source>furring %1</source>
        <translation>Auffütterung %1</translation>
    </message>
    <message>
        <source>Board %1, level section, seen from above</source>
        <translation>Platte %1, waagerechter Schnitt, von oben gesehen</translation>
    </message>
    <message>
        <source>Board %1, section, seen from the right: left side</source>
        <translation>Platte %1, Schnitt, von rechts gesehen: linke Seite</translation>
    </message>
    <message>
        <source>Board %1, section, seen from the right: right side</source>
        <translation>Platte %1, Schnitt, von rechts gesehen: rechte Seite</translation>
    </message>
    <message>
        <source>Pulled out %1; safe up to %2 with %3 at its edge</source>
        <translation>Auszug %1; sicher bis %2 mit %3 an der Vorderkante</translation>
    </message>
    <message>
        <source>runner block %1</source>
        <translation>Klotz Führung %1</translation>
    </message>
    <message>
        <source>keeper block %1</source>
        <translation>Klotz Halteleiste %1</translation>
    </message>
    <message>
        <source>piece %1</source>
        <translation>Stück %1</translation>
    </message>
    <message>
        <source>begins at %1</source>
        <translation>beginnt bei %1</translation>
    </message>
    <message>
        <source>pulled out %1</source>
        <translation>Auszug %1</translation>
    </message>
    <message>
        <source>free %1</source>
        <translation>frei %1</translation>
    </message>
    <message>
        <source>inside %1</source>
        <translation>innen %1</translation>
    </message>
    <message>
        <source>Dimensions in inches</source>
        <translation>Maße in Zoll</translation>
    </message>
    <message>
        <source>Dimensions in millimetres</source>
        <translation>Maße in Millimetern</translation>
    </message>
    <message>
        <source>Dimensions in inches, scale %1</source>
        <translation>Maße in Zoll, Maßstab %1</translation>
    </message>
    <message>
        <source>Dimensions in millimetres, scale %1</source>
        <translation>Maße in Millimetern, Maßstab %1</translation>
    </message>
    <message>
        <source>%1; ≈ nearest %2</source>
        <translation>%1; ≈ auf %2 gerundet</translation>
    </message>
    <message>
        <source>Not all dimensions fit at this scale</source>
        <translation>Nicht alle Maße haben in diesem Maßstab Platz</translation>
    </message>
    <message>
        <source>open</source>
        <translation>offen</translation>
    </message>
    <message>
        <source>case</source>
        <translation>Korpus</translation>
    </message>
    <message>
        <source>face frame</source>
        <translation>Blendrahmen</translation>
    </message>
    <message>
        <source>stile</source>
        <translation>Längsfries</translation>
    </message>
    <message>
        <source>rail</source>
        <translation>Querfries</translation>
    </message>
    <message>
        <source>divider</source>
        <translation>Mittelwand</translation>
    </message>
    <message>
        <source>opening</source>
        <translation>Öffnung</translation>
    </message>
    <message>
        <source>plinth</source>
        <translation>Sockel</translation>
    </message>
    <message>
        <source>moulding</source>
        <translation>Zierleiste</translation>
    </message>
    <message>
        <source>leg</source>
        <translation>Fuß</translation>
    </message>
    <message>
        <source>system holes</source>
        <translation>Systembohrungen</translation>
    </message>
    <message>
        <source>front</source>
        <translation>Blende</translation>
    </message>
    <message>
        <source>overlay</source>
        <translation>Aufschlag</translation>
    </message>
    <message>
        <source>inset</source>
        <translation>einliegend</translation>
    </message>
    <message>
        <source>reveal</source>
        <translation>Sichtbreite</translation>
    </message>
    <message>
        <source>spacer</source>
        <translation>Distanzholz</translation>
    </message>
    <message>
        <source>stop</source>
        <translation>Anschlagholz</translation>
    </message>
    <message>
        <source>bank</source>
        <translation>Blendenreihe</translation>
    </message>
    <message>
        <source>field</source>
        <translation>Spiegel</translation>
    </message>
    <message>
        <source>edge profile</source>
        <translation>Kantenprofil</translation>
    </message>
    <message>
        <source>drawer box</source>
        <translation>Schubkasten</translation>
    </message>
    <message>
        <source>box wall</source>
        <translation>Vorderstück</translation>
    </message>
    <message>
        <source>bottom panel</source>
        <translation>Boden</translation>
    </message>
    <message>
        <source>runner</source>
        <translation>Führung</translation>
    </message>
    <message>
        <source>kicker</source>
        <translation>Kippleiste</translation>
    </message>
    <message>
        <source>guide</source>
        <translation>Streichleiste</translation>
    </message>
    <message>
        <source>notch</source>
        <translation>Ausklinkung</translation>
    </message>
    <message>
        <source>pull</source>
        <translation>Bügelgriff</translation>
    </message>
    <message>
        <source>knob</source>
        <translation>Knopf</translation>
    </message>
    <message>
        <source>centre-to-centre</source>
        <translation>Lochabstand</translation>
    </message>
    <message>
        <source>backplate</source>
        <translation>Griffunterlage</translation>
    </message>
    <message>
        <source>bolt</source>
        <translation>Gewindeschraube</translation>
    </message>
    <message>
        <source>mounting screw</source>
        <translation>Befestigungsschraube</translation>
    </message>
    <message>
        <source>pilot hole</source>
        <translation>Vorbohrung</translation>
    </message>
    <message>
        <source>clearance hole</source>
        <translation>Durchgangsbohrung</translation>
    </message>
    <message>
        <source>access hole</source>
        <translation>Zugangsbohrung</translation>
    </message>
    <message>
        <source>counterbore</source>
        <translation>zylindrische Senkung</translation>
    </message>
    <message>
        <source>countersink</source>
        <translation>Kegelsenkung</translation>
    </message>
    <message>
        <source>grip</source>
        <translation>Klemmdicke</translation>
    </message>
    <message>
        <source>engagement</source>
        <translation>Einschraubtiefe</translation>
    </message>
    <message>
        <source>tip cover</source>
        <translation>Restholz</translation>
    </message>
    <message>
        <source>story stick</source>
        <translation>Maßlatte</translation>
    </message>
    <message>
        <source>setup block</source>
        <translation>Einstellklotz</translation>
    </message>
    <message>
        <source>filler strip</source>
        <translation>Füllleiste</translation>
    </message>
    <message>
        <source>pull-out board</source>
        <translation>Ausziehplatte</translation>
    </message>
    <message>
        <source>furring</source>
        <translation>Auffütterung</translation>
    </message>
    <message>
        <source>keeper strip</source>
        <translation>Halteleiste</translation>
    </message>
    <message>
        <source>kerf</source>
        <translation>Schnittfuge</translation>
    </message>
    <message>
        <source>board foot</source>
        <translation>Boardfuß</translation>
    </message>
    <message>
        <source>flat-sawn</source>
        <translation>Seitenbrett</translation>
    </message>
    <message>
        <source>quarter-sawn</source>
        <translation>Riftbrett</translation>
    </message>
    <message>
        <source>moisture content</source>
        <translation>Holzfeuchte</translation>
    </message>
    <message>
        <source>overlay %1</source>
        <translation>Aufschlag %1</translation>
    </message>
    <message>
        <source>overlap %1</source>
        <translation>Überdeckung %1</translation>
    </message>
    <message>
        <source>gap %1</source>
        <translation>Fuge %1</translation>
    </message>
    <message>
        <source>handle at %1</source>
        <translation>Griff bei %1</translation>
    </message>
    <message>
        <source>front width %1</source>
        <translation>Blendenbreite %1</translation>
    </message>
    <message>
        <source>side clearance %1</source>
        <translation>Luft seitlich %1</translation>
    </message>
    <message>
        <source>hole at %1</source>
        <translation>Bohrung bei %1</translation>
    </message>
    <message>
        <source>access hole %1</source>
        <translation>Zugangsbohrung %1</translation>
    </message>
    <message>
        <source>box width %1</source>
        <translation>Kastenbreite %1</translation>
    </message>
    <message>
        <source>front %1</source>
        <translation>Blende %1</translation>
    </message>
    <message>
        <source>wall %1</source>
        <translation>Vorderstück %1</translation>
    </message>
    <message>
        <source>bottom %1</source>
        <translation>Boden %1</translation>
    </message>
    <message>
        <source>hole %1</source>
        <translation>Bohrung %1</translation>
    </message>
    <message>
        <source>Reveals ×%1, not to scale</source>
        <translation>Sichtbreiten ×%1, nicht maßstäblich</translation>
    </message>
    <message>
        <source>relative humidity at %1</source>
        <translation>relative Luftfeuchte bei %1</translation>
    </message>
    <message>
        <source>smallest gap</source>
        <translation>kleinste Fuge</translation>
    </message>
    <message>
        <source>driest</source>
        <translation>am trockensten</translation>
    </message>
    <message>
        <source>wettest</source>
        <translation>am feuchtesten</translation>
    </message>
    <message>
        <source>today %1</source>
        <translation>heute %1</translation>
    </message>
    <message>
        <source>changes drawn as large as they are</source>
        <translation>Änderungen in wahrer Größe gezeichnet</translation>
    </message>
    <message>
        <source>changes drawn %1 times as large</source>
        <translation>Änderungen %1-fach vergrößert gezeichnet</translation>
    </message>
    <message>
        <source>%1: no stocked length fits; clearance hole %2, pilot hole %3</source>
        <translation>%1: keine vorrätige Länge passt; Durchgangsbohrung %2, Vorbohrung %3</translation>
    </message>
    <message>
        <source>%1 × %2; clearance hole %3, pilot hole %4</source>
        <translation>%1 × %2; Durchgangsbohrung %3, Vorbohrung %4</translation>
    </message>
    <message>
        <source>%1: no stocked length fits, drawn %2 long, %3</source>
        <translation>%1: keine vorrätige Länge passt, gezeichnet mit %2 Länge, %3</translation>
    </message>
    <message>
        <source>%1 × %2, %3</source>
        <translation>%1 × %2, %3</translation>
    </message>
    <message>
        <source>%1: no stocked length fits</source>
        <translation>%1: keine vorrätige Länge passt</translation>
    </message>
    <message>
        <source>%1, %2 long, %3 %4</source>
        <translation>%1, %2 lang, %3 %4</translation>
    </message>
    <message>
        <source>%1, level section</source>
        <translation>%1, waagerechter Schnitt</translation>
    </message>
    <message>
        <source>%1, section</source>
        <translation>%1, Schnitt</translation>
    </message>
    <message>
        <source>%1, level section through screw %2</source>
        <translation>%1, waagerechter Schnitt durch Schraube %2</translation>
    </message>
    <message>
        <source>%1, section through screw %2</source>
        <translation>%1, Schnitt durch Schraube %2</translation>
    </message>
    <message>
        <source>%1: no stocked length of its screws fits</source>
        <translation>%1: keine vorrätige Länge seiner Schrauben passt</translation>
    </message>
    <message>
        <source>%1: %2 × %3</source>
        <translation>%1: %2 × %3</translation>
    </message>
    <message>
        <source>frame %1</source>
        <translation>Rahmen %1</translation>
    </message>
    <message>
        <source>recess %1</source>
        <translation>Kopfversenkung %1</translation>
    </message>
    <message>
        <source>web %1</source>
        <translation>Steg %1</translation>
    </message>
    <message>
        <source>screw length %1</source>
        <translation>Schraubenlänge %1</translation>
    </message>
    <message>
        <source>through by %1</source>
        <translation>Überstand %1</translation>
    </message>
    <message>
        <source>tip cover %1</source>
        <translation>Restholz %1</translation>
    </message>
    <message>
        <source>drill depth %1</source>
        <translation>Bohrtiefe %1</translation>
    </message>
    <message>
        <source>thickness %1</source>
        <translation>Dicke %1</translation>
    </message>
    <message>
        <source>driver reaches in %1</source>
        <translation>Werkzeug reicht hinein %1</translation>
    </message>
    <message>
        <source>counterbore %1</source>
        <translation>Senkung %1</translation>
    </message>
    <message>
        <source>grip %1</source>
        <translation>Klemmdicke %1</translation>
    </message>
    <message>
        <source>bolt length %1</source>
        <translation>Schraubenlänge %1</translation>
    </message>
    <message>
        <source>runner back %1</source>
        <translation>Führung zurück %1</translation>
    </message>
    <message>
        <source>front height %1</source>
        <translation>Blendenhöhe %1</translation>
    </message>
    <message>
        <source>bottom at %1</source>
        <translation>Boden bei %1</translation>
    </message>
    <message>
        <source>runner to %1</source>
        <translation>Führung bis %1</translation>
    </message>
    <message>
        <source>play under the kicker %1</source>
        <translation>Spiel unter der Kippleiste %1</translation>
    </message>
    <message>
        <source>box height %1</source>
        <translation>Kastenhöhe %1</translation>
    </message>
</context>
</TS>
