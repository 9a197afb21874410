/** What only lies below the first screen wears. */
export const BELOW_STYLES = `
.swatches svg,.name svg,.name i{width:28px;height:28px;flex:none;background:var(--ragbloom-line)}
.part>button{justify-self:start}
table{width:100%;border-collapse:collapse}
th{text-align:start;font-weight:400}
td,th+th{text-align:end;padding-inline-start:.6em;white-space:nowrap}
tbody th,td{padding-block:.45em}
@container(max-width:20em){table{font-size:.86em}td,th+th{padding-inline-start:.4em}.name svg,.name i{width:20px;height:20px}}
tbody tr,.lines>li{border-top:1px solid var(--ragbloom-line)}
td b{font-size:1.2em}
.name small{display:block;line-height:1}
.pairs{display:grid;grid-template-columns:auto 1fr;gap:.5em 1em}
.pairs dt{font-size:1em}
[tabindex]{max-height:24em;overflow:auto}
.work li{padding-top:0}
.ways{display:flex;flex-wrap:wrap;gap:0 1.4em}
.ways a{color:inherit;min-height:44px;display:grid;align-items:center}
.heaps{display:flex;flex-wrap:wrap;gap:.1em 1.1em;margin-inline-start:2.3em;font-variant-numeric:tabular-nums}
.rows{display:grid;word-spacing:.15em}
.work li p{margin-inline-start:2.3em}
.work .check:has(:checked) span{text-decoration:line-through 2px var(--ragbloom-leaf)}
@media print{
.check{min-height:0}
.check input{appearance:none}
.check span{text-decoration:none!important}
}
`;
