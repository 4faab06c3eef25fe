//! How the sheets look: one ink, body 10 points or more, tags 14 or more. Written so that nothing in it needs escaping.

/// The style sheet of a page that prints alone.
pub(super) const PAPER: &str = "
@page { margin: 10mm }
* { box-sizing: border-box }
body { margin: 0; background: #fff; color: #000; font: 10pt/1.22 Arial, Helvetica, sans-serif }
main { width: 190mm; max-width: 100%; margin: 0 auto }
h1 { font-size: 16pt; margin: 0 }
h2 { font-size: 12pt; margin: 3mm 0 1mm }
p { margin: 1mm 0 }
.sheet { break-after: page }
.sheet:last-child { break-after: auto }
.head { display: flex; justify-content: space-between; align-items: end; gap: 4mm; border-bottom: .8mm solid; padding-bottom: 1mm }
.head p { margin: 0; text-align: right }
.first { border: .8mm solid; padding: .5mm 2mm; margin: 1mm 0 }
table { border-collapse: collapse; width: 100%; margin: 1mm 0 }
th, td { text-align: left; padding: .3mm .8mm; border-bottom: .2mm solid; vertical-align: middle }
thead { display: table-header-group }
tr { break-inside: avoid }
th { vertical-align: bottom }
.n { text-align: right; white-space: nowrap }
.w { white-space: nowrap }
.no { font-size: 14pt; font-weight: bold; line-height: 1.1; min-width: 20mm; overflow-wrap: anywhere }
.note { width: 9% }
.box { display: inline-block; width: 3.6mm; height: 3.6mm; border: .3mm solid; vertical-align: -.5mm; margin-right: 1mm }
.tags { display: grid; grid-template-columns: repeat(3, 1fr) }
.tag { height: 36.5mm; overflow: hidden; border: .2mm dashed; padding: 1.2mm 1.5mm; break-inside: avoid }
.tag h2 { font-size: 18pt; margin: 0; line-height: 1; overflow-wrap: anywhere }
.tag p { margin: .6mm 0 0; line-height: 1.15 }
.tag .keep { border-top: .5mm solid; padding-top: .5mm; font-weight: bold }
ul { margin: 1mm 0; padding-left: 5mm }
@media screen { main { padding: 8mm 0 } .sheet { margin-bottom: 14mm } }
";
