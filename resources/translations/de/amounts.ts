<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>&quot;%1&quot; is not a weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write it like 25 lb, 11.3 kg or 500 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; is more than 100 000 kg</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
