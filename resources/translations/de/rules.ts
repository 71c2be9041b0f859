<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>published</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the maker&apos;s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Equations and fixed values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How each number follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits that the maker can change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What a new case begins with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program&apos;s catalogue</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
