import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';

/** One column on a phone; where there is room, what was measured on the left, what comes of it on the right. */
export const washStyles = unsafeCSS(`${SHARED_STYLES}
.table,.part{display:grid;gap:24px;align-items:start}
.part{align-content:start}
svg{display:block;overflow:visible;width:100%}
svg:where(:not(.picture)) text{fill:var(--ragbloom-ink);font-size:12px;font-variant-numeric:tabular-nums}
[role=alert]:not(:has(*)){position:absolute}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.notice button{margin-block-start:.6em}
.room{min-height:27em}
.waiting{aspect-ratio:5/6;min-height:60em;border:1px solid var(--ragbloom-line)}
.busy .result,.busy .picture{opacity:.55;transition:opacity .2s .15s}
.figures{display:grid;grid-template-columns:repeat(auto-fit,minmax(9em,auto));gap:.6em 1em}
.figures dd{white-space:nowrap}
.figures b{font-family:var(--ragbloom-display,inherit);font-size:1.7em;line-height:1.1}
.invented{display:flex;flex-wrap:wrap;align-items:center;gap:.5em .7em;padding:.6em .8em;border:1px dashed var(--ragbloom-edge)}
.invented p{flex:1 1 14em}
.cloth{padding-block-start:1em;border-block-start:1px solid var(--ragbloom-line)}
.cloth-head{grid-template-columns:1fr 5em}
.cloth-head .field:has([id^=name-]){grid-column:1/-1;order:1}
.grid{display:grid;gap:6px}
.grid-row{position:relative;display:grid;grid-template-columns:1.1em repeat(4,1fr);gap:6px;align-items:center}
.grid-row.diagonals{grid-template-columns:1.1em 1fr 1fr;margin-block-start:6px;max-width:15em}
.heads{align-items:end;gap:2px 6px}
.heads .way{grid-column:span 2;font-size:.9em}
.heads small{line-height:1.1}
.cell input{padding:0 .35em}
.result figcaption{display:flex;justify-content:space-between;align-items:baseline;gap:.6em}
.result figcaption b{font-size:1.15em}
.result p{margin-block-start:.35em}
.note{padding-inline-start:.7em;border-inline-start:4px solid var(--ragbloom-madder)}
.source{display:block;font-size:.9em}
.next{fill:var(--ragbloom-line)}
.mean-band{fill:var(--ragbloom-edge)}
.usual{fill:none;stroke:var(--ragbloom-edge);stroke-width:1.2;stroke-dasharray:3 2}
.mean,.pointer{stroke:var(--ragbloom-madder);stroke-width:3;fill:none}
.edge,.level,.course,.arrow,.pair,.selvage{fill:none;stroke:var(--ragbloom-ink)}
.level{stroke:var(--ragbloom-line)}
.course{stroke-width:1.6}
.dot{fill:var(--ragbloom-sheet);stroke:var(--ragbloom-ink);stroke-width:1.6}
.doubt{fill:var(--ragbloom-madder);fill-opacity:.25;stroke:var(--ragbloom-madder)}
.tag,.letter{font-weight:600}
.letter{display:inline-block;min-width:1.4em;text-indent:0}
.chart{max-width:36em}
.legend{display:grid;gap:.2em}
.legend li{padding-inline-start:1.4em;text-indent:-1.4em}
.guide{max-width:32em}
.picture{max-height:34em}
.caption{justify-content:space-between;gap:.6em 1.2em}
.keys{display:flex;flex-wrap:wrap;gap:.2em 1.2em}
.key::before{content:"";display:inline-block;width:1.6em;margin-inline-end:.4em;vertical-align:middle;border-top:2px solid var(--ragbloom-ink)}
.key.dashed::before{border-top-style:dashed}.key.solid::before{border-top-color:#c2453d}
a.go{display:inline-grid;place-items:center;min-height:44px;padding:.3em 1em;border-radius:3px;text-decoration:none;justify-self:start;text-align:center}
table{width:100%;border-collapse:collapse}
th{text-align:start;font-weight:400}
td,th+th{text-align:end;padding-inline-start:.6em}
tbody th,td{padding-block:.45em}
tbody tr,.lines>li{border-top:1px solid var(--ragbloom-line)}
.under,.under td{border:0;padding:0 0 .5em;text-align:start}
.lines>li{padding:.5em 0}
.lines small{display:block}
.puckers{font-weight:600}
.skew{display:grid;grid-template-columns:6em 1fr;gap:1em;align-items:center}
.cloth:is(rect,path){fill:var(--ragbloom-ground);stroke:var(--ragbloom-edge)}
.barred{fill:var(--ragbloom-line)}
.selvage{stroke-width:3}
.swatch{fill:var(--ragbloom-sheet);stroke:var(--ragbloom-ink);stroke-width:1.4}
.pair{stroke-dasharray:4 3}
.guide .dot{fill:var(--ragbloom-madder);stroke:none}
.true{fill:none;stroke:var(--ragbloom-ink);stroke-dasharray:4 3}
.steps{display:grid;gap:.5em;counter-reset:step}
.steps li{display:grid;grid-template-columns:1.6em 1fr;counter-increment:step}
.steps li::before{content:counter(step);color:var(--ragbloom-madder);font-weight:600}
.start,.part>button{justify-self:start}
.plain{background:none;border-color:#0000;text-decoration:underline;padding:0;color:var(--ragbloom-soft)}
.swatch-sheet{display:none}
.foot{position:sticky;bottom:0;z-index:1;display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 .8em;margin-inline:calc(var(--ragbloom-gutter,0px)*-1);padding:.55em calc(var(--ragbloom-gutter,0px) + .2em);background:var(--ragbloom-ink);color:var(--ragbloom-sheet);white-space:nowrap}
@container(min-width:36em){.sizes :is(th,td){white-space:nowrap}}
@container(min-width:52em){
.table{grid-template-columns:minmax(24em,27em) 1fr;column-gap:36px}
.wide{grid-column:1/-1}
.foot{display:none}
}
@media(forced-colors:active){.next,.mean-band,.doubt{fill:Highlight;stroke:CanvasText}svg:where(:not(.picture)) text{fill:CanvasText}a.go{color:LinkText;border:1px solid}}
@media print{
.off,.foot,.marking,.quilt,button,details,.invented,.caption fieldset,.waiting{display:none!important}
.table,.part,.card{display:block}
.card{filter:none;background:none;padding:0}
.card::after{display:none}
.part>*,.card>*{margin-bottom:.8em}
.picture{max-height:9cm}
fieldset:not(.whole){display:none}
.cloth{display:block;break-inside:avoid}
.cloth-head{grid-template-columns:1fr 1fr 8em}
.grid-row.fields:last-of-type{display:none}
input,select{min-height:0;height:1.7em;border-width:0 0 1px;appearance:none}
.result{display:inline-block;width:48%;margin-inline-end:1.5%;vertical-align:top}
.chart{max-width:11cm}
figure,tr,li,.picture{break-inside:avoid}
.sheet-only{display:none}
.swatch-sheet{display:block;color:#000;font-size:10pt}
.swatch-sheet p{margin:1mm 0 2mm}
.template{width:auto;max-width:none;overflow:visible}
.template text{font-size:3.4px;fill:#000}
.template .loud{font-weight:700}
.template .faint{stroke:#999;stroke-width:.15;stroke-dasharray:1 2}
.template :is(.cross,.check,.tick,.arrow){stroke:#000;stroke-width:.3;fill:none}
.template .blank{fill:#fff}
.swatch-sheet table{width:186mm;margin-block-start:3mm}
.swatch-sheet :is(td,th){border:.3mm solid #000;height:8mm;padding:0 1.5mm;text-align:start;font-size:9pt}
}`);
