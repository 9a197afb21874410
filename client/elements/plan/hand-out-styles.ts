/** The short form over the plan. */
export const FORM_STYLES = `
dialog{border:0;color:var(--ragbloom-ink);background:var(--ragbloom-sheet);font:inherit;line-height:1.45}
dialog::backdrop{background:#0009}
.form{margin:auto;width:min(32em,100% - 24px);max-height:calc(100% - 24px);overflow:auto;padding:1.3em}
.form form{display:grid;gap:1em}
.form textarea{font:inherit;color:inherit;width:100%;min-height:5em;padding:.5em .6em;border:1px solid var(--ragbloom-edge);border-radius:3px;background:var(--ragbloom-sheet)}
.form .narrow{max-width:7em}
.form .chips>.go{flex:1 1 auto}
@media print{.form{display:none!important}}
`;

/**
 * Two pages that fit on Letter and on A4: as narrow as the one allows and as low as the other does. On a screen they
 * stand out of sight, so that they can be measured; all in them is sized by the type of their leaf.
 */
export const SHEET_STYLES = `
.hand-out{position:fixed;inset:0 auto auto 0;visibility:hidden;pointer-events:none;color:#000;line-height:1.32;text-align:start}
.hand-out *{color:inherit}
.leaf{width:185mm;height:254mm;overflow:hidden;display:flex;flex-direction:column;gap:.9em;font-size:9.5pt}
.leaf>*{flex:none}
.tight-1{font-size:8.9pt}.tight-2{font-size:8.3pt}.tight-3{font-size:7.7pt}.tight-4{font-size:7pt}.tight-5{font-size:6.2pt}.tight-6{font-size:5.4pt}
.hand-out h1{font-family:var(--ragbloom-display,inherit);font-size:2.1em;line-height:1.15;font-weight:600;overflow-wrap:anywhere}
.hand-out h2{font-size:1.26em;margin:0 0 .3em}
.hand-out h3{font-size:1em;font-weight:700;line-height:1.2}
.own-note{border:.3mm solid #000;padding:.6em .9em;white-space:pre-line;overflow-wrap:anywhere}
.lead{display:grid;grid-template-columns:1.15fr 1fr;gap:1.8em;border-top:.5mm solid #000;padding-top:.9em}
.lead svg{display:block;width:100%;max-height:27em}
.lead dl{display:grid;grid-template-columns:auto 1fr;gap:.25em .9em}
.lead dt{font-size:1em;color:#333}
.lead dd{text-align:end;font-weight:600}
.bring{width:100%;border-collapse:collapse}
.bring :is(th,td){border-bottom:.2mm solid #999;padding:.25em .4em;text-align:end;vertical-align:baseline;white-space:nowrap;font-size:1em}
.bring :is(th,td):first-child{text-align:start;white-space:normal;font-weight:600;overflow-wrap:anywhere}
.bring thead :is(th,td){border-bottom:.4mm solid #000;color:#333;font-weight:400;white-space:normal;vertical-align:bottom}
.bring .wordy{white-space:normal}
.bring tbody+tbody{border-top:.4mm solid #000}
.crowd .lists{columns:2;column-gap:1.8em}
.crowd .lead svg{max-height:19em}
.deeds{columns:2;column-gap:1.8em}
.deed{display:grid;grid-template-columns:10em 1fr;gap:.8em;break-inside:avoid;border-top:.2mm solid #999;padding:.35em 0 .65em}
.deed.plain{grid-template-columns:1fr}
.deed svg{display:block;width:100%}
.deed p{font-size:.86em;line-height:1.25;margin-top:.15em}
.heed{border-top:.5mm solid #000;padding-top:.45em;columns:2;column-gap:1.8em;line-height:1.22}
.heed h2{column-span:all}
.heed p{break-inside:avoid;margin:0 0 .4em;font-size:.8em}
.heed .danger{border:.5mm solid #000;padding:.4em;font-size:.88em}
@media print{
:host,.whole{container-type:normal}
.table:has(>.hand-out)>:not(.hand-out){display:none!important}
.hand-out{position:static;visibility:visible}
.leaf+.leaf{break-before:page}
}
`;
