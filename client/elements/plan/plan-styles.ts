import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';

/** One column on a phone; where there is room, what is asked on the left, what came of it on the right, the sheets below. */
export const planStyles = unsafeCSS(`${SHARED_STYLES}
.table{display:grid;gap:24px}
.part{display:grid;gap:24px;align-content:start}
.figures{display:flex;flex-wrap:wrap;gap:.6em 1.2em}
.figures dd{white-space:nowrap}
.figures b{font-family:var(--ragbloom-display,inherit);font-size:var(--ragbloom-figure,1.7em);line-height:1.1}
@container(max-width:24em){.figures b{font-size:var(--ragbloom-figure,1.45em)}}
:is([role=alert],.lines):not(:has(*)){position:absolute}
.picture{width:100%;max-height:36em;overflow:visible}
.waiting{aspect-ratio:5/6}
.later{min-height:60em}
.caption p{flex:1 16em}
.busy .picture{opacity:.55;transition:opacity .2s .15s}
.fields:has(select){grid-template-columns:repeat(auto-fit,minmax(10em,1fr))}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.options{display:grid;grid-template-columns:repeat(auto-fill,minmax(9.5em,1fr));gap:10px}
.options button{padding:.6em;gap:.5em;place-items:start;text-align:start;border-color:var(--ragbloom-line)}
.options [aria-pressed=true]{border:2px solid var(--ragbloom-ink)}
.options svg{height:84px;max-width:100%}
:is(.options,.lines) :is(span,small){display:block;overflow-wrap:anywhere}
.soft{overflow-wrap:anywhere}
.lines>li{padding:.5em 0}
.lines>.danger{border:2px solid var(--ragbloom-madder);padding:.8em}
.danger strong{color:var(--ragbloom-madder)}
.foot{position:sticky;bottom:0;z-index:1;display:flex;justify-content:space-between;gap:.8em;margin-inline:calc(var(--ragbloom-gutter,0px)*-1);padding:.55em calc(var(--ragbloom-gutter,0px) + .2em);background:var(--ragbloom-ink);color:var(--ragbloom-sheet);font-size:1.1em;white-space:nowrap}
.foot small{color:inherit}
@container(min-width:52em){
.table{grid-template-columns:minmax(22em,25em) 1fr;grid-template-rows:auto 1fr;column-gap:36px}
.see{grid-area:1/2/3}
.sheets{grid-column:1/-1;display:grid;grid-template-columns:1fr 1fr;gap:36px}
.foot{display:none}
}
@media print{
.ask,.make,.later,.options,.off,.foot,button,details,fieldset:not(.whole){display:none!important}
.table,.sheets,.part,.card{display:block}
.card{filter:none;background:none;padding:0;margin:0 0 1em}
.card::after{display:none}
.picture{max-height:10cm}
.part>*,.card>*{margin-bottom:.8em}
h2{break-after:avoid}
.see,tr,li,dl{break-inside:avoid}
}`);
