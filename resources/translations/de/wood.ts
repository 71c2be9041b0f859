<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>the air&apos;s temperature, %1, is outside %2 to %3, the range of the equation for the wood&apos;s moisture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give the temperature of the room, or read the wood with a moisture meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the relative humidity, %1 %, is outside 0 to 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wood&apos;s moisture, %1 %, is outside 0 to 30 %, between which wood shrinks and swells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let the wood dry, then measure again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>when cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wettest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wood in the driest air would have %1 % moisture, more than in the wettest, %2 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>exchange the two</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
