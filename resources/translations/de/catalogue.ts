<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>10-24 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3.5 mm countersunk wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 mm countersunk wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4.5 mm countersunk wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6-32 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8-32 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8-32 truss head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>American basswood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>American beech</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black cherry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Black walnut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Butternut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centre runner</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Coast Douglas-fir</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cup pull, 3 in between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cup pull, 64 mm between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eastern white pine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Heated home in mid-Sweden</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoors, damp southern coast of the United States</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoors, dry southwest of the United States</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Indoors, most of the United States</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M3 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M4 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M5 pan head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. 10 flat-head wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. 12 flat-head wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. 4 flat-head wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. 6 flat-head wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No. 8 flat-head wood screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Northern red oak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ponderosa pine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull, 128 mm between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull, 160 mm between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull, 3 in between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull, 4 in between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pull, 96 mm between centres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quaking aspen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Red alder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Red maple (soft)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ring pull on a 50 mm backplate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round knob on a 1 1/2 in backplate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round knob, 1 1/4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round knob, 32 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side-mounted metal runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Silver maple (soft)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sugar maple (hard)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweet birch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sweetgum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Teak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>True mahogany</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under-mounted runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Western redcedar</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White ash</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White fir</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>White oak</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wooden runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yellow birch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yellow-poplar</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
