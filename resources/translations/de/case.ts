<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>frontwright</name>
    <message>
        <source>1 member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 members</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 fixed size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fixed sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a size or a share is not more than 0, or a member is negative</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give every opening a size over 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 take %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is left over: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let one of the sizes be a share</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of room is missing: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make the case larger or a size smaller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>divisions lie more than %1 deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of row %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of column %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a frame member is narrower than 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>give it a width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of height is missing: the frame leaves nothing open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of width is missing: the frame leaves nothing open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make the case larger or its frame narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of the case</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
