/** What the pages with tables of cloth wear beside the shared styles. */
export const TABLE_STYLES = `
.table,.part,.sheets{display:grid;gap:24px}
.part{align-content:start}
:is([role=alert],.told):not(:has(*)){position:absolute}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.notice.quiet{border-inline-start-color:var(--ragbloom-leaf);display:flex;flex-wrap:wrap;align-items:center;gap:.5em 1em}
.notice+.notice{margin-block-start:.6em}
.notice:not(.quiet) button{margin-block-start:.6em}
.invented{display:flex;flex-wrap:wrap;align-items:center;gap:.5em .7em;padding:.6em .8em;border:1px dashed var(--ragbloom-edge)}
.invented p{flex:1 1 14em}
.cloths{width:100%;border-collapse:collapse;text-align:start}
.cloths :is(thead,tbody){display:grid;gap:8px}
.cloths thead{margin-block-end:4px}
.cloths tr{display:grid;grid-template-columns:var(--cells);gap:6px;align-items:center}
.cloths :is(th,td){padding:0;text-align:start}
.cloths .id{display:flex;gap:6px;align-items:center}
.cloths .id svg,.swatch svg{width:28px;height:28px;flex:none}
.cloths input,.cloths select{width:100%;padding:0 .45em}
.cloths .drop button{min-width:36px;padding:0;width:100%;border-color:#0000;background:none}
.cloths .said{grid-column:1/-1}
.cloths .tag{display:none}
.tools{display:flex;flex-wrap:wrap;gap:8px;align-items:center}
.tools .chip{position:relative}
.tools input{inset:0;cursor:pointer}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(8em,auto));gap:.6em 1em}
.figures dd{white-space:nowrap}
.figures b{font-family:var(--ragbloom-display,inherit);font-size:1.7em;line-height:1.1}
.picture{display:block;width:100%;overflow:visible}
.waiting{border:1px dashed var(--ragbloom-edge);padding:2em 1.2em;min-height:14em;display:grid;place-content:center;text-align:center}
.busy .quilt,.busy .kits{opacity:.55;transition:opacity .2s .15s}
.options{display:grid;grid-template-columns:repeat(auto-fill,minmax(9.5em,1fr));gap:10px}
.options button{padding:.6em;gap:.5em;place-items:start;text-align:start;border-color:var(--ragbloom-line)}
.options [aria-pressed=true]{border:2px solid var(--ragbloom-ink)}
.options svg{height:84px;max-width:100%}
.options span,.options small{display:block;overflow-wrap:anywhere}
.list{width:100%;border-collapse:collapse}
.list th{text-align:start;font-weight:400}
.list :is(td,th+th){text-align:end;padding-inline-start:.6em}
.list :is(tbody th,td){padding-block:.45em;overflow-wrap:anywhere}
.list tbody tr,.lines>li{border-top:1px solid var(--ragbloom-line)}
.list td b{font-size:1.15em}
.swatch{display:flex;gap:.5em;align-items:center}
.lines>li{padding:.5em 0}
.lines small{display:block}
.lines>.danger{border:2px solid var(--ragbloom-madder);padding:.8em}
.danger strong{color:var(--ragbloom-madder)}
.part>button,.start{justify-self:start}
.plain{background:none;border-color:#0000;text-decoration:underline;padding:0}
a.go{display:inline-grid;place-items:center;min-height:44px;padding:.3em 1em;border-radius:3px;text-decoration:none;justify-self:start}
.cuttings{display:grid;grid-template-columns:repeat(auto-fill,minmax(13em,1fr));gap:20px 28px;align-items:end}
.cuttings svg{display:block;width:100%}
.foot{position:sticky;bottom:0;z-index:1;display:flex;justify-content:space-between;gap:.8em;margin-inline:calc(var(--ragbloom-gutter,0px)*-1);padding:.55em calc(var(--ragbloom-gutter,0px) + .2em);background:var(--ragbloom-ink);color:var(--ragbloom-sheet);font-size:1.1em;white-space:nowrap}
.foot small{color:inherit}
@container(max-width:40em){
.cloths thead{position:absolute;clip-path:inset(50%);width:1px;height:1px;overflow:hidden}
.cloths tbody{gap:14px}
.cloths tr{grid-template-columns:repeat(5,1fr) 44px}
.cloths tr+tr{border-block-start:1px solid var(--ragbloom-line);padding-block-start:12px}
.cloths .id{grid-column:1/4}
.cloths .role{grid-column:4/6}
.cloths .drop{grid-column:6;grid-row:1}
.cloths .drop button{min-width:44px}
.cloths .print{grid-column:1/-1}
.cloths :is(.width,.length,.count,.cost){grid-column:span 2}
.cloths .tag{display:block;line-height:1.3;white-space:nowrap}
.cloths .cost .tag small{display:none}
.cloths .role select{padding:0 .2em}
.cloths :is(.id,.role) .tag{display:none}
}
@container(min-width:62em){
.table{grid-template-columns:minmax(0,1.25fr) minmax(0,1fr);grid-template-rows:auto 1fr;column-gap:36px}
.ask{grid-area:1/1/3}
.see{grid-area:1/2}
.others{grid-area:2/2}
.sheets{grid-column:1/-1;grid-template-columns:1.25fr 1fr;gap:36px}
.foot{display:none}
}
@media(forced-colors:active){a.go{color:LinkText;border:1px solid}.options [aria-pressed=true]{outline:3px solid Highlight}}
@media print{
.ask,.others,.off,.foot,button,a.go,details,fieldset:not(.whole){display:none!important}
.table,.sheets,.part,.card,.stack{display:block}
.card{filter:none;background:none;padding:0;margin:0 0 1em}
.card::after{display:none}
.part>*,.card>*,.stack>*{margin-bottom:.8em}
.picture{max-height:10cm}
.cuttings{grid-template-columns:repeat(3,1fr)}
.cuttings svg{max-height:8cm}
h2{break-after:avoid}
figure,tr,li{break-inside:avoid}
}`;
