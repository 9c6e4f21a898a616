<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" sourcelanguage="en">
<context>
    <name>chartmaker</name>
    <message>
        <source> %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (predicted: {0} are not dyed yet)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> (predicted: {0} is not dyed yet)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> The ratio alone, {0}, would explain that.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> The ratio, {0}, explains it in part.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> and </source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> every 2nd round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> ft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> in 10 cm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> m</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> m in 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> over 4 in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> yd</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> yd in 1 oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> °F</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source> × 7 rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>!  no pot holds it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>!  {0} g of dyestuff missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! Clipped or in shadow, so left out: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! In {0} of {1} rounds two parts would be one letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! Reading {0} does not belong with the others: {1} is off by {2} (CIEDE2000 {3}). Measure again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! Samples far from the shade that their lots had: {0}. Are they the same yarn?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! The other edition fits clearly better: {0} in the mean.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! The photo is mirrored; shades are not changed by it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! There is no such picture in the palette's folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! eats {0} stitches, the round below has {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! more than two letters in {0} of {1} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! shaped, though only the cast-on lies below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! {0}
! over the limit of {1} in {2} of {3} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>! {0} has {1} less than that: its weight becomes 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>% of fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;About Chartmaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Across the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add a letter to the round…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Add the chosen to the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Baths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change the record</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Change…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Choose all rounds of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Close cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Decreases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Delete the round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Discard</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Do it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Draw</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Earlier copies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Edit lot…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;File</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fill it and cut off what juts out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Fit the whole chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Flip left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Give the lot that mends it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Grey value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Halve the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Heavier lines</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;If the hat had</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Invert: light is figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Invert: the words are ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Join with the band above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep on the shelf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keep what is drawn on the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Knit two together (k2tog)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Knitted surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Line</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Make one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Mirror upwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;More: fit, depth and crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New lot…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;New…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Next finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open a picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Open…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Paste</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Pick the part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan a lot from this load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Plan another design along…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Previous finding</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Profile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Quit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Reading of {0}:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rectangle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Redo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Refresh copies…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Refresh the chosen copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Remove the box</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Restore</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Save palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Shift one stitch to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Show or hide the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Slip, slip, knit (ssk)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Split the band below this round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stamp the motif</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take fibre and dyestuff off what is at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take readings…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Take unused letters off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Tam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Undo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Unravelled and measured…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Use as letter…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Weighed…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Whole picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Widen the repeat at the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Widening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Work in this band alone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>&amp;Yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>(leave out)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>*{0}; rep from * {1} more {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>+ and −, or Ctrl and wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, ! long</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, ! long: catch at {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, adapted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, and more than {0} under the head will not go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, three strands at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>, value {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>-copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1  {0}
2  {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 column</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 is the first load, 2 the first exhaust, and so on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 lot of this design differs from the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 lot of this design is not in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 of its {0} rounds is past the top of the band and {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 skein</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 stitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 year</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 year, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>1 year, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 % of the yarn in reserve; 10 to 20 % is common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>10 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>100 g dry to, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>11 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>12 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 is darker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 is duller</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 is lighter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 is stronger</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 years, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>2 years, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>24-patch &amp;target, made</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 months, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 months, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 years, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>3 years, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>38.2 41 27.5, LCh 50 30 270 or #8a3b2f</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>4 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 years, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>5 years, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 months, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 months, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>6 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>7 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>8 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>9 sections</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>; did you mean {0}?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>= {0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>? a shade is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>? degrees</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A &amp;typeface, any script</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A PNG or JPEG picture; it can be dropped here too</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A band of its own above the one at the cursor, in the letters shown here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A block selected</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A click leads to the place of a finding; what would mend it stands here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy of {0} opens as an unsaved change; the file stays as it is until you save.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A copy: the example itself stays as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A letter idle for longer is cut and joined anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A new palette: add lots, baths and yarns, then save it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A pot that is kept for iron or copper serves nothing else.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A quarter of the girth straight, then as long as its taper takes: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A scale is better: a spoonful differs with the grain, the damp and the hand.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A shade is three numbers: L* from 0 to 100, a* and b* from −128 to 128.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stitch takes {0} of yarn ({1} to {2}); Swatches tells why. Planned is the high end and {3} % in reserve; the rest is cast-on, tails, strands carried up, finish and trims.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A stitch takes {0}, {1} to {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A tassel at the point: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A to Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A whole page in the view (F)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A4</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>A5</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ANSUR II public data (Gordon et al. 2014), women's head circumference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ANSUR II, men's head circumference, mean about 57.4 cm and SD about 1.6 cm, both from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About 9 % smaller than the head: stranded hats, The Knitter 2019</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>About Chartmaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Acids irritate the eyes. Add the acid to the water, never the water to it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Across the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a band &amp;above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a band &amp;below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a pompom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add a tassel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add lot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add lots of the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add yarn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Add {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All balls that went into it together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All families</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All files</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>All in one round, which gathers above the brim: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Allowances</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Alt and up or down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Aluminium salts: aluminium sulphate causes serious eye damage (H318).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Answer for head, gauge and brim, and draw on the plain hat that they give (Ctrl+N)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Any repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Anything worth keeping with the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Are you sure?</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Arrows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As a tam dries, drawn over a plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As it will be knitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As its label says</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As the palette has it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>As wide as the view (W)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ask your local authority how spent liquor is disposed of; none goes into a pond, a ditch or a canal.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Assists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>At {0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back of the &amp;work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Back of the work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Band above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bar of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Base, baths and loads</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath cards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath {0} is on record. In the palette now: {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bath {0} is on record; its lots come when they are weighed dry.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baths</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Baths, what they share, and what is at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Be&amp;gin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin a hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin bare</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Begin with the last letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Below this difference in L* a pair is lost.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Bleach and ammonia give off gases that harm: neither belongs in a bath, nor near one. Take another alkali.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Borders</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brim de&amp;pth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Brim, underside and top of a plate as wide as the rim: geometry; at least a third of the girth: craft pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Burns eyes and skin: into the water, never water onto it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By its &amp;ball, before and after…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By lam&amp;plight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>By lamplight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C&amp;hoose…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>C* is {0}, below 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CIEDE2000 {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CIEDE2000 {0} from the shade that the lot had</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CIEDE2000 {0}, of which readings may give {1}; L* {2}, C* {3}, hue {4}°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CO {0} in {1}, {2} cast-on. Join into a rnd without a twist; mark where it begins.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>CSV</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cancel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Carry the letter one round on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cast on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cast on {0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Centred double decrease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change carry up at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change cast-on letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change cast-on method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change clear from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change each tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change finishing letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change finishing method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change grist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change how often the repeat goes round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change longest float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change lot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change round gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change rounds that fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change slack of floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change soft from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change stitch gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change texture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change the record of bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change what is at hand for dyeing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Change yarn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart in black and white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart in colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart in large print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chart tools</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chartmaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Chartmaker {0}

From measured dye lots and a chart to a stranded hat that reads, fits and has yarn enough.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Children and pets away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a lot, or type the name of a new one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose a run of rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the &amp;letter here</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Choose the letter from a menu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cl&amp;ear to ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Clear a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a chip to choose its letter, drag it up or down to fill.
Keys: arrows move, a letter sets it, Shift with up or down fills.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click a count, or press Enter on it, to cast on so many stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click or Enter; Escape or right button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Click or press Enter to hold a motif, then stamp it on the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Close</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour &amp;vision: protan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour vision: &amp;deutan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour vision: deutan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour vision: protan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour vision: t&amp;ritan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colour vision: tritan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colourway</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Colourway in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Compare the lot with another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copper: its salts are very toxic to water life, with lasting effects (H410). Let none reach a drain.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Copy a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Corner {0} of the target is in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Count, crown and plain rounds at once, as one step</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts that divide the {0} stitches of the band at the cursor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Counts that go round the hat a whole number of times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cover</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cr&amp;own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 14-16 in, the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 16-18 in, the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 18-20 in, the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 20-22 in, the middle, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 22-24 in, the middle, from memory</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Craft Yarn Council, standard head table: 9-12 in, the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crosses and lozenges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Crown wedges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ctrl and wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Cu&amp;t</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;uplicate the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>D&amp;uplicate the round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Date</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Day of dyeing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>De&amp;faults</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Decreases of the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete lot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete round down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete round up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete yarn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {0} from the palette? {1}; the design keeps its own copy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {0} rounds down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Delete {0} rounds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Depth budget</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Designs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Diameter of a pompom, length of a tassel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Difference in L*, CIE 1976; 20 is two Munsell value steps. Common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Distance to the hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dit&amp;her: scatter the stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divides the repeat of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Divides the round of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Do so: {0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Doubl&amp;e the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Double the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Down; Enter or Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag a skein onto a letter to make it that lot; the last one is a new letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag it; Ctrl and drag it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag its skein onto the letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag sideways, or left and right; up and down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the four corners onto the outer corners of the target's outermost patches. Then draw a box on each skein, inside its edges. Tab goes from one to the next, arrow keys nudge it, Shift goes farther.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag the frame's corners or edges, or all of it; a double click frames the whole picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drag, or Shift and arrows; Escape or a click beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw at the cursor; begin and end a line or a shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw ground, or make a stitch plain, with the mouse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw on a bare chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw out the bar that tells the screen's scale</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Draw this bar to {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drawing {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop a drag of a chip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Drop the gesture, or the choice of rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dry in the shade; weigh what came out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate round down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate round up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {0} rounds down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Duplicate {0} rounds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyeing changes it: measure the dyed yarn. Left empty, that of its yarn serves</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyestuff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyestuff, {0} g of {1} {2}: {3}, unless the recipe says else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyestuffs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyestuffs at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Dyestuffs, yarn, pots, habits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each load leaves {0} % of the dye to the next ({1} to {2} %), fitted to {3} lots measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Each load leaves {0} % of the dye to the next ({1} to {2} %): assumed, one load is measured.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Earlier copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ease %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ed&amp;it its yarn…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edit its bat&amp;h…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Edition of the 24-patch target</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ell&amp;ipse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter, arrows, Enter; Escape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Enter; Escape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Escape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Escape, or a double click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Every lot of the design is as the palette has it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Export p&amp;icture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye damage (H318): eye shield.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Eye to screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F&amp;ill in what happened…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>F, S, B, A; Home or a double click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Family of motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fi&amp;ndings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fibre to weigh out, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fig&amp;ure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill &amp;down to the band's end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill &amp;up to the band's end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill the stitches of one part that hang together, round the join too, as far as the band goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill with figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill with ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fill with third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled &amp;ellipse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Filled rect&amp;angle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Find a motif</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Findings: …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fit the hat anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Fl&amp;ood fill</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flat on its plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flip left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flip upside &amp;down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flip upside down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Flo&amp;ats drawn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For each strand the stitches that it passes behind; those floats are taken out of the yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For shades between: diffusion after Floyd and Steinberg: truer from afar, with more and shorter floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>For {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the cast-on edge; the worn edge is above them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>From the worn edge along the fabric to the middle of the top. Empty, head and shape say it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gather only what a person qualified to know it has identified, with the owner's leave and within local law; some dye plants and fungi are poisonous, some are protected.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gauge and yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ghost the other bands, and leave them as they are whatever is drawn over them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Girth of the head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give this up; nothing is written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {0} the lot {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Give {0} to draw with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Gloves, eye shield, dust mask.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go back to the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go from the words on to the motifs; hold the one there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go nearer, or away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to another lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Go to the first or the last stitch of the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grey value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Grist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ground at the &amp;cursor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Halve the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Harmful if swallowed (H302), irritates (H315). Iron's own pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Height of the frame, in pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold a ruler to the screen, and draw the bar's right end to {0}, or use the left and right keys.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hold it as a stamp: its parts alone, in the letters of the rounds it is set down on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Home, End</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How fibre is weighed out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How it was knitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many times the repeat goes round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How many times their size the letters are worked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure: a shift above {0} would show.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How sure: {0}; the readings alone would give {1} at most.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How the chart is seen; each view has the key beside it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>How to begin</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Hue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>I&amp;nches, yards and ounces</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In it: {0} % for scouring, {1} % for handling, and a sample of {2} g from each load.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In other lights</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>In ro&amp;unds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert a round &amp;above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert a round &amp;below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert round down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert round up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert {0} rounds down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Insert {0} rounds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Into the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Iron: ferrous sulphate is harmful if swallowed and irritates the skin (H302, H315); small children are in the greatest danger. Keep a pot for iron alone.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Irritates eyes: acid into the water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It follows the head, and closes over it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It has no lot yet: the Lots page gives it one, dyed or planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is {0} larger than the head in {1}, which is easy.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It is {0} smaller than the head in {1}, which is {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It stands alone in these rounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It takes the place of the long taper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It widens above the brim, and its crown lies flat as a plate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would likely take {0} less in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>It would likely take {0} more in all.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its further loads cannot be foretold: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its letter is another run of this bath now, which never comes out quite the same</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Its shade is not known yet, so no other lot can be judged in its place: dye it, or measure it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Join bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>K/S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep children and pets away until everything is rinsed, labelled and put away.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keep mine</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Key</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knit and purl from stitch 1, such as kkpp; empty is knit all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knit plai&amp;n</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Knitted surface</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>L*, a* and b* under CIE D65 with the 10° observer; (D50/2) after them tells another light.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Larger (+)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Later</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lattices</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay in {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lay it in as a new &amp;band above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Leave out a design that is planned along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ledger of the rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left and right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left edge of the frame, in pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Left out: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length with these rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Length with these stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let every answer be what it is unasked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let reference and sample change places</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Let the rounds follow from the stitches, so that nothing is cut off or added</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter of the figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letter of the ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters and lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters and their lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters drawn &amp;stitch by stitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters in their order</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters of the &amp;design, by shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters of the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters stand here at the height of their value once they have lots with readings.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters that take part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters whose shade is known; each round takes the two that suit it best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Letters, the lowest round's first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level of value that divides figure from ground, L*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Level, L*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Light falls off by {0} % across the target, which is evened out.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Limits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>List of findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load of the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {0} comes nearest, {1}: CIEDE2000 {2} away. A first load with {3} g of {4} to 1 g of fibre, {5} times the recipe's, would come to {6}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {0}: heat slowly, {1} minutes{2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {0}: let it cool in the liquor, then lift it out and let it drip back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Load {0}: {1}, in a pot kept for {2}, 15 to 20 minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads of the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Loads of this bath, on the value axis from 0 to 100</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Long, and narrower all the way to its tip</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look at an example</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Look for lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Looking for rounds that another lot could take…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot of letter {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot of skein {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot that {0} goes to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot whose shade is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots as skeins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots of the design and of the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots that differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Lots that the palette does not have</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mairet, Vegetable Dyes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a letter the lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make a {0} {1} {2} in {3}; sew it to the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make the crown anew and fit the hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make this change to the design; it can be undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Make {0} {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark a block; drop it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mark another skein; arrow keys move the box, with Ctrl they size it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured round the widest place; US hat size {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measured side drawing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Measurements</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Menu, or right button on a round number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mi&amp;rror downwards</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Midway between a third of the girth and 0.79 in, and 0.4 of it: craft pages, which differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Midway between a third of the girth and 2 cm, and 0.4 of it: craft pages, which differ</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mill-spun yarn loses 1 to 5 % in scouring (from memory), raw fleece about 25 % (one sample). A sample of 2 g and 2 % for handling are common practice, no source.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror abo&amp;ut this round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror about t&amp;his stitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror drawing and filling, not signs or motifs, about this round; again: its upper edge; again: off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror drawing and filling, not signs or motifs, about this stitch; again: its left edge; again: off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mirror the shading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mordant {0} g with {1}, turn {2}: raise slowly, an hour below a boil, cool over night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mordant {0} g with {1}: raise slowly, an hour below a boil, cool over night</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mordanting, all together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Mordants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move a letter in its row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move among the chips</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move band down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move band up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move round down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move round up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the band d&amp;own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the band u&amp;p</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the block; copy it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the cursor by a stitch or a round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the cursor by ten rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the letter towards the highest round (Alt+Down)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the letter towards the lowest round (Alt+Up)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the round d&amp;own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move the round u&amp;p</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} rounds down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Move {0} rounds up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Moving air, a lid, below a boil.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Na&amp;me the palette…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name of the pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name, dyestuff, part, notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Name:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the repeat at the &amp;left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the repeat at the r&amp;ight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrow the repeat at the {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Narrowed by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ne&amp;w yarn…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Negative is smaller than the head, which a stranded hat needs to stay on.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never a kitchen pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never bleach, never ammonia.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never in a bath, nor near bleach: take another alkali.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Never mix bleach or ammonia into a bath, and never mix baths that hold iron or copper.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;band above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;bare design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;bath…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New &amp;palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New hat…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New stocking cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New swatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New tam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>New yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No bath can be planned.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No curve: none of its readings is a spectrum.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No hat comes of these answers: what is wrong stands beside them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No letter has a shade yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lot has “{0}” in its name, dyestuff, part or notes.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No lots yet. Open a palette, or begin one: take the readings of a measurement file or of a photo, or add a lot and type its reading. Each lot then stands here as a skein in its shade.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other lot can take enough of its rounds: none has so much to spare, or it is worked there already. Dye more, or knit a smaller hat.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No other size, colourway or set of bands can be had from this design.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No photo yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No picture yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>No sheet is ticked: nothing would be printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nobody is named who identified it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not known here: first its label and safety data sheet.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Not measured in other lights: only a spectrum tells what they will do.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is drawn from across the room: a double click or Escape goes back to the chart.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing is short: no bath is needed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing new would be added.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing noticed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Nothing opened yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Of the swatch's own yarn, where it is not the design's; a weight needs it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>On a scale that shows tenths, dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One blank band of 144 stitches, and nothing else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One swatch: taken as right to {0} %, for its counting and weighing.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>One thing at a time: something is still being made. Stop it, or wait.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only motifs whose repeat divides the band's repeat, or its whole round, or any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Only what a qualified person identified, with leave, within the law.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;palette…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open &amp;recent</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a design…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open a picture, or drop one here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Open it with the desi&amp;gn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Order of the lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Otherwise all of the picture shows, with white beside it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Otherwise ground is put beside the words, so that the repeat goes round the hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Otsu's method: the level with the largest variance between the two sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Outline of the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PDF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG or JPEG</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>PNG, a file a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pa&amp;ge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page Up, Page Down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Page and findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pages as they will print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Palette {0} ({1}): {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Palettes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Part of the plant: root, leaf, husk …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Patches off by {0} in the mean, {1} at most ({2}); left out of the fit, by {3} (CIEDE2000).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern from &amp;words…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern from a &amp;picture…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pattern from a picture or words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Peeries</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Photo with the target's corners and the skeins' boxes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture of the swatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture with the part that counts framed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Picture {0} is not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pictures</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Plan another design along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Planned, and what happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots, none of which goes back to the kitchen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Pots, spoons, scales and thermometers that dye never touch food again.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Preview of the pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Prin&amp;t…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printed {0} pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printing page {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Printing {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Print…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile of the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Profile, sections and decreases of the top; what is drawn there stays in the middle of its section.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put in a round that changes the count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put spacer stitches in a repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Put this away (Escape)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Questions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Re&amp;name the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading the marks</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reading {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings added: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Readings to add: {0}. Lots that get them: {1}, of them new: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Recipes; ≠ marks what differs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record bath {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Record the b&amp;ath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refresh a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Refresh {0} copies</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Remo&amp;ve the reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rename the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat a block across the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Repeat across the &amp;band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reset</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Reverse</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Right button or Menu</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rinse in water as warm as the fibre until it runs clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rnds {0}-{1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round for a cap, flat for a tam: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round {0} of {1}, {2} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Round {0}, {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds for each letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds of a pointed crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds of the crown, the first at the bottom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds of the pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds of the words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Rounds {0} to {1} in {2}, as letter {3}: {4} of it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;ave the selection as a motif…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;nap to the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;wap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>S&amp;wap ground and figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>SVG, a file a page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sa&amp;ve the yarn table…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as PDF or pictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save as a motif</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save it among your own motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save mine as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save palette &amp;as…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save sheets as P&amp;DF or pictures…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the design and the palette first: the one names the other's file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the palette first: pictures are named from its folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save the yarn table</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Saved {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Save…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Scroll the chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sect&amp;ions</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sections of the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See its front, side, back, or top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>See the hat from: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Seen through: stitches keep their columns. The ground is carried above, the figure below. Heavy black edges: longer than {0}. White tie: catch it there.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select &amp;all of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Select a &amp;block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set down what was pasted; drop it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set how many &amp;times it goes round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the &amp;repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the letter of a chip, in all rounds chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Set the te&amp;xture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Settings of the hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Severity</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sewn on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sh&amp;eets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade in &amp;steps…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade in steps</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade that is wanted, as L* a* b*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shade with {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shading of the rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape the &amp;crown…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shape the crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sheets to print</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift &amp;one round up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift and arrows, or Ctrl or Shift and a click</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift and up or down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift and up or down, or drag over round numbers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift o&amp;ne round down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift one stitch to the ri&amp;ght</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shift within the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shopping list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short and lasting: designs name their lots by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short and lasting: lots name their bath by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short and lasting: lots name their yarn by it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Short without a bath to plan from: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or hide the list</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show or hide the list of findings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the lots as a table of figures, or as skeins again</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show the s&amp;helf</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show what differs from the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Shows and takes lengths in inches; files stay metric.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Show…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Side at which the repeat is widened or narrowed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Six sections, or as many as can draw in as fast as a flat disc, 2π × stitch gauge / round gauge stitches a round (geometry); a tam has five to seven: The Knitter 2013</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Size of the pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skein {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Skeins on the photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Smaller (−)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Snap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Something else has changed {0} since it was opened or saved here.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space or Enter; Escape or right button</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Space ticks a letter; drag it, or press Alt with up or down, to move it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spectrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spent liquor as your local rules say; never into water.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Split band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sta&amp;mp it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp the motif that is held; put it down</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stamp {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stars</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitch count</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitch counts that the bands allow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitches of one round or row, times the rounds: count them all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitches of the repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stitches of the repeat in this round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stoc&amp;king cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swap ground and figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swatch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Swatches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Sy&amp;mbols</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Symbols</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;aper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>T&amp;ype a reading…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take &amp;from a photo…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take a field and go back to the chart; leave it as it was</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take away the box that is in hand (Del)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take it off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take out {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take readings ({0})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take readings from a measurement file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take shades from a photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take stitches out of a repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the &amp;shades</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the block up, move it, set it down; put it back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the file's</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the lot off {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take the scale that the screen itself tells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take unused letters off</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take yarn &amp;off the stock…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Take yarn off the stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tasse&amp;l</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tell of a swatch: weighed, unravelled and measured, or by its ball</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Texture of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bands allow no count within the limits.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bath was {0} exhausted, load {1} against {2}: the dye is {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The bath was {0}: the dye is {1}.{2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The box of skein {0} is in hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The brim is 5 to 7 % of the head deep: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The change itself shows: ΔE₀₀ {0} between the two lots.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour itself is the same within the readings (what remains is {0}).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The colour itself moved {0}, by CIEDE2000 {1} beside strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The day of dyeing is known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The days: {0} from weighing to dry yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The design names the palette, which is opened with it from then on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dye is as strong within the readings: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The dye is {0}: {1}, as of load {2} against {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The fabric {0} {1} times as fast as it can lie flat in {2}, and {3}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The file has changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The first rounds, laid double when the hat is worn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hat across the room</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The hat is being made ready</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The line of the band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lot can be used in the design at once; its shade is marked as predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lot has this reading already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lot that is picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The lots</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The new palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The pages as they will print. Ticks say what is printed.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The palette does not have these lots of the design.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The palette has no undyed yarn yet; the Lots page makes one.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The palette has none of the lots that this hat uses.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The program ended before this work was saved. Restored, it is an unsaved change of its file.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The shelf of motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The target lies turned by {0}, which is allowed for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>The turning hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There are no copies yet: one is kept with each save, and the last six stay.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>There is no swatch: this is Munden's relation for plain machine-knit wool, from dry relaxed (Ks {0}) to fully relaxed ({1}), since nobody can say beforehand how far your fabric will relax, and with a gauge that is right to half a stitch and half a round.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These are reminders, not instructions for safety. The label and the safety data sheet of what you use, and the rules of the place where you work, come first.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>These copies differ from the palette; refreshed, they are as it has them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They leave a line of stitches between sections: common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They stay {0}; value differs by at least {1}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>They turn from {0} to {1}; value differs by at least {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a copy of the example: save it under a name of your own to keep changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>This is a fault in the program itself ({0}: {1}). The design is as it was; save it if you like.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick a letter, or leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick at least one letter.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tick what is printed; Enter or a double click shows it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tint of the turning hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To be got</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To dye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To eyes that lack the cone for long waves, in part or in whole (Machado 2009)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To eyes that lack the cone for middle waves, in part or in whole (Machado 2009)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>To eyes that lack the cone for short waves, in part or in whole (Machado 2009)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Top</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Toxic to water life (H410): none to a drain. Copper's own pot.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Tr&amp;ue size on paper</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Try {0} in {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn by &amp;half a turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn by half a turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turn it; tilt it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Turning hat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two decreases every second round: a published pattern note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two letters, by &amp;value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Two lots compared</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type a reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Type the words to knit.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Typing, or F2, writes in a cell; Delete removes its row</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under an incandescent lamp (CIE A), to eyes used to it. Without a spectrum, and so only adapted: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under an incandescent lamp (CIE illuminant A), to eyes used to it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Under the dullness the dye is {0}: about {1} of the reference's.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undyed yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Undyed yarn at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unless a lot's own yarn says otherwise.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unravelled and laid out straight, all strands together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Upper edge of the frame, in pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use as &amp;letter…</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use colourway {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Use {0} as letter {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Usual suspects</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value ladder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Value, L*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Verdict</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>View</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>WHO Child Growth Standards 2007, median head circumference for age</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Washing soda, lye and lime irritate or burn the eyes and the skin. Add them to the water, never the water to them.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Ways to relieve what is short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wear gloves and an eye shield; a dust mask too while any powder is open.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh each load dry before and after. A load that is still wet gets its lot when you weigh it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weigh it as it lies in the room: about {0} g of it are water from the air (regain {1} %, ASTM D2118).</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Weighed after the cast-on, if that is not counted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wet out until no air is left in the fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done with the block</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What can be done with the rounds chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What comes of the answers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What fitting anew would do</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What has moved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What if</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is chosen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is darker than this value, L*, is figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is not known here is no safer for it: read its label and its safety data sheet before it is opened.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is picked</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What is short, as baths to run.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What really happened</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the dye of its lots is reckoned from: strength, ladder and predicted shades want its spectrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the pattern is made of</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the samples bring</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What the yarn rests on, and what could be changed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What this hat used is taken off the weights on hand. Write what you weighed, if you did.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>What would help</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>When the target was made: the patches of the two editions differ a little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where in the hat it goes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Where the repeat gains or loses stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which floats are drawn in the preview</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which load comes nearest to …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Which repeats are offered</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Whole page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen the repeat at the ri&amp;ght</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widen the repeat at the {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Widened by about 50 % after the brim: The Knitter 2017</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Width of the frame, in pixels</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wind, weigh {0} g dry, label every skein</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>With care</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words of a motif's name, family or tags (Down: to what is found)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to find motifs by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to knit</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to look for among the keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Words to look for, such as round or Ctrl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work in moving air, and keep the bath below a boil, with a lid.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work these rounds in that lot; it can be undone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Work {0} as {1} in rounds {2} to {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Working out the pattern</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Write them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Writing {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Written rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Wrote {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn in reser&amp;ve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn now and then</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of 130 yd in 1 oz, 2-ply jumper weight: a spinner's published label, 2024</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of 420 m in 100 g, 2-ply jumper weight: a spinner's published label, 2024</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of each band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of each letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn of {0}, 2-ply jumper weight: a spinner's published label, 2024</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn taken off the stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Yarn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your eye's distance from this screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your own; usual here: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your records differ in: {0}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Your records of the two recipes agree.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom &amp;out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>Zoom at the pointer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a PNG or JPEG file in the palette's folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a ball is weighed twice, before the swatch and after it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a band has no rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a band keeps at least one round; delete the band itself instead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a block is repeated across rounds of one count, and these differ from their band's widest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a block of {0} stitches does not divide the repeat of {1}; one of {2} would</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a cell plays the {0}, but the round has {1} letter(s)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a centred double in the middle</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a crown begins with {0} to {1} stitches, not {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a depth of {0} is wanted instead of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a depth of {0} takes {1} rounds, more than {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a design has no bands</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a design has {0} rounds, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a design has {0} swatches, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a dye pot that holds {0} of liquor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a gauge of {0} is outside {1} to {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hat keeps at least one band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a hat of {0} is too tight for a head of {1}: more than {2} under the head will not go on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a head of {0} at {1} comes to {2} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a line has more than {0} characters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lot has {0} readings, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a lot is either planned or came from a bath, not both</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a motif has no rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a motif has {0} rounds, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a motif has {0} tags, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a new lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a palette has {0} lots, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a picture must be in the folder of its palette, or below it, so that the two move together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a piece of a chart has at least one stitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a piece of {0} stitches × {1} rounds is larger than a chart may be</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a planned lot cannot have readings: it does not exist yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a point of {0} rounds from {1} stitches would pucker; {2} sections take {3} rounds or more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quarter turn anticlockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a quarter turn clockwise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a reflectance factor is {0}, below 0</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a rim of {0} stitches is more than {1}: widen it less</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round has no cells</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round has one to three letters, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round has three letters at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round has {0} cells, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a round of {0} stitches cannot lose {1}; every round keeps at least one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a section of one stitch cannot be made narrower</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a single one at the left edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a spectrum from {0} to {1} nm does not span 430 to 650 nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a spectrum of {0} values is outside 8 to 600</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a stitch,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a swatch gives metres, grams, or the ball before and after: one of the three</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a taper of {0} rounds is too short for {1} rounds that take {2} stitches each{3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a tassel at the point</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a texture of {0} stitches does not divide the repeat, which has {1} in some round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a time without its zone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a widening from {0} stitches cannot end with {1}, which are fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a {0} makes floats of {1} at this gauge, longer than {2}: choose a brim of one colour, or a finer gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a {0} repeats over {1} stitches, which do not divide {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>a*, b*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {0} level tsp ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>about {0} stitches are asked for, but the bands allow no count: mend them first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after the dyeing, load by load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>after {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>alike</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of the {0} at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>all of them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>an empty line; a round with nothing in it does not exist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another window has this design open, so this is a copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>another yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>approximate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>are left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as &amp;wide as the words</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as absorption, &amp;K/S</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as dyed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as it was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as the lot {0} was measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assists</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at hand, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least a cap's depth, girth / 3 + {0} or 0.4 × girth (craft pages, which differ)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at least {0} wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>at the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>back, seen through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ball after</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ball before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band {0} begins with this round already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band {0} has none above it to join with</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band {0} is the lowest one already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band {0} is the top one already</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band, all letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>band, letter {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bands of two textures, {0} and {1}, cannot be one; give them one texture first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>base not noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bath {0} is not in the plan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before November 2014</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>before the dyeing, all together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin with {0} of {1}, stir, test; write the pH down, since the recipe names none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>begin with {0} of {1}, stir, wait, test, add as little again; {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>between girth / 3 + {0} and 0.4 × girth (craft pages, which differ)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond the screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond what it shows: clipped</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>beyond what the screen shows</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bluish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bluish green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bluish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>bluish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>body {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim and crown alone take {0}, so a depth of {1} leaves no body: ask for {2} or more, or a shallower brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim and taper alone take {0}, so a depth of {1} leaves no body: ask for {2} or more, or a shallower brim</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brim {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brownish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brownish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>brownish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a fluorescent tube</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by a white LED</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by lamplight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>by the lots measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be opened: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be read: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cannot be worked: it takes {0}, there are {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>carry up at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cast on {0} instead of {1}, {2} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cast on {0} stitches, {1} round, the nearest that every band allows, or change the gauge or the ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cast-on edge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cast-on letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>cast-on method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>catch {0} behind {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centred double decrease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>centred doubles</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>check its count, its floats and the grist, or the gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>choose a lot for {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chroma</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>chroma C*, hue h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>clear from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour vision: deutan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour vision: protan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colour vision: tritan</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colourway {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colourway {0} gives a letter twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>colourway {0}: letter {1} is lot {2}, which is not there</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>column {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>common practice, no source</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>contrast</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>copy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>count the repeat of {0} as {1} instead of {2}, the pattern stays as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>crown {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>data set {0} is left aside: it was measured under another condition than the first</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>day of load {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>depth</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>difference</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>does not divide {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw the repeat of {0} in {1} instead of {2}, {3} fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>draw the third in ground or figure, or work it afterwards in duplicate stitch</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawing is {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>drawn-through</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry after, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry or fresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dry weight of load {0}, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dull</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dye it and take readings before knitting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dye {0} of fibre as {1} of bath {2}, {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dyed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dyestuff</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dyestuff to fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>dyestuff weighed, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>each tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>easy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>edge that rolls by itself, held by rib, 1 × 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>enough</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>evenly over the rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every 5 and 10</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>every letter of the round is in use</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>far ahead</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre in, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fibre of load {0}, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>figure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>find the &amp;level that divides best</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finishing letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>finishing method</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>flat, a wheel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fold {0} rounds or fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>follow the &amp;proportion</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>format: is missing; {0} says format = {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>format: is {0}; {1} says {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>free</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>fresh</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from November 2014</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from one measured load of its bath; that a load leaves {0} of the dye to the next is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {0} measured loads of its bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {0}° above</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>from {0}° below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>front</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g of dyestuff to 1 g of dry fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>g to 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>gathers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>goes to</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greenish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greenish blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greenish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greenish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greenish yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grey value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>greyish</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grist</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>grist of the yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ground</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>half a turn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>head and ease ask for {0} instead of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>heat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hem inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hem, sewn down inside</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hex is {0}; it looks like '#8a3b2f'</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hottest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hottest, °C</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how it was knitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>how tight it sits</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>hue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>id</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identified by</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>identified by {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in all,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in floats,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in steps of so many rounds:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in stitches,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is empty where a number is needed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is too large a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is {0}, past all measure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>is {0}, which is no number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it cannot be printed on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it cannot be read: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be saved: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it could not be saved: {0} is half a character</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it gives {0} of yarn to a stitch, where the gauge asks for about {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it holds a number that cannot be read: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is cut short, or no unsaved work</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is left as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is left out: a palette holds {0} lots at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is no ordinary file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it is not as it was written</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was kept by a newer Chartmaker</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>it was not saved: another window has this design open</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its arrays or tables are nested too deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its encoding is not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>its second line does not say whose work it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>judged in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kept for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>keys</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>kind of trim {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knit all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>knitted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lab</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaning pairs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>leaning pairs at the edges</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>left,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let each repeat eat {0} fewer</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let each repeat eat {0} more</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>let nothing fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter of trim {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letter {0}, lot {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>letters are {0}; a hat begins with at least two, each once</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lighten {0}, darken {1}, or let one of them change sides</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0} is not UTF-8 text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0}: Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0}: Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0}: Insert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0}: Move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>line {0}: a key has more than {1} parts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liquor</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liquor it may hold, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liquor, l to 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>liquor, l to 100 g of fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>live repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0} is recorded twice</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0}, measured: value {1}, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0}, not weighed dry yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0}, value {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>load {0}, {1}: value {2} ({3} to {4})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long ones</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>long-tail</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest float</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>longest float {0} stitches, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>loose</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost in handling, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lost in scouring, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>lot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make {0} {1}, value {2}: the pair becomes {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>make {0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>man, 5th percentile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>man, 95th percentile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>man, mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure it with an instrument</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measure it with an instrument where it must be sure</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>medium</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>metres to 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>minutes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mirrored about {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moderate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mordant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mordanted together</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>mordants</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>moves {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a date like 2026-09-12, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a finite number, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a number, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a text in quotes, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be a whole number, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be an array of 3 numbers, not of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be an array of numbers, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>must be an array of texts, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>name of the yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>names are taken from column {0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>need on stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neighbour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neither it nor its ColorSpecification says where it starts</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>neutral</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>never saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>newborn, boy</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>newborn, girl</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no bath is noted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no block of rounds {0} to {1} and {2} columns from {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no block of rounds {0} to {1} in band {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no copy of this save could be kept: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no count that every band allows is nearer to {0} stitches: change a repeat, the gauge or the ease</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no file yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no fingerprint</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no illuminant and observer are told; {0} and {1}° are assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no illuminant is told; {0} is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no load has a weight: weigh at least one</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no load of bath {0} has a spectrum yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot at hand would mend it; dye one with a value {0}, or swap letters in those rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no lot yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no multiple of {0} stitches comes within {1} of {2} at {3}: choose another brim, or a finer gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no observer is told; {0}° is assumed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pot holds {0}, nor the {1}: {2} ({3} L) is too small</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pot holds {0}: split it into {1} turns in {2} ({3} L)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no pot is kept for {0}: {1} of liquor want one that is used for nothing else</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no shade yet, {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no swatch can be used</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no text</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no whole number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no whole number of these repeats makes {0}: change the repeat or the rounds below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>no {0} is weighed in: the liquor has what these loads take</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>none yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not folded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not known: one of them has no shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not measured yet: readings are taken on the Lots page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not mirrored</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not recorded</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>not the band {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes of the bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes of the dyeing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>notes on load {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing closes the hat yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing closes the hat yet, so that no crown can be made anew</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing is short of it: it leads to the next, and goes to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nothing sewn on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>now,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>nowhere: leave it out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>of {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>olive</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>olive brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>olive green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on hand,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>on its side</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>once {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>only bands of one repeat join; here it is {0} × {1}, and the band above eats {2} × {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>open it again in a moment</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>or a shade as L* a* b*: 45 30 20</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>orange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>orange yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH at the end</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pH at the start</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>page {0} of {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>part of the block lies beside the wedge; choose one within it, or the whole of its rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>photo</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plain, one letter</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plain, one strand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned, not dyed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>planned, not dyed yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>plate {0} across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pointed, a cone</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pompom</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>pot</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>predicted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>provisional</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>puckers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>puckers in {0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purple</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish blue</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish pink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish red</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>purplish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put a plain round that {0} {1}, evenly, above {2}, so that {3} has {4}, {5}: {6}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>put {0} of ground between the repeats of {1}, {2} instead of {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>r {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ratio</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reading of the yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>readings left out: {0}, since a lot holds {1} at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>record of the dyeing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>red</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish orange</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish purple</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reddish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reflectance is taken for a factor: the largest value is {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reflectance is taken for percent: the largest value is {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reflectance is told to be {0} for the perfect white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reflectance, %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>repeat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rests on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rib, 1 × 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rib, 2 × 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rib, 2 × 2, turned up double</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rolls by itself</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round 1 eats no stitch of what lies below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} eats {1} stitches, the round below has {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} has the letters {1}; a motif's are {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} has {1} cells, which a texture of {2} does not divide</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} has {1} × {2} = {3} stitches, more than {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} of band {1} is not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} of the band would have stitches where the wedge has none; choose rounds of one count, or a block within the wedge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round {0}, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>round, a hemisphere</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds from {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds that fold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>rounds {0}–{1} of {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>run alike: it comes from this pot, with {0} times its dye</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>sample kept of each load, g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save it as plain UTF-8</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save it in another place as well</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save it under another name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save it under another name to keep changes</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>save the design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>scatter, MCDM</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>screen colour {0}, approximate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shape</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shaping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>shift</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>short,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>single decreases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>size of trim {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skein</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>skein_g is {0}; a skein weighs at least {1} g, or 0 for any</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>slack of floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>snug</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>soft from</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>something is writing the file just now</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spectrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spectrum, {0} to {1} nm, every {2} nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spread</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>spread the shaping over more rounds, with plain rounds between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitch gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitch {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitch {0} of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stitches passed by floats</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stocking</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stop</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stops</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stranded as this hat is ({0} floats to 100 stitches)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stranded, as counted below</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>stranded, two letters all along</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strength</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>strong</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>swatch {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take lots or readings out of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take off trim {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take readings of it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take spectra of a dyed load of its bath and of the undyed yarn, or readings of the lot once it is dyed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>take two or three more readings, turning the card between them</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>taken as {0}; {1} g of {2} do the same: see which the label names</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>takes up {0} of the first load's dye, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tam</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tassel</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>texture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>texture is {0}; it is made of k and p</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the ball weighs {0} after the swatch, not less than the {1} before</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the band has no round {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the band has no round {0} to lay the piece on</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bands above allow no count near {0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bands are not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the bands do not allow {0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the chosen rounds, {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the colourways are not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the crown anew, {0} in {1} sections{2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fabric {0} by {1} stitches in {2} round(s) and Delete; a flat disc changes by {3} a round at the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fabric {0} by {1} stitches in {2} round(s) and Duplicate; a flat disc changes by {3} a round at the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fabric {0} by {1} stitches in {2} round(s) and Insert; a flat disc changes by {3} a round at the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the fabric {0} by {1} stitches in {2} round(s) and Move; a flat disc changes by {3} a round at the most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is larger than {0} MB</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the file is protected against writing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the foot of band {0} is reached; rounds move within their band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hat has no round below its crown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the hat is {0}: {1} along the fabric from the worn edge to the middle of the top, where {2} is asked for</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the illuminant is {0}; a reading can be kept for {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the left edge of stitch {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the letters {0} do not play all parts of their round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the line has {0} characters, more than {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the palette is not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the piece is {0} stitches wide, the band's repeat only {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the recipe</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the recipe of bath {0} is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the repeat goes round {0} times, an odd number, so it cannot be doubled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rest</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rest: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the round has no other plain stitch for this one to take in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the round that changes the count has a shaped round above it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rounds are not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the rounds of a piece of a chart all have one width</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the shaping after the second '|' is empty</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the swatch has {0} of yarn, and its floats alone would take {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the system names no home folder, so unsaved work cannot be kept</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the taper anew, decreasing in {0} lines{1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the texture {0} does not divide half the repeat; knit all, or shorten it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the texture {0} must go on dividing the repeat: change it by {1} at a time, or knit all</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the top of band {0} is reached; rounds move within their band</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the two halves of round {0} of band {1} differ, so it cannot be halved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the undyed yarn of {0} has no spectrum</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the upper edge of round {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the wavelengths do not stand at equal steps: … {0} …</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>the whole band, {0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then {0} can be cast on, {1} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then {0} deep, which is still {1}: mend the patterns by hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>then,</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are two columns for {0} nm, {1} and {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there are {0} values for {1} fields</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no Delete {0} in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no Duplicate {0} in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no Insert {0} in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no Move {0} in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no bath {0} in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no colour in it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no colourway {0}; the design has {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no lot {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no size {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>there is no such file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>third</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this design</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is XML, but no CxF</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is a folder, not a file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no path to a file: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no text that can be read</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is no text: it holds a zero byte</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is not an ordinary file</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is too long for a colour</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this is {0}, not {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>this unsaved work cannot be read: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three letters are worked in one round: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>three strands at once: {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>title</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to note</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>to stock</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too deep</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>too tight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade baby</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade child</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade man</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade preemie</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade toddler</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>trade woman</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turn {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned up</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned {0}° to the left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>turned {0}° to the right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Delete are called {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Deletes have the id {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Duplicate are called {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Duplicates have the id {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Insert are called {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Inserts have the id {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Move are called {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two Moves have the id {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two letters a round at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two together, leaning left</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two together, leaning right</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two-coloured rib, 1 × 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>two-coloured rib, 2 × 2</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undyed base</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>undyed shade</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>uneven</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>up to the middle and back</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>upright</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value L*</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value differs by {0}, at least {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value {0} {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>value_soft is {0}, above value_clear, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version: is missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version: must be a whole number, not {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>version: the first is 1</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very dark</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>very light</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>violet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>vivid</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warning</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>warnings</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>was left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>water, L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wavelength, nm</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>weight of a skein, g (0: any)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>were left out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>wet yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what is &amp;likely</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was &amp;planned, with the reserve</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what was copied last is no piece of a chart</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>what would be written does not read back the same, so nothing was saved</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>where a sample has values under several colour specifications, those under {0} are taken</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>widening</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>widening {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>widest {0} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>with {0}; see Mordanting</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a bath</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>without a name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>woman, 5th percentile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>woman, 95th percentile</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>woman, mean</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work the repeat {0} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>work {0} in the place of {1}: the round becomes clear</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>write down how much liquor {0} may hold</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>xyz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yards to 1 oz</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellow green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish black</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish brown</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish green</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish grey</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish pink</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>yellowish white</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}
{1} · float {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}   {1}, {2}{3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}  no lot yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}  ·  1 page</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}  ·  nothing on it</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}  ·  within the limit of {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}  ·  {1} pages</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} % beyond the camera's range</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} % in shadow</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (Ctrl+{1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (bath {1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (changed since)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (design)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (palette)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} (planned)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} ({1} when the hat has the keys)</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} ({1})</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} ({1}) is {2} short.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} 1 round, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} L</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} L to 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} across</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} and {1} are {2} {3}, but {4} {5}: {6} apart in value for certain, in the place of {7}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} and {1} differ by {2} in value, {3} for certain: {4} along {5} of edge{6}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} and {1}: {2}, value differs by {3}, at least {4}; edge {5}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} are {1} here: {2} apart in value, {3} for certain{4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} as it is</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at place {1} is no Delete; the signs are {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at place {1} is no Duplicate; the signs are {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at place {1} is no Insert; the signs are {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at place {1} is no Move; the signs are {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} at {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} behind this stitch alone, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} behind: {1} stitches, {2}, {3} to {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} by rule</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be deleted: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be named in a palette; give it a plainer name</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cannot be taken off a weight on hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} cells but {1} shaping signs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} columns</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} days</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} deep along the fabric</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} deep, {1}: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g in</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g lie there {1}; write down what 100 g dry to, and they count.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g needed, {1} g at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g of {1} {2} are at hand, enough for the {3} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g of {1} {2} are needed; the shelf lists none</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g of {1} {2} serve {3} g of the {4} g of fibre; {5} g are missing</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g out</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g short; {1} g will be left over</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g to 1 g of fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g were planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} g, {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} h</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has changes that are not saved.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has no reading</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1} characters, more than {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} has {1} readings, more than {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} high</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no PNG or JPEG picture</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no place of a caution; there are {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is no shaping</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not 'letters | cells' or 'letters | cells | shaping'</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not planned</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not there any more: something else has moved or removed it.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not valid XML: Delete</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not valid XML: Duplicate</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not valid XML: Insert</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not valid XML: Move</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is not what the edit remembers</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is on the shelf now, among your own.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is planned along already.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is shaped: lay it in as a band of its own</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is worked in {1} stitches but is no lot yet</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1} stitches wide, the band's repeat only {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1}, outside {2} to {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1}, which is too little</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1}; a letter is one capital, A to Z</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1}; it can be {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} is {1}; it is made of small letters and digits, with hyphens between</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} laid flat</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} letters over {1} rounds.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lines of decreases do not divide {1} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lines that take {1} cannot make {2} stitches of {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lots have this name; the first is meant</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lots of this design are not in the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lots of this design differ from the palette</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lots of {1} are at hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} lots under CIE {1} with the {2}° observer. Ctrl or Shift picks a second to compare.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} makes {1} of up to {2} stitches, {3}; the limit is {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} must be a finite number, not {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} needs {1} letters, not {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} new</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of bath {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of its {1} rounds are past the top of the band and {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the design's lots differ from the palette: the Lots page shows in what</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of the fibre</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of these files are there already, {1} among them. They will be written anew.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} motifs</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} of {1}, after a round that takes {2} away</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} planned, {1}: {2} short</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} repeats every {1} stitches, which does not divide {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} round fewer in the {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} round more in the {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds are {1} deep instead of {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds but {1} of letters</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds fewer in the {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds fold on the {1} between the worn edge and the crown, which are too few</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds more in the {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} rounds, {1} along the fabric; {2} stitches are drawn up at the top.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} sections do not divide {1} stitches; those that do: {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} should go, but only {1} plain ones between brim and crown can: take rounds out of a pattern by hand, or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} skeins</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches are {1} round instead of {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches are {1} round; a head of {2} with {3} % ease asks for {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches become {1} in {2} rounds or more: a round can make every second stitch at most</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches cast on, {1} rounds:</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches cast on, {1} rounds; {2} round and {3} high as worn.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches fewer in one round is more than the fabric takes without a pucker at this gauge, {1} at the most: take fewer sections, or single decreases</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches × {1} rounds</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches, {1} round</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} stitches, {1} round, are asked for.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} swatches, which scatter by {1}: the mean, and what it may be off by.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} times {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} to {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} units of the window to 1{1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} unravelled</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} weighed</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} g to 100 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} of this yarn</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} rounds, {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} rounds{2}  down, or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} rounds{2}  up, or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} rounds{2} , or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} round{2}  down, or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} round{2}  up, or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} round{2} , or set the depth that is wanted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1} under CIE {2} with the {3}° observer.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} {1}, {2} g to 1 g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × ({1} %), {2} to {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1} = {2} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1} of hat fill {2}° × {3}°</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1} times</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1}, from {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0} × {1}, from {2} across the join</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, a colour of a screen: it counts as approximate.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, among the lights, has a value of {1}, and {2}, among the darks, of {3}: the sides overlap</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, and a hat has at least {1}: take a finer gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, by the ball</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, floats past {1} %</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, for {3}. Samples: {1}; readings: {2}.</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, if another</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, more than {1}: take a coarser gauge</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, not as usual</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, plain</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, so it cannot be pasted</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, which holds {1} L, takes the {2}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1} known</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1} min</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1} × {2} px</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}, {1}, {2} do not rise</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: 1 round of {1} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: value {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} g</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} is no weight</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} is not a number</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} needed, {2} planned, {3} on hand</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} rounds of {2} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1} rounds, {2} to {3} stitches</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}: {1}, repeat {2} stitches, {3} rounds, longest float {4}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; more readings would not change that</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; no number of readings would make it {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; selected: {1}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>{0}; {1} more of 1 and {2} more of 2 would make it {3}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>|value|</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>ΔE {0}</source>
        <translation type="unfinished"></translation>
    </message>
    <message>
        <source>• {0}: {1}{2}. Source: {3}</source>
        <translation type="unfinished"></translation>
    </message>
</context>
</TS>
