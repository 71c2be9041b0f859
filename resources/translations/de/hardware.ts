<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>choose one of the catalogue&apos;s or add your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no handle &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no bolt &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through wall and front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front only, counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front only, access hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fasten the front to its box first, then drill front and wall together from the show face, with scrap behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill and counterbore, and put the bolts in, before the front goes on; scrap behind.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drill the front before it goes on, with scrap behind; the wall has access holes.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
