import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';

/**
 * The answer fills what the lower half leaves: that one stands at the foot, within reach of a thumb. Where there is
 * more width than height the two stand side by side.
 */
export const counterStyles = unsafeCSS(`${SHARED_STYLES}
:host,.whole{display:grid}
.counter{display:grid;grid-template-rows:1fr auto;gap:8px}
.answer{display:grid;align-content:start;gap:2px;padding-block:4px;overflow-wrap:anywhere}
.answer header{align-items:baseline;flex-wrap:wrap;gap:0 .6em}
.amount{font-size:min(27cqi,9em);line-height:1.05;white-space:nowrap}
.amount b{font-family:var(--ragbloom-display,inherit);font-weight:600;letter-spacing:-.02em}
.amount small{font-size:.3em}
.narrow{font-size:min(13cqi,4em)}
.spoken{font-size:1.25em;line-height:1.25}
.verdict{border:2px solid;padding:.3em .6em;margin-block-start:6px}
.verdict b{display:block;font-size:1.3em}
.enough{border-color:var(--ragbloom-leaf)}
.enough b{color:var(--ragbloom-leaf)}
.enough b::before{content:"✓ "/""}
.short{border:2px dashed var(--ragbloom-madder)}
.short b{color:var(--ragbloom-madder)}
.short b::before{content:"✕ "/""}
.sum{display:flex;flex-wrap:wrap;gap:0 1em;color:var(--ragbloom-soft)}
.sum b{color:var(--ragbloom-ink)}
.hand{display:grid;gap:8px;grid-template-rows:auto 1fr auto}
.modes .chips{display:grid;grid-template-columns:repeat(4,auto);gap:4px}
.modes .chip{padding:0 .2em;font-size:.95em}
:is(.modes,.widths) .chip:not(:has(:checked)){color:var(--ragbloom-ink)}
.panel{display:grid;gap:8px;align-content:start;min-height:15.5em}
.widths{display:grid;grid-template-columns:repeat(3,1fr);gap:6px}
.widths .chip{padding:.2em;line-height:1.25;align-content:center}
.widths small{font-size:1em}
.chip:has(:checked) small{color:inherit}
.panel .fields{grid-template-columns:repeat(2,1fr)}
.nearest{display:grid;gap:2px;justify-items:start;min-height:7.5em;align-content:start}
table{width:100%;border-collapse:collapse}
th,td{text-align:end;padding:.35em 0 .35em .4em;border-block-end:1px solid var(--ragbloom-line)}
th:first-child{text-align:start;padding-inline-start:0}
thead th{font-weight:400}
.list li{display:flex;align-items:center;gap:4px;border-block-end:1px solid var(--ragbloom-line)}
.list .check{flex:none;width:44px;justify-content:center}
.list button{flex:1;display:flex;justify-content:space-between;gap:.6em;border:0;background:none;text-align:start}
.list span+span{text-align:end;white-space:nowrap}
.list small{display:block;line-height:1.1}
.list .hand{display:flex;background:var(--ragbloom-ground);box-shadow:inset 4px 0 var(--ragbloom-madder)}
.bar{position:sticky;bottom:0;z-index:1;display:grid;grid-auto-flow:column;grid-template-columns:auto 1fr auto;gap:8px;padding-block:6px;background:var(--ragbloom-ground)}
.bar:not(:has(button)){grid-template-columns:1fr}
.bar button{min-width:76px;min-height:52px;font-size:1.6em;line-height:1}
.tick{justify-content:center;min-height:52px;border:1px solid var(--ragbloom-edge);border-radius:3px;background:var(--ragbloom-sheet);font-weight:600}
.tick:has(:checked){border:2px solid var(--ragbloom-leaf)}
.start{align-content:start;align-self:end}
.start h3{font-size:1em}
.start button{justify-self:stretch}
[role=alert]:not(:has(*)){position:absolute}
.code svg{display:block;width:min(100%,18em);margin-inline:auto}
@container(min-width:34em){
.counter{grid-template:1fr/minmax(0,1fr) minmax(20em,1fr);gap:24px;align-items:start}
.amount{font-size:min(15cqi,11em)}
.counter:has(.start){grid-template-columns:minmax(0,34em)}
.start{align-self:start}
}
@media(forced-colors:active){.amount,.amount *{forced-color-adjust:none;color:CanvasText}.go{color:ButtonText;border-color:ButtonText}.verdict,.tick:has(:checked){border-color:Highlight}.list .hand{outline:2px solid Highlight}}
@media print{.hand{display:none}}
`);
