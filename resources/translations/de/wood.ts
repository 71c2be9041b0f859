<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>the air&apos;s temperature, %1, is outside %2 to %3, the range of the equation for the wood&apos;s moisture</source>
        <translation>die Temperatur der Luft von %1 liegt nicht zwischen %2 und %3, dem Bereich der Gleichung für die Holzfeuchte</translation>
    </message>
    <message>
        <source>give the temperature of the room, or read the wood with a moisture meter</source>
        <translation>die Temperatur des Raums angeben oder das Holz mit einem Feuchtemesser messen</translation>
    </message>
    <message>
        <source>the relative humidity, %1 %, is outside 0 to 100 %</source>
        <translation>die relative Luftfeuchte von %1 % liegt nicht zwischen 0 und 100 %</translation>
    </message>
    <message>
        <source>the wood&apos;s moisture, %1 %, is outside 0 to 30 %, between which wood shrinks and swells</source>
        <translation>die Holzfeuchte von %1 % liegt nicht zwischen 0 und 30 %, wo Holz quillt und schwindet</translation>
    </message>
    <message>
        <source>let the wood dry, then measure again</source>
        <translation>das Holz trocknen lassen, dann noch einmal messen</translation>
    </message>
    <message>
        <source>when cut</source>
        <translation>beim Zuschnitt</translation>
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
        <source>wood in the driest air would have %1 % moisture, more than in the wettest, %2 %</source>
        <translation>Holz hätte in der trockensten Luft %1 % Feuchte, mehr als in der feuchtesten mit %2 %</translation>
    </message>
    <message>
        <source>exchange the two</source>
        <translation>die beiden vertauschen</translation>
    </message>
</context>
</TS>
