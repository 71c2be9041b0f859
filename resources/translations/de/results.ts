<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>%1; %2</source>
        <translation>%1; %2</translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation>%1: %2</translation>
    </message>
    <message>
        <source>%1: %2; %3</source>
        <translation>%1: %2; %3</translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation>allgemeine Praxis, ohne Quelle</translation>
    </message>
    <message>
        <source>as the maker decided</source>
        <translation>wie vom Möbelbauer entschieden</translation>
    </message>
</context>
</TS>
