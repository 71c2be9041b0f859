<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>a temperature from 30 to 270 °F (−1.1 to 132.2 °C), the range of the equation for the wood&apos;s moisture</source>
        <translation>eine Temperatur von 30 bis 270 °F (−1,1 bis 132,2 °C), der Gültigkeitsbereich der Gleichung für die Holzfeuchte</translation>
    </message>
    <message>
        <source>a relative humidity from 0 to 100 (per cent)</source>
        <translation>eine relative Luftfeuchte von 0 bis 100 (Prozent)</translation>
    </message>
    <message>
        <source>a moisture from 0 to 30 (per cent)</source>
        <translation>eine Holzfeuchte von 0 bis 30 (Prozent)</translation>
    </message>
    <message>
        <source>air in which wood has no less moisture than in the driest</source>
        <translation>Luft, in der Holz nicht weniger Feuchte hat als in der trockensten</translation>
    </message>
    <message>
        <source>a length greater than nothing</source>
        <translation>eine Länge größer als nichts</translation>
    </message>
    <message>
        <source>%1, %2</source>
        <translation>%1, %2</translation>
    </message>
    <message>
        <source>lengths in ascending order</source>
        <translation>Längen in aufsteigender Folge</translation>
    </message>
    <message>
        <source>a corner right of and above the other</source>
        <translation>eine Ecke rechts oberhalb der anderen</translation>
    </message>
    <message>
        <source>coefficients per 1 % of moisture, of 0.02 at most</source>
        <translation>Beiwerte je 1 % Holzfeuchte, höchstens 0,02</translation>
    </message>
    <message>
        <source>shrinkages of more than 0 and at most 40 (per cent)</source>
        <translation>Schwindmaße von mehr als 0 und höchstens 40 (Prozent)</translation>
    </message>
    <message>
        <source>a moisture from 15 to 40 (per cent)</source>
        <translation>eine Holzfeuchte von 15 bis 40 (Prozent)</translation>
    </message>
    <message>
        <source>entries of different ids</source>
        <translation>Einträge mit verschiedenen Kennzeichen</translation>
    </message>
    <message>
        <source>there is no preset &quot;%1&quot; for hardware</source>
        <translation>es gibt keine Vorgabe „%1“ für Beschläge</translation>
    </message>
    <message>
        <source>there is no preset &quot;%1&quot; for the edge profile</source>
        <translation>es gibt keine Vorgabe „%1“ für das Kantenprofil</translation>
    </message>
    <message>
        <source>there is no preset &quot;%1&quot; for the box</source>
        <translation>es gibt keine Vorgabe „%1“ für den Schubkasten</translation>
    </message>
    <message>
        <source>there is no preset &quot;%1&quot; for the mounting screws</source>
        <translation>es gibt keine Vorgabe „%1“ für die Befestigungsschrauben</translation>
    </message>
    <message>
        <source>name one that stands under &quot;presets&quot;, or write the value itself</source>
        <translation>eine nennen, die unter &quot;presets&quot; steht, oder den Wert selbst schreiben</translation>
    </message>
    <message>
        <source>nothing beside &quot;preset&quot; that the preset decides</source>
        <translation>neben &quot;preset&quot; nichts, was die Vorgabe bestimmt</translation>
    </message>
    <message>
        <source>expected one of &quot;size&quot;, &quot;share&quot; and &quot;graduated&quot;, found none</source>
        <translation>erwartet wird eines von &quot;size&quot;, &quot;share&quot; und &quot;graduated&quot;, gefunden wurde keines</translation>
    </message>
    <message>
        <source>expected one of &quot;size&quot;, &quot;share&quot; and &quot;graduated&quot;, found more</source>
        <translation>erwartet wird eines von &quot;size&quot;, &quot;share&quot; und &quot;graduated&quot;, gefunden wurden mehrere</translation>
    </message>
    <message>
        <source>true</source>
        <translation>true</translation>
    </message>
    <message>
        <source>expected &quot;columns&quot; or &quot;rows&quot;, found both</source>
        <translation>erwartet wird &quot;columns&quot; oder &quot;rows&quot;, gefunden wurde beides</translation>
    </message>
    <message>
        <source>more than %1 openings</source>
        <translation>mehr als %1 Öffnungen</translation>
    </message>
    <message>
        <source>expected at least two parts, found %1</source>
        <translation>erwartet werden mindestens zwei Teile, gefunden wurde %1</translation>
    </message>
    <message>
        <source>expected %1 widths of members between %2 parts, found %3</source>
        <translation>erwartete Anzahl der Rahmenteilbreiten zwischen %2 Teilen: %1; gefunden: %3</translation>
    </message>
    <message>
        <source>no size for the divisions as a whole</source>
        <translation>kein Maß für die Teilungen als Ganzes</translation>
    </message>
    <message>
        <source>expected &quot;step&quot; or &quot;ratio&quot;, found neither</source>
        <translation>erwartet wird &quot;step&quot; oder &quot;ratio&quot;, gefunden wurde keines</translation>
    </message>
    <message>
        <source>expected &quot;step&quot; or &quot;ratio&quot;, found both</source>
        <translation>erwartet wird &quot;step&quot; oder &quot;ratio&quot;, gefunden wurde beides</translation>
    </message>
    <message>
        <source>a number from 0.01 to 100 with at most six decimals</source>
        <translation>eine Zahl von 0.01 bis 100 mit höchstens sechs Nachkommastellen</translation>
    </message>
    <message>
        <source>a step no higher than the profile is deep</source>
        <translation>ein Absatz, der nicht höher ist als das Profil tief</translation>
    </message>
    <message>
        <source>expected an object { }, found %1</source>
        <translation>erwartet wird ein Objekt { }, gefunden wurde %1</translation>
    </message>
    <message>
        <source>expected &quot;format&quot;: &quot;%1&quot;, found none</source>
        <translation>erwartet wird &quot;format&quot;: &quot;%1&quot;, gefunden wurde nichts</translation>
    </message>
    <message>
        <source>expected &quot;format&quot;: &quot;%1&quot;, found %2</source>
        <translation>erwartet wird &quot;format&quot;: &quot;%1&quot;, gefunden wurde %2</translation>
    </message>
    <message>
        <source>expected &quot;version&quot;: &quot;%1&quot;, found none</source>
        <translation>erwartet wird &quot;version&quot;: &quot;%1&quot;, gefunden wurde nichts</translation>
    </message>
    <message>
        <source>expected &quot;version&quot;: &quot;%1&quot;, found %2</source>
        <translation>erwartet wird &quot;version&quot;: &quot;%1&quot;, gefunden wurde %2</translation>
    </message>
    <message>
        <source>the file has version %1, this program reads up to %2.x</source>
        <translation>die Datei hat Version %1, dieses Programm liest bis %2.x</translation>
    </message>
    <message>
        <source>open it with a newer Frontwright</source>
        <translation>mit einem neueren Frontwright öffnen</translation>
    </message>
    <message>
        <source>the end of the file</source>
        <translation>das Ende der Datei</translation>
    </message>
    <message>
        <source>the end of the line</source>
        <translation>das Ende der Zeile</translation>
    </message>
    <message>
        <source>a control character</source>
        <translation>ein Steuerzeichen</translation>
    </message>
    <message>
        <source>line %1, column %2</source>
        <translation>Zeile %1, Spalte %2</translation>
    </message>
    <message>
        <source>line %1, column %2 (%3)</source>
        <translation>Zeile %1, Spalte %2 (%3)</translation>
    </message>
    <message>
        <source>the file is larger than %1 MiB</source>
        <translation>die Datei ist größer als %1 MiB</translation>
    </message>
    <message>
        <source>expected &apos;{&apos;, found a byte-order mark</source>
        <translation>erwartet wird &apos;{&apos;, gefunden wurde eine Bytereihenfolge-Marke</translation>
    </message>
    <message>
        <source>save the file as UTF-8 without a byte-order mark</source>
        <translation>die Datei als UTF-8 ohne Bytereihenfolge-Marke speichern</translation>
    </message>
    <message>
        <source>expected UTF-8 text, found a byte that is not</source>
        <translation>erwartet wird Text in UTF-8, gefunden wurde ein Byte, das keiner ist</translation>
    </message>
    <message>
        <source>save the file as UTF-8</source>
        <translation>die Datei als UTF-8 speichern</translation>
    </message>
    <message>
        <source>null</source>
        <translation>null</translation>
    </message>
    <message>
        <source>true or false</source>
        <translation>true oder false</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>a text in double quotes</source>
        <translation>ein Text in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>a list [ ]</source>
        <translation>eine Liste [ ]</translation>
    </message>
    <message>
        <source>an object { }</source>
        <translation>ein Objekt { }</translation>
    </message>
    <message>
        <source>a name</source>
        <translation>ein Name</translation>
    </message>
    <message>
        <source>presets of different names</source>
        <translation>Vorgaben mit verschiedenen Namen</translation>
    </message>
    <message>
        <source>8, 16, 32 or 64</source>
        <translation>8, 16, 32 oder 64</translation>
    </message>
    <message>
        <source>a length such as &quot;12 5/8 in&quot; or &quot;320 mm&quot;</source>
        <translation>eine Länge wie &quot;12 5/8 in&quot; oder &quot;320 mm&quot;</translation>
    </message>
    <message>
        <source>a fit such as &quot;overlay 1/4 in&quot;, &quot;gap 1/8 in&quot; or &quot;inset 2 mm&quot;</source>
        <translation>eine Lage wie &quot;overlay 1/4 in&quot;, &quot;gap 1/8 in&quot; oder &quot;inset 2 mm&quot;</translation>
    </message>
    <message>
        <source>expected %1, found %2 (%3)</source>
        <translation>erwartet wird %1, gefunden wurde %2 (%3)</translation>
    </message>
    <message>
        <source>%1 or %2</source>
        <translation>%1 oder %2</translation>
    </message>
    <message>
        <source>expected %1, found %2</source>
        <translation>erwartet wird %1, gefunden wurde %2</translation>
    </message>
    <message>
        <source>a length that is not negative</source>
        <translation>eine Länge, die nicht negativ ist</translation>
    </message>
    <message>
        <source>a weight such as &quot;25 lb&quot; or &quot;11.3 kg&quot;</source>
        <translation>ein Gewicht wie &quot;25 lb&quot; oder &quot;11.3 kg&quot;</translation>
    </message>
    <message>
        <source>a specific gravity from 0.05 to 1.5 and its basis, such as &quot;0.5 at-12-percent&quot;, &quot;0.45 green&quot; or &quot;0.53 ovendry&quot;</source>
        <translation>eine Dichtezahl von 0.05 bis 1.5 und ihr Bezug, etwa &quot;0.5 at-12-percent&quot;, &quot;0.45 green&quot; oder &quot;0.53 ovendry&quot;</translation>
    </message>
    <message>
        <source>a number that is not negative, of at most six decimals</source>
        <translation>eine Zahl, die nicht negativ ist, mit höchstens sechs Nachkommastellen</translation>
    </message>
    <message>
        <source>a side, a depth and a diameter such as &quot;left 6 in reach 1 in&quot;</source>
        <translation>eine Seite, eine Tiefe und ein Durchmesser wie &quot;left 6 in reach 1 in&quot;</translation>
    </message>
    <message>
        <source>a number of per cent that is not negative, of at most three decimals</source>
        <translation>eine Prozentzahl, die nicht negativ ist, mit höchstens drei Nachkommastellen</translation>
    </message>
    <message>
        <source>a temperature such as &quot;20 °C&quot; or &quot;70.5 °F&quot;</source>
        <translation>eine Temperatur wie &quot;20 °C&quot; oder &quot;70.5 °F&quot;</translation>
    </message>
    <message>
        <source>each side only once</source>
        <translation>jede Seite nur einmal</translation>
    </message>
    <message>
        <source>a whole number from %1 to %2</source>
        <translation>eine ganze Zahl von %1 bis %2</translation>
    </message>
    <message>
        <source>unknown member &quot;%1&quot;</source>
        <translation>unbekannter Eintrag &quot;%1&quot;</translation>
    </message>
    <message>
        <source>expected a member &quot;%1&quot;, found none</source>
        <translation>erwartet wird ein Eintrag &quot;%1&quot;, gefunden wurde keiner</translation>
    </message>
    <message>
        <source>a point such as [&quot;1 in&quot;, &quot;2 in&quot;]</source>
        <translation>ein Punkt wie [&quot;1 in&quot;, &quot;2 in&quot;]</translation>
    </message>
    <message>
        <source>no side beside &quot;all&quot;</source>
        <translation>keine Seite neben &quot;all&quot;</translation>
    </message>
    <message>
        <source>a kind that can stand at that side of a case</source>
        <translation>eine Art, die an dieser Seite eines Korpus stehen kann</translation>
    </message>
    <message>
        <source>a length of 1 mm at least, more than the holes&apos; diameter</source>
        <translation>eine Länge von mindestens 1 mm, mehr als der Durchmesser der Bohrungen</translation>
    </message>
    <message>
        <source>the number is out of range</source>
        <translation>die Zahl ist zu groß oder zu klein</translation>
    </message>
    <message>
        <source>expected both halves of a character, found a lone surrogate escape</source>
        <translation>erwartet werden beide Hälften eines Zeichens, gefunden wurde eine einzelne</translation>
    </message>
    <message>
        <source>a value</source>
        <translation>ein Wert</translation>
    </message>
    <message>
        <source>a member&apos;s name in double quotes</source>
        <translation>der Name eines Eintrags in doppelten Anführungszeichen</translation>
    </message>
    <message>
        <source>&apos;:&apos; after the member&apos;s name</source>
        <translation>&apos;:&apos; nach dem Namen des Eintrags</translation>
    </message>
    <message>
        <source>&apos;,&apos; or &apos;}&apos;</source>
        <translation>&apos;,&apos; oder &apos;}&apos;</translation>
    </message>
    <message>
        <source>&apos;,&apos; or &apos;]&apos;</source>
        <translation>&apos;,&apos; oder &apos;]&apos;</translation>
    </message>
    <message>
        <source>the closing &apos;&quot;&apos; of a text</source>
        <translation>das schließende &apos;&quot;&apos; eines Textes</translation>
    </message>
    <message>
        <source>a digit after the decimal point</source>
        <translation>eine Ziffer nach dem Dezimalpunkt</translation>
    </message>
    <message>
        <source>a digit after the exponent&apos;s &apos;e&apos;</source>
        <translation>eine Ziffer nach dem &apos;e&apos; des Exponenten</translation>
    </message>
    <message>
        <source>expected four hexadecimal digits after \u</source>
        <translation>erwartet werden vier hexadezimale Ziffern nach \u</translation>
    </message>
    <message>
        <source>unknown escape in a text</source>
        <translation>unbekanntes Zeichen nach \ in einem Text</translation>
    </message>
    <message>
        <source>expected plain text, found a control character</source>
        <translation>erwartet wird einfacher Text, gefunden wurde ein Steuerzeichen</translation>
    </message>
    <message>
        <source>expected the end of the file, found %1</source>
        <translation>erwartet wird das Ende der Datei, gefunden wurde %1</translation>
    </message>
    <message>
        <source>the text is longer than %1 bytes</source>
        <translation>der Text ist länger als %1 Byte</translation>
    </message>
    <message>
        <source>lists and objects lie more than %1 deep</source>
        <translation>Listen und Objekte liegen mehr als %1 tief ineinander</translation>
    </message>
    <message>
        <source>the member &quot;%1&quot; stands twice</source>
        <translation>der Eintrag &quot;%1&quot; steht zweimal da</translation>
    </message>
    <message>
        <source>take one of them out</source>
        <translation>einen davon herausnehmen</translation>
    </message>
    <message>
        <source>the file has version %1, which leads to version %2 by no known way</source>
        <translation>die Datei hat Version %1, von der kein bekannter Weg zu Version %2 führt</translation>
    </message>
</context>
</TS>
