/** One step alone, over all of the screen: large type, and a large way on for hands that hold cloth. */
export const FOCUS_STYLES = `
dialog{border:0;color:var(--ragbloom-ink);background:var(--ragbloom-ground);font:inherit;line-height:1.45}
dialog::backdrop{background:#0009}
.focus{inset:0;width:100%;height:100%;max-width:none;max-height:none;padding:0;font-size:20px}
.focus[open]{display:grid;grid-template-rows:auto 1fr auto}
.focus header{display:grid;grid-template-columns:1fr auto;gap:0 1em;padding:10px clamp(12px,4vw,48px);border-bottom:1px solid var(--ragbloom-line);font-size:18px;line-height:1.3}
.focus header button{grid-area:1/2/3}
.focus header b{font-variant-numeric:tabular-nums}
.sight{overflow:auto;max-height:none;padding:clamp(12px,3vh,32px) clamp(14px,5vw,64px)}
.sight>*{max-width:44em;margin-inline:auto}
.sight>*+*{margin-block-start:.8em}
.sight h2{font-size:1.7em}
.sight svg{display:block;width:100%;max-width:min(30em,62vh);background:var(--ragbloom-sheet);padding:10px}
.sight>.picture-of-step+*{margin-block-start:.6em}
.sight .soft{font-size:.8em}
.focus .check{min-height:52px}
.warn{padding:.5em .8em;border-inline-start:6px solid var(--ragbloom-madder);background:var(--ragbloom-sheet);font-size:.85em}
.warn.note{border-color:var(--ragbloom-edge)}
.turn{display:grid;grid-template-columns:minmax(max-content,1fr) 3fr;gap:10px;padding:10px clamp(12px,4vw,48px) max(12px,env(safe-area-inset-bottom));border-top:1px solid var(--ragbloom-line)}
.turn button{min-height:84px;font-size:1.25em}
.focus .heaps{font-size:1em}
@media(min-width:60em){.focus{font-size:24px}.sight{display:grid;grid-template-columns:minmax(20em,1fr) 1.2fr;align-content:start;column-gap:48px}
.sight>*{margin-inline:0;grid-column:2}.sight>.picture-of-step{grid-column:1;grid-row:1/9;margin-block-start:0}.sight:not(:has(.picture-of-step)){grid-template-columns:1fr}.sight:not(:has(.picture-of-step))>*{grid-column:1}}
@media(hover:none){.keys{display:none}}
@media(forced-colors:active){.turn .go{color:ButtonText}}
@media print{.focus{display:none!important}}
`;
