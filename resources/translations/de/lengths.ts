<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>the text has more than 64 characters</source>
        <translation>der Text hat mehr als 64 Zeichen</translation>
    </message>
    <message>
        <source>write the length shorter</source>
        <translation>die Länge kürzer schreiben</translation>
    </message>
    <message>
        <source>the text is not UTF-8 here</source>
        <translation>hier ist der Text kein UTF-8</translation>
    </message>
    <message>
        <source>type the length again</source>
        <translation>die Länge neu eintippen</translation>
    </message>
    <message>
        <source>position %1</source>
        <translation>Stelle %1</translation>
    </message>
    <message>
        <source>the length is beyond 1000 m</source>
        <translation>die Länge liegt jenseits von 1000 m</translation>
    </message>
    <message>
        <source>write a shorter length</source>
        <translation>ein kürzeres Maß schreiben</translation>
    </message>
    <message>
        <source>expected a length, found nothing</source>
        <translation>erwartet wird ein Maß, gefunden wurde nichts</translation>
    </message>
    <message>
        <source>write one, such as 12 5/8 in or 321 mm</source>
        <translation>eines schreiben, etwa 12 5/8 in oder 321 mm</translation>
    </message>
    <message>
        <source>&quot;)&quot;</source>
        <translation>„)“</translation>
    </message>
    <message>
        <source>close the bracket</source>
        <translation>die Klammer schließen</translation>
    </message>
    <message>
        <source>what stands in the bracket has a unit already</source>
        <translation>was in der Klammer steht, hat schon eine Einheit</translation>
    </message>
    <message>
        <source>leave this one out</source>
        <translation>diese weglassen</translation>
    </message>
    <message>
        <source>inches after feet</source>
        <translation>eine Angabe in Zoll nach den Fuß</translation>
    </message>
    <message>
        <source>write their unit, as in 12 ft 2 in</source>
        <translation>ihre Einheit schreiben, wie in 12 ft 2 in</translation>
    </message>
    <message>
        <source>write 12&apos;-2&quot; for feet and inches, or a space on both sides to subtract</source>
        <translation>12&apos;-2&quot; für Fuß und Zoll schreiben, oder zum Abziehen auf beiden Seiten ein Leerzeichen</translation>
    </message>
    <message>
        <source>feet before inches must be a whole number</source>
        <translation>Fuß vor Zoll müssen eine ganze Zahl sein</translation>
    </message>
    <message>
        <source>write whole feet, as in 12 ft 2 1/2 in</source>
        <translation>ganze Fuß schreiben, wie in 12 ft 2 1/2 in</translation>
    </message>
    <message>
        <source>inches after feet must be fewer than 12</source>
        <translation>nach Fuß müssen es weniger als 12 Zoll sein</translation>
    </message>
    <message>
        <source>carry them into the feet, or join the two by +</source>
        <translation>sie zu den Fuß schlagen oder beide mit + verbinden</translation>
    </message>
    <message>
        <source>+, -, *, / or the end</source>
        <translation>+, -, *, / oder das Ende</translation>
    </message>
    <message>
        <source>a unit, +, -, *, / or the end</source>
        <translation>eine Einheit, +, -, *, / oder das Ende</translation>
    </message>
    <message>
        <source>the units are in, ft, mm, cm and m</source>
        <translation>die Einheiten sind in, ft, mm, cm und m</translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation>das weglassen</translation>
    </message>
    <message>
        <source>write the unit last, as in 12 5/8 in, and + or - between lengths</source>
        <translation>die Einheit zuletzt schreiben, wie in 12 5/8 in, und zwischen Maßen + oder -</translation>
    </message>
    <message>
        <source>write a fraction without spaces, as in 12 5/8</source>
        <translation>einen Bruch ohne Leerzeichen schreiben, wie in 12 5/8</translation>
    </message>
    <message>
        <source>the denominator is 0</source>
        <translation>der Nenner ist 0</translation>
    </message>
    <message>
        <source>write one of at least 1</source>
        <translation>einen von mindestens 1 schreiben</translation>
    </message>
    <message>
        <source>write %1 for a mixed number, or a space on both sides to subtract</source>
        <translation>%1 für eine gemischte Zahl schreiben, oder zum Abziehen auf beiden Seiten ein Leerzeichen</translation>
    </message>
    <message>
        <source>the fraction of a mixed number must be less than 1</source>
        <translation>der Bruch einer gemischten Zahl muss kleiner als 1 sein</translation>
    </message>
    <message>
        <source>write a sum or a subtraction with spaces, as in 12 + 5/4</source>
        <translation>eine Summe oder Differenz mit Leerzeichen schreiben, wie in 12 + 5/4</translation>
    </message>
    <message>
        <source>the number is too long to be computed exactly</source>
        <translation>die Zahl ist zu lang, um genau gerechnet zu werden</translation>
    </message>
    <message>
        <source>write fewer digits</source>
        <translation>weniger Ziffern schreiben</translation>
    </message>
    <message>
        <source>a number</source>
        <translation>eine Zahl</translation>
    </message>
    <message>
        <source>write a length there, such as 12 5/8 in or 321 mm</source>
        <translation>dort ein Maß schreiben, etwa 12 5/8 in oder 321 mm</translation>
    </message>
    <message>
        <source>the length is not a whole number of nanometres</source>
        <translation>das Maß ist keine ganze Zahl von Nanometern</translation>
    </message>
    <message>
        <source>write %1 mm, the nearest that can be kept</source>
        <translation>%1 mm schreiben, das nächste, das sich speichern lässt</translation>
    </message>
    <message>
        <source>expected a plain length, found a sum</source>
        <translation>erwartet wird ein einfaches Maß, gefunden wurde eine Summe</translation>
    </message>
    <message>
        <source>write its result, such as 12 5/8 in or 321 mm</source>
        <translation>ihr Ergebnis schreiben, etwa 12 5/8 in oder 321 mm</translation>
    </message>
    <message>
        <source>expected a unit, found the end</source>
        <translation>erwartet wird eine Einheit, gefunden wurde das Ende</translation>
    </message>
    <message>
        <source>write in, ft, mm, cm or m</source>
        <translation>in, ft, mm, cm oder m schreiben</translation>
    </message>
    <message>
        <source>the numbers are too long to be computed exactly</source>
        <translation>die Zahlen sind zu lang, um genau gerechnet zu werden</translation>
    </message>
    <message>
        <source>a length times a length is an area, not a length</source>
        <translation>ein Maß mal ein Maß ist eine Fläche, keine Länge</translation>
    </message>
    <message>
        <source>multiply by a plain number</source>
        <translation>mit einer einfachen Zahl malnehmen</translation>
    </message>
    <message>
        <source>what is divided by a length is no length</source>
        <translation>was durch ein Maß geteilt wird, ist keine Länge</translation>
    </message>
    <message>
        <source>divide by a plain number; write a fraction without spaces, as in 3/4 in</source>
        <translation>durch eine einfache Zahl teilen; einen Bruch ohne Leerzeichen schreiben, wie in 3/4 in</translation>
    </message>
    <message>
        <source>the divisor is 0</source>
        <translation>der Teiler ist 0</translation>
    </message>
    <message>
        <source>divide by another number</source>
        <translation>durch eine andere Zahl teilen</translation>
    </message>
    <message>
        <source>the end</source>
        <translation>das Ende</translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation>„%1“</translation>
    </message>
    <message>
        <source>expected %1, found %2</source>
        <translation>erwartet wird %1, gefunden wurde %2</translation>
    </message>
    <message>
        <source>this hyphen has a space on one side only</source>
        <translation>dieser Bindestrich hat nur auf einer Seite ein Leerzeichen</translation>
    </message>
    <message>
        <source>the number has more than 18 digits</source>
        <translation>die Zahl hat mehr als 18 Ziffern</translation>
    </message>
    <message>
        <source>the number has two decimal marks</source>
        <translation>die Zahl hat zwei Dezimalzeichen</translation>
    </message>
    <message>
        <source>leave digits ungrouped, as in 1234.5</source>
        <translation>Ziffern nicht gruppieren, wie in 1234,5</translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways</source>
        <translation>„%1“ lässt sich auf zwei Arten lesen</translation>
    </message>
    <message>
        <source>write %1 or %2</source>
        <translation>%1 oder %2 schreiben</translation>
    </message>
</context>
</TS>
