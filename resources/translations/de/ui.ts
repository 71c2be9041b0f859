<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="de" sourcelanguage="en">
<context>
    <name>Reveals</name>
    <message>
        <source>left of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>right of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>below %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>above %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between %1 and %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between fronts: every reveal is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the case&apos;s edge: every reveal is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round inset fronts: every gap is %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Between fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At the case&apos;s edge: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round inset fronts: smallest %1 (%2), largest %3 (%4); they differ by %5.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>smallest %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>largest %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>WoodForm</name>
    <message>
        <source>Wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose solid or stable stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Solid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stable (plywood and the like)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat-sawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Quarter-sawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn the grain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the length: the height moves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Along the height: the width moves</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright</name>
    <message>
        <source>Left stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divider right of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail above %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divider</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw hole %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle hole %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 wide, %2 long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 from the left, %2 from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 × %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Purpose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose what the drawer is for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Household, 15 lb/ft² of bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clothing, 8.5 lb/ft³</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>School or laboratory, 100 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is counted on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Own load, e.g. 25 lb</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the drawer&apos;s load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the runners ask</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance at each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what the opening leaves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Groove above lower edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom panel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the mounting screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the mounting screw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest stocked that fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head recessed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter of the recess tool</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the screw pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Four corners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Six</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>placed where allowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the box&apos;s sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lower row, from below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper row, from the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the wood asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the screw asks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set case width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set case height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grid of sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit of the document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the document&apos;s unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the findings judge by. The defaults are common practice without a published source; test on scrap.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least penetration</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least tip cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Screw head to bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wall under a screw head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least wood under a bolt head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Room round a bolt head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least gap between fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood between holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change how the front fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlay</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>… by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change an overlay or gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set opening width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps its width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set opening height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keeps its height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit of the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set front thickness</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Square</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eased</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chamfer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bevelled and raised</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width into the face</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth at the edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Step (raised)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle and bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance from the top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two on fronts wider than</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>always one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>supplied or stocked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counterbore depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the way needs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counterbore diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head and room round it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Access hole diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thickness and wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood and air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choice from the catalogue</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::AirForm</name>
    <message>
        <source>&amp;Follow the wood through the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wettest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ordinary air indoors</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When &amp;cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wettest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As given below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the wood through the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Forget the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the room&apos;s air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>⚠ Not taken: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::AirStateRow</name>
    <message>
        <source>%1: temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: relative humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: moisture meter&apos;s reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: told by air or by a moisture meter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>°F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: unit of temperature</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Relative humidity of the air, 0 to 100 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The wood&apos;s moisture as the meter reads it, 0 to 30 %</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::Announcer</name>
    <message>
        <source>Nothing is selected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n fronts selected</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Nothing to heed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 would ruin a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 will not work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 outside good practice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 to know</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::AskActions</name>
    <message>
        <source>Why this &amp;number?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell how the size of what is selected came about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::BankActions</name>
    <message>
        <source>&amp;Bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the bank&apos;s &amp;divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy how the bank of the selected opening is divided, to paste it elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divide each selected opening like the copied bank; a bank that is selected whole is replaced</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paste divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat the ba&amp;nk…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw the bank several times, side by side in its place</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select the whole &amp;bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select every front of the selected fronts&apos; banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M&amp;irror the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange left and right in the whole case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror this par&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Exchange left and right in the smallest part with columns that holds the selection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror a part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat the bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many banks, with the present one?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::CalibrationDialog</name>
    <message>
        <source>Measured length of bar A</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured length of bar B</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Compare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a&amp;gain without correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test page for %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Landscape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outcome</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell-tale sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Orientation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar &amp;A, across the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar &amp;B, up the page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>× %1 across, × %2 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print the test page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print the page that proves it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar A should be %1, bar B %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This printer and paper were never checked. Print the test page; nothing on it is corrected. %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last checked %1. Print the page again to prove that it still holds. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corrected %1. Print once more to prove it. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed. Measure both bars from outer tick to outer tick, with a steel rule, and type the lengths.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type both measured lengths first; each is above zero.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is no printer&apos;s mechanics, so nothing was stored. Likeliest: %1. %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>That is more than a printer&apos;s mechanics err, so nothing was stored. No size in the table fits: measure once more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both bars are right: this printer and paper need no correction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The correction %1 is kept. Print once more to prove it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Proved: both bars are right with the correction %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With the correction the bars are still off by more than %1: something changed between the two prints. The correction was taken back; begin again with the test page.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::CardDialog</name>
    <message>
        <source>Size of this screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a bank card, or any card of that size, against the screen and make the outline fit it. Arrow keys change its width by one pixel.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the card on the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From your eye to the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write a distance from 100 mm to 10 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Width of the card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From your &amp;eye to the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 pixels wide, %2 for each millimetre</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::CardOutline</name>
    <message>
        <source>Outline of a card</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>85.60 mm × 53.98 mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::CaseFile</name>
    <message>
        <source>Copy of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New case</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::CentralArea</name>
    <message>
        <source>Reveals ×1&amp;0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dra&amp;wing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the drawing with its dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the fronts as they will look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawin&amp;g and look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show both side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the look with every reveal ten times as wide</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::EditActions</name>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take back the last step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do again what was taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into &amp;rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the opening into two, one above the other; type a number for as many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into &amp;columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the opening into two, side by side; type a number for as many</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into several r&amp;ows…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the opening into as many rows as you say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into several co&amp;lumns…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the opening into as many columns as you say</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Join openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make one opening of those selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join openings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove &amp;member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the member away; what was on both sides becomes one opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cop&amp;y the bank&apos;s divisions here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divide the last selected opening like the bank of the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make &amp;heights equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the selected openings of a bank the same height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make &amp;widths equal</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the selected openings of a row the same width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Graduate the bank…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make each drawer deeper than the one above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;End graduation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the present sizes, but let each be changed by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>End graduation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loc&amp;k or free the height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked opening keeps its height while others change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock or &amp;free the width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A locked opening keeps its width while others change</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;all fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select every front of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ca&amp;talogue…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add, change and remove screws, bolts, handles, runners and woods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into rows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split into columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split the opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many rows?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many columns?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy the bank&apos;s divisions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graduate the bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Free the size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock the size</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::ElevationView</name>
    <message>
        <source>Click to type this size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag to move. Double-click to type its width. Tab: what else is here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag %1; Shift moves those down the bank along. Click, then arrow keys nudge it and Enter types its height.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click to select; Shift-click to add. Double-click to type a size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sizes lie on a grid of %1; set a finer grid for the case to move less.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge mounting hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nudge handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove mounting hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Selected: %1. Arrow keys nudge it, Enter types its height, Shift+Enter its place across, Delete takes a hole away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Elevation of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys walk from front to front, Tab cycles through what lies under the pointer, Enter types a size.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::EntryTable</name>
    <message>
        <source>&amp;Remove own entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a catalogue entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 (own)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a catalogue entry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a catalogue entry</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::FileActions</name>
    <message>
        <source>&amp;New case…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a case from a few numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a case file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the case to its file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the case under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the start page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No case was opened yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case can&apos;t be made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case files (*.%1);;All files (*)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sample %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The sample can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case can&apos;t be closed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case was not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the case as</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case files (*.%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>my-case</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::FileQuestions</name>
    <message>
        <source>Open elsewhere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is open in another window (process %2 on %3). Only one of them may save it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a &amp;copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Read only</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Changed outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 was changed by something else since it was opened here. Saving would replace that version.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Replace it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the changes to %1?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not found</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 is no longer there. Take it off the list of recent cases?</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::FindingsPanel</name>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How grave</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason and rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reason and remedies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every screw, bolt and front was checked against the limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a finding to see its place, its reason and what cures it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why: %1

Rule: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this number: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::Fold</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>closed</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::GraduateDialog</name>
    <message>
        <source>Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Graduate the bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By a step: each is deeper by the same length</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By a ratio: each is deeper by the same part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of graduation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The top drawer is the shallowest, the bottom drawer the deepest.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::Help</name>
    <message>
        <source>&amp;Help on this</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the help at what is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open the help at its beginning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mouse and keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What mouse and keys do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words of the &amp;trade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the words mean, each with a drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It came out at the &amp;wrong size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When a check bar is not 100 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rules and their sources…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every rule, its value and where it is from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;autions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Before you cut and drill</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::HelpBrowser</name>
    <message>
        <source>Help page</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::HelpWindow</name>
    <message>
        <source>Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contents</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Forward</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was found. Try another word.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Places found: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::LanguageMenu</name>
    <message>
        <source>La&amp;nguage</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;As the desktop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program speaks this language from its next start on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frontwright changes its language when it is started again</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::LengthField</name>
    <message>
        <source>Exactly %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A length is wanted, such as 12 5/8 or 321 mm</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::LookPanel</name>
    <message>
        <source>Re&amp;veals ×10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show every reveal ten times as wide, to compare them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size on the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoomed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Real size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As seen from %1 m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Screen…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit a card to the screen, so that sizes on it are real</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Si&amp;ze</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reveals in words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 of its size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, if the screen tells its size rightly. Fit a card to it to be sure.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::LookView</name>
    <message>
        <source>The fronts as they will look</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrow keys walk from front to front; plus and minus zoom, 0 fits the case.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::MainWindow</name>
    <message>
        <source>&amp;Selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ways to hold it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;ood and air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;teps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;ection</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Steps that can be taken back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case as it was opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Templates at full size…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at the drilling templates, save them as PDF or print them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close the window</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Panels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or hide the panel “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frontwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] (read only) – Frontwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1[*] – Frontwright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fronts selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1: %2 × %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::MemberDrag</name>
    <message>
        <source> · equal sizes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> · in line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snapping is suspended while Alt is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a distance to move by exactly that. Alt suspends snapping. Esc puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change stile width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change rail width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move stile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move rail</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::NewCaseDialog</name>
    <message>
        <source>Width of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the frame&apos;s stiles and rails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the members between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Banks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawers in each bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlay or gap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlay: cover the members by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gap first: leave between fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Inset: leave round each front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the fronts fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Width, outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Height, outside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Depth, inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Frame: stiles and rails</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>M&amp;embers between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Banks side by side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;rawers in each</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fr&amp;onts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Openings: %1. The first is %2 wide and %3 high.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::NumberAnswer</name>
    <message>
        <source>It follows from:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the number came about</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 = %2
