import { unsafeCSS } from 'lit';
import { LIGHT_STYLES } from '../../look/light-styles.ts';

/** The grid: the drawing of the cloth, and over it a table of blocks. */
export const layoutStyles = unsafeCSS(`${LIGHT_STYLES}
.print{display:grid;grid-template-columns:44px minmax(0,2fr) minmax(5em,1fr);gap:.6em;align-items:end}
.print svg{width:44px;height:44px}
.tools{display:flex;flex-wrap:wrap;gap:.8em 1.4em;align-items:end}
.go{background:var(--ragbloom-madder);border-color:#0000;color:var(--ragbloom-on-madder);font-weight:600}
.see{min-width:0}
.scroll{overflow:auto;max-width:100%}
.board{position:relative;max-width:44em}
.board.large{width:max-content;max-width:none}
.board table{position:relative;z-index:1;table-layout:fixed;border-collapse:collapse}
.board :is(td,th){padding:0;text-align:center}
.board th{font-weight:400;height:24px}
.board th i{font-style:normal;font-size:.8em;color:var(--ragbloom-soft)}
.board td{position:relative;cursor:pointer;touch-action:manipulation;user-select:none;-webkit-touch-callout:none}
.board td::before{content:"";display:block;padding-top:100%}
.board td b{position:absolute;inset:50% auto auto 50%;translate:-50% -50%;min-width:1.4em;padding:0 .25em;border-radius:3px;background:#fdf9f0;color:#1b2233;font-size:.85em}
.board td:focus-visible{outline:4px solid #1b2233;outline-offset:-4px;box-shadow:inset 0 0 0 7px #fdf9f0}
.board .held{box-shadow:inset 0 0 0 5px #1b2233,inset 0 0 0 8px #fdf9f0}
.board .pinned b{border:2px solid #1b2233}
.board .pinned b::after{content:" ⚲"}
.cloth{position:absolute;inset:24px 0 0 24px;width:calc(100% - 24px);height:calc(100% - 24px)}
.many td b{font-size:.6em;min-width:0;padding:0 .15em}
.most td b{display:none}
.most .pinned b{display:block;font-size:0}
.most th:nth-child(n+3):not(:nth-child(5n+1)) i{display:none}
.spread{width:100%;border-collapse:collapse}
.spread th{text-align:start;font-weight:400}
.spread :is(td,th+th){text-align:end;padding-inline-start:.5em}
.spread tr{border-top:1px solid var(--ragbloom-line)}
summary{min-height:44px;cursor:pointer;display:flex;align-items:center;font-weight:600}
.floor{display:none}
@container(max-width:40em){.many td b{display:none}.many .pinned b{display:block;font-size:0}}
@container(max-width:40em){.many th:nth-child(n+3):not(:nth-child(5n+1)) i{display:none}}
@media(forced-colors:active){.board td b{forced-color-adjust:none}.board .held{outline:4px solid Highlight}}
@media print{
.table{display:none}
.floor{display:block}
.floor section{break-after:page}
.floor section:last-child{break-after:auto}
.sheet{display:block;width:100%;max-height:20cm}
.key{display:flex;flex-wrap:wrap;gap:.2em 1.2em;padding-top:.6em}
.key svg{width:18px;height:18px;vertical-align:middle}
}
`);
