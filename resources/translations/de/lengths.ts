<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>the text has more than 64 characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write the length shorter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the text is not UTF-8 here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>type the length again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>position %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is beyond 1000 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a shorter length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a length, found nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write one, such as 12 5/8 in or 321 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;)&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>close the bracket</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what stands in the bracket has a unit already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave this one out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches after feet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write their unit, as in 12 ft 2 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write 12&apos;-2&quot; for feet and inches, or a space on both sides to subtract</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>feet before inches must be a whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write whole feet, as in 12 ft 2 1/2 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches after feet must be fewer than 12</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry them into the feet, or join the two by +</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+, -, *, / or the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a unit, +, -, *, / or the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the units are in, ft, mm, cm and m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write the unit last, as in 12 5/8 in, and + or - between lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a fraction without spaces, as in 12 5/8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the denominator is 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write one of at least 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write %1 for a mixed number, or a space on both sides to subtract</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fraction of a mixed number must be less than 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a sum or a subtraction with spaces, as in 12 + 5/4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number is too long to be computed exactly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write fewer digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a length there, such as 12 5/8 in or 321 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the length is not a whole number of nanometres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write %1 mm, the nearest that can be kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a plain length, found a sum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write its result, such as 12 5/8 in or 321 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected a unit, found the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write in, ft, mm, cm or m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the numbers are too long to be computed exactly</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a length times a length is an area, not a length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>multiply by a plain number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is divided by a length is no length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>divide by a plain number; write a fraction without spaces, as in 3/4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the divisor is 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>divide by another number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot;</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>expected %1, found %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this hyphen has a space on one side only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number has more than 18 digits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the number has two decimal marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leave digits ungrouped, as in 1234.5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&quot;%1&quot; can be read in two ways</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write %1 or %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