%3

Rule: %4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to: %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::NumbersPanel</name>
    <message>
        <source>Computed numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the number came about</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::OwnEntriesDialog</name>
    <message>
        <source>Catalogue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What could not be done</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What you type or add becomes the case&apos;s own entry and is kept in its file; the program&apos;s stay as they are.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kinds of entries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head&apos;s height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clearance hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pilot hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Root</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stocked lengths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Wood screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bolts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base&apos;s width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base&apos;s height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stands out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Thread&apos;s depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least engagement</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Handles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At each side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rating</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Runners</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Specific gravity, at 12 %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Woods</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>W&amp;oods</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PageView</name>
    <message>
        <source>Page preview</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PartDrag</name>
    <message numerus="yes">
        <source>and %n more</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
    <message>
        <source>Move left by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move right by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move down by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move up by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snapping is suspended while Alt is held.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a distance to move by exactly that. Alt suspends snapping, Shift moves those down the bank along. Esc puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move mounting hole</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move mounting holes down the bank</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move handles down the bank</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PartWords</name>
    <message>
        <source>hole %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle %1 of %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>handle of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moved %1, %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre line of the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre line of the box wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centre line of the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge of where a screw may go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base at the field&apos;s edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in line with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>level with %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>same height as %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrors %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PresetActions</name>
    <message>
        <source>Handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a pre&amp;set…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give the selected fronts, or the case, the values of a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kee&amp;p as preset…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep the handle, profile, box or screws of the selected front, or of the case, under a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2</source>
        <comment>kind: name of the preset</comment>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;What to keep</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PresetNameDialog</name>
    <message>
        <source>&amp;Name, such as Deep drawers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the preset</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PresetRow</name>
    <message>
        <source>mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep these values under a name, or change a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case’s (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep as preset…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change “%1” to this, for all that follow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;name “%1”…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove “%1”; its users keep their values</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remove a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ Departs from “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts depart from “%3”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts depart from their presets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to “%1”</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to their presets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ Its own, not the case’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>≠ %1 of %2 fronts have their own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the case’s</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep as preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename the preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename a preset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back to the preset</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PrinterPanel</name>
    <message>
        <source>&amp;Test page and correction…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF file, not corrected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>State of this printer and paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;rinter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 landscape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: never checked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>needs no correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>corrected × %1 across, × %2 up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2; measured %3, not proved by a second print yet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: %2; last checked %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %, not corrected for any printer. Choose a printer for its test page and its correction.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 %, never fitted to the page.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::PropertyForm</name>
    <message>
        <source>Change the frame</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change a limit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lock or free a size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Placed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Place the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the middle of the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the middle of the field</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from the top edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a little above the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose how the handle is held</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>through wall and front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front only, head in a counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front only, access hole in the wall</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Follow the case: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mixed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Why this &amp;number?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This front decides for itself here. Click to follow the case again.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::Recovery</name>
    <message>
        <source>Recovered %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::RecoveryDialog</name>
    <message>
        <source>Unsaved work was kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frontwright was ended before these cases were saved. Each case file is as it was saved last. Open a copy to go on with it under a name of its own: both versions are kept.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recovery copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Last step kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open the copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Throw it away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::RulesDialog</name>
    <message>
        <source>Rules and their sources</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A word of the rule, its use or its source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Search the rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Search</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rules</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Used for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Kind of source</source>
        <translation type="unfinished"></translation>
    </message>
    <message numerus="yes">
        <source>%n rule(s)</source>
        <translation type="unfinished">
            <numerusform></numerusform>
            <numerusform></numerusform>
        </translation>
    </message>
</context>
<context>
    <name>frontwright::SampleCard</name>
    <message>
        <source>Sample: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a copy of this sample</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SectionPanel</name>
    <message>
        <source>&amp;Upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut from top to bottom, seen from the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leve&amp;l</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cut across the width at the height of the selected hole, seen from above</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SectionView</name>
    <message>
        <source>Upright section through the selected front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level section through the selected front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a front to see how it is held: wall, front, screw and bolt.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SelectionPanel</name>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Member</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set member width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Properties of what is selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Opening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit of the front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edge profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawer box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mounting screws</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Document</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1. What is changed here holds for this front only.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 fronts. What is changed here holds for each of them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A member of the frame. Drag it, or nudge it with the arrow keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The whole case. Click a front to change only that one.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SheetChoice</name>
    <message>
        <source>Only the selected &amp;fronts (%1)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what is to be printed; a tile alone can be printed again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fronts that were selected in the drawing, with their box walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Box walls</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Story sticks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tile %1, page %2</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SheetSetup</name>
    <message>
        <source>Width of the roll</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the sheet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Overlap of tiles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Margin of the sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roll…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Another size…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>P&amp;aper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Roll &amp;width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet w&amp;idth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheet &amp;height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fewest pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All landscape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Orientation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Orientation</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>O&amp;verlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Margin</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::SplitCount</name>
    <message>
        <source>Split into %1</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::StartNotes</name>
    <message>
        <source>Throw the copy away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The unsaved work on %1 can&apos;t be brought back after that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The copy can&apos;t be opened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings could not be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frontwright starts with its defaults. Your cases are not touched. The old settings are kept in %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Frontwright ended by mistake</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your case files are as they were saved last; unsaved work is offered from its recovery copy. What happened is written in %1. Nothing was sent anywhere.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::StartPage</name>
    <message>
        <source>Start page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawer fronts that fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every front, hole, screw and bolt in its place before the drill goes in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at a sample</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What to do first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1. Make a new case from its outer size, its frame and its rows.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2. Drag the rails, or click a dimension and type it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3. Click a front and choose its profile, box, screws and handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4. Heed the findings, then print the templates at full size.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New case…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Start a case from a few numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a case file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recent cases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>None yet. Cases that you save or open stand here.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::TellTales</name>
    <message>
        <source>A4 pages on a printer set to Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4 page fitted to Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page shrunk to the printable area</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter page fitted to the width of A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page enlarged to the other paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dots taken for the wrong size, 72 or 96 to the inch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>millimetres, centimetres or metres taken for one another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>inches and millimetres taken for one another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two directions differ by more than 2 %: paper slipped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the printer and this window to the paper that lies in the tray.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at 100 % or “Actual size”, never “Fit”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print from here or from another viewer, at “Actual size”.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write the unit with the length: 180 mm, 7 1/16 in.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print that page again, and measure both bars again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 mm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> or </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&lt;tr&gt;&lt;th align=&apos;left&apos;&gt;100 mm comes out at&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;what happened&lt;/th&gt;&lt;th align=&apos;left&apos;&gt;what to do&lt;/th&gt;&lt;/tr&gt;</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::TemplateDialog</name>
    <message>
        <source>Previous page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Next page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save as PDF…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Templates at full size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Til&amp;es of this template</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Number of pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Problem</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print at “Actual size”, never “Fit”. Measure the check bars in both directions before drilling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> of %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is ticked.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>one page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No page.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages: %1.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages: %1 of %2.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fewest %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>landscape %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1 On %2: %3.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These pages are corrected for %1. On another printer they would come out wrong.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;without correction</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;for this printer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the templates</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF files (*.pdf)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>-templates.pdf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sent to the printer. Measure the check bars before drilling.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed: this printer leaves %1 mm blank at the edge, and marks would be lost. Set the margin to %1 mm or more.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed yet: %1 needs another correction, and the pages were laid anew for it. Look at them, then print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed yet: the printer is set to %1, so that the pages would have been scaled or cut. They were laid anew for that paper. Look at them, then print.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Test page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed: this test page is for %1. Choose the printer in the templates&apos; window first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing was printed: the printer is set to another paper than %1. Choose the same paper in both places.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::TileMapView</name>
    <message>
        <source>Tile map</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The tiles of this template; click one to see its page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1: tile %2 of %3</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::ValueEntry</name>
    <message>
        <source>Typed size</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It does not go that far: %1. Enter again leaves it where it is, Esc puts it back.</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::ViewActions</name>
    <message>
        <source>Blueprint (dar&amp;k)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See it larger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See more of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fit the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the whole case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Dimensions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the sizes round the case</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Holes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the holes for screws and handles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;elds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline the flat, full-thickness part of each front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Boxes behind the fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show each drawer box&apos;s outline</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Botto&amp;ms</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the bottom panel of each drawer box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where a mounting screw ma&amp;y go</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the region of the box wall that is free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Signs of findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show a sign where something is to be heeded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show sizes in inches; a bare number means inches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show sizes in millimetres; a bare number means millimetres</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest 1/&amp;8 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest 1/&amp;16 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest 1/&amp;32 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nearest 1/&amp;64 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show sizes to the nearest 1/%1 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light is ink on paper, dark is a blueprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Units</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::WaysPanel</name>
    <message>
        <source>Order of work: %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✓ fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ too short by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ bottoms out by %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ counterbore too deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>✗ none stocked fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Three ways to hold the handle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counterbore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Least bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Greatest bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bolt</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This front carries no handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a front to compare the ways to hold its handle.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>● %1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>
Double-click a column, or press Enter in it, to choose that way.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose how the handle is held</source>
        <translation type="unfinished"></translation>
    </message>
</context>
<context>
    <name>frontwright::WoodPanel</name>
    <message>
        <source>%1: %2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>%1, %2: %3</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood and air</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As cut</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At its driest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At its wettest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Time of the year that the picture shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>change × </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many times larger than true the change is drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The change is drawn so many times larger than it is; 1 is true</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The case at that time of the year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The change is drawn larger than it is: take no sizes from this picture.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Today</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The smallest gap over the air&apos;s humidity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no gap between fronts to follow, or today&apos;s air is outside what can be told.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood of all fronts that do not decide otherwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood of the selected front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wood of %1 selected fronts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a front to read what follows for it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front %1:</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
