import { unsafeCSS } from 'lit';
import { LIGHT_STYLES } from '../../look/light-styles.ts';

/** The grid: the drawing of the cloth, and over it a table of blocks. */
export const layoutStyles = unsafeCSS(`${LIGHT_STYLES}
.print{display:grid;grid-template-columns:44px minmax(0,2fr) minmax(5em,1fr);gap:.6em;align-items:start}
.prints{gap:.5em}
.prints label{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.prints .look{position:relative;width:44px;height:44px;clip-path:none}
.look svg{width:44px;height:44px;display:block}
.look input{position:absolute;inset:0;width:100%;opacity:0;cursor:pointer}
.look:focus-within{outline:3px solid var(--ragbloom-ink);outline-offset:2px}
.tools{display:flex;flex-wrap:wrap;gap:.8em 1.4em;align-items:end}
.go{background:var(--ragbloom-madder);border-color:#0000;color:var(--ragbloom-on-madder);font-weight:600}
.see{min-width:0}
.scroll{position:relative;overflow-x:auto;overflow-y:hidden;max-width:100%;isolation:isolate}
.waiting{min-height:50em}
.board{table-layout:fixed;border-collapse:collapse}
.board :is(td,th){padding:0;text-align:center;line-height:1}
.board th{font-weight:400}
.board thead th{height:24px}
.board th i{font-style:normal;font-size:.8em;color:var(--ragbloom-soft)}
.board td{position:relative;cursor:pointer;touch-action:manipulation;user-select:none;-webkit-touch-callout:none}
.board td::before{content:"";display:block;padding-top:100%}
.board td b{position:absolute;inset:50% auto auto 50%;translate:-50% -50%;width:1.6em;height:1.5em;line-height:1.5em;contain:strict;border-radius:3px;background:#fdf9f0;color:#1b2233;font-size:.85em;pointer-events:none}
.board td:focus-visible{outline:4px solid #1b2233;outline-offset:-4px;box-shadow:inset 0 0 0 7px #fdf9f0}
.board .held{box-shadow:inset 0 0 0 5px #1b2233,inset 0 0 0 8px #fdf9f0}
.board .pinned b{border:2px solid #1b2233;height:2.7em}
.board .pinned b::after{content:"⚲";display:block;line-height:1}
.board svg{position:absolute;inset:0 auto auto 0;height:100%;pointer-events:none}
.cloth{z-index:-1}
.meetings{z-index:2;overflow:visible}
.small td b{display:none}
.small .pinned b{display:block;font-size:0;width:50%;height:50%}
.small thead th:nth-child(n+3):not(:nth-child(5n+1)) i,.small tbody tr:nth-child(n+2):not(:nth-child(5n)) i{display:none}
.small tbody i{position:absolute;translate:-100% -50%}
.spread{width:100%;border-collapse:collapse}
.spread th{text-align:start;font-weight:400}
.spread :is(td,th+th){text-align:end;padding-inline-start:.5em}
.spread tr{border-top:1px solid var(--ragbloom-line)}
summary{min-height:44px;cursor:pointer;display:flex;align-items:center;gap:.5em;font-weight:600}
summary::before{content:"";width:.5em;height:.5em;border:solid;border-width:0 2px 2px 0;rotate:-45deg}
[open]>summary::before{rotate:45deg}
.floor{display:none}
@container(min-width:46em){.table{grid-template-columns:minmax(0,44em) minmax(16em,1fr)}}
@media(forced-colors:active){.go{color:ButtonText;background:ButtonFace;border-color:ButtonText}.board td b{forced-color-adjust:none}.board .held{outline:4px solid Highlight}}
@media print{
:host .table{display:none}
.floor{display:block}
.floor section{break-after:page}
.floor section:last-child{break-after:auto}
.sheet{display:block;width:100%;max-height:19.5cm}
.sheet :is(.face,.motif){opacity:.4}
.map{border-collapse:collapse}
.map td{border:1px solid;padding:.1em .5em}
.map .here{background:#1b2233;color:#fff;print-color-adjust:exact}
.key{display:flex;flex-wrap:wrap;gap:.2em 1.2em;padding-top:.6em}
.key svg{width:18px;height:18px;vertical-align:middle}
}
`);
