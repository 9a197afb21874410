import { unsafeCSS } from 'lit';
import { BASE_STYLES } from '../../look/base-styles.ts';

/** One column; where there is room, the question beside its answer. */
export const sizeStyles = unsafeCSS(`${BASE_STYLES}
.table{display:grid;gap:var(--ragbloom-gap,1em);background:var(--ragbloom-sheet);border:var(--ragbloom-border,1px solid var(--ragbloom-line));border-radius:var(--ragbloom-radius,3px);padding:var(--ragbloom-gap,1em)}
.table>:is(.notices,.dangers,.host):not(:has(.notice)):not(.host){display:contents}
.ask,.notices,.dangers{display:grid;gap:.8em;align-content:start}
h3{font-size:1em;font-weight:600}
.fields>.field:first-child{grid-column:1/-1}
.result{display:grid;gap:.8em 1.2em;grid-template-columns:minmax(4em,var(--ragbloom-drawing,7em)) 1fr;align-items:start}
.result>:not(.drawing,.figures){grid-column:1/-1}
svg{display:block;width:100%;max-height:12em;overflow:visible}
.cloth{fill:var(--ragbloom-ground);stroke:var(--ragbloom-edge);stroke-width:2;vector-effect:non-scaling-stroke;stroke-dasharray:3 1.5}
.seams{fill:none;stroke:var(--ragbloom-edge);stroke-width:3;vector-effect:non-scaling-stroke;stroke-dasharray:1.5 1.5}
.figures{display:grid;gap:.6em 1em;grid-template-columns:repeat(auto-fit,minmax(min(8.5em,100%),1fr))}
.figures b{font-family:var(--ragbloom-display,inherit);font-size:var(--ragbloom-figure,1.35em);line-height:1.15}
.figures small{display:block}
li:not(.notice),.cost{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1em;padding:.45em 0;border-top:1px solid var(--ragbloom-line)}
li .fault{flex:100%}
.cost{border-top-width:3px;font-size:1.1em}
a{color:inherit;min-height:44px;display:grid;align-items:center;justify-self:start}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.notice strong{color:var(--ragbloom-madder)}
.notice button{margin-top:.5em}
.waiting{min-height:22em}
.busy .result{opacity:.55;transition:opacity .2s .15s}
@container(min-width:46em){
.table{grid-template-columns:minmax(16em,1fr) 2fr;column-gap:2em}
.table>*{grid-column:2}
.table>.ask{grid-area:1/1/9}
}
@media(prefers-reduced-motion:reduce){.busy .result{transition:none}}
@media print{.ask,.notices,.host,a{display:none}.table{display:block}}
`);
