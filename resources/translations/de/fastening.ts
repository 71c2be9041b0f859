<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>there is no wood screw &quot;%1&quot; in the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose one of the catalogue&apos;s or add your own</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
