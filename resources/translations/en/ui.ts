<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>frontwright::Announcer</name>
    <message numerus="yes">
        <source>%n fronts selected</source>
        <translation>
            <numerusform>%n front selected</numerusform>
            <numerusform>%n fronts selected</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>frontwright::PartDrag</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation>
            <numerusform>and %n more</numerusform>
            <numerusform>and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>frontwright::RulesDialog</name>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation>
            <numerusform>%n rule</numerusform>
            <numerusform>%n rules</numerusform>
        </translation>
    </message>
</context>
</TS>
