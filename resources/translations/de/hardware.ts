<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>choose one of the catalogue&apos;s or add your own</source>
        <translation>im Katalog wählen oder einen eigenen Eintrag hinzufügen</translation>
    </message>
    <message>
        <source>there is no handle &quot;%1&quot; in the catalogue</source>
        <translation>im Katalog gibt es keinen Griff „%1“</translation>
    </message>
    <message>
        <source>there is no bolt &quot;%1&quot; in the catalogue</source>
        <translation>im Katalog gibt es keine Gewindeschraube „%1“</translation>
    </message>
    <message>
        <source>there is no fitting &quot;%1&quot; in the catalogue</source>
        <translation>im Katalog gibt es keinen Beschlag „%1“</translation>
    </message>
    <message>
        <source>there is no wood screw &quot;%1&quot; in the catalogue</source>
        <translation>im Katalog gibt es keine Holzschraube „%1“</translation>
    </message>
    <message>
        <source>through wall and front</source>
        <translation>durch Vorderstück und Blende</translation>
    </message>
    <message>
        <source>front only, counterbore</source>
        <translation>nur Blende, zylindrische Senkung</translation>
    </message>
    <message>
        <source>front only, access hole</source>
        <translation>nur Blende, Zugangsbohrung</translation>
    </message>
    <message>
        <source>in the front only</source>
        <translation>nur in der Blende</translation>
    </message>
    <message>
        <source>in the front only, head in a counterbore</source>
        <translation>nur in der Blende, Kopf in zylindrischer Senkung</translation>
    </message>
    <message>
        <source>in the front only, reached through an access hole</source>
        <translation>nur in der Blende, erreichbar durch eine Zugangsbohrung</translation>
    </message>
    <message>
        <source>Drill the front, with scrap behind, and put the bolts in before it goes on.</source>
        <translation>Die Blende mit Abfallholz dahinter bohren und die Gewindeschrauben einsetzen, bevor sie angebracht wird.</translation>
    </message>
    <message>
        <source>Fasten the front to its box first, then drill front and wall together from the show face, with scrap behind.</source>
        <translation>Zuerst die Blende am Schubkasten befestigen, dann Blende und Vorderstück zusammen von der Sichtseite bohren, mit Abfallholz dahinter.</translation>
    </message>
    <message>
        <source>Drill and counterbore, and put the bolts in, before the front goes on; scrap behind.</source>
        <translation>Bohren, senken und die Gewindeschrauben einsetzen, bevor die Blende angebracht wird; Abfallholz dahinter.</translation>
    </message>
    <message>
        <source>Drill the front before it goes on, with scrap behind; the wall has access holes.</source>
        <translation>Die Blende bohren, bevor sie angebracht wird, mit Abfallholz dahinter; das Vorderstück hat Zugangsbohrungen.</translation>
    </message>
</context>
</TS>
