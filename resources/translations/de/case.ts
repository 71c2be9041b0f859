<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>%1 of row %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of column %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the case</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
