<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>there is no wood screw &quot;%1&quot; in the catalogue</source>
        <translation>im Katalog gibt es keine Holzschraube „%1“</translation>
    </message>
    <message>
        <source>choose one of the catalogue&apos;s or add your own</source>
        <translation>im Katalog wählen oder einen eigenen Eintrag hinzufügen</translation>
    </message>
</context>
</TS>
