import { TOKENS } from './tokens.ts';

/**
 * What the smallest element wears: tokens, type, fields, chips, buttons. No `rem`: the root is the host's. The rules of
 * a page beat those of `:host`, so that what layout rests on is said once more of what is inside.
 * Plain text, of which each element makes one sheet.
 */
export const BASE_STYLES = `
:host{${TOKENS}
display:block;container-type:inline-size;color:var(--ragbloom-ink);font:inherit;line-height:1.45;}
:host([hidden]){display:none}
*,::before,::after{box-sizing:border-box;margin:0;padding:0;min-width:0}
ul{list-style:none}
fieldset{border:0}
.whole{container-type:inline-size;color:var(--ragbloom-ink);font-style:normal;font-weight:400;line-height:1.45;letter-spacing:normal;word-spacing:normal;text-align:start;text-indent:0;text-transform:none;white-space:normal}
h2{font-family:var(--ragbloom-display,inherit);font-size:1.3em;font-weight:600;line-height:1.2}
small,label,legend,dt,.soft{color:var(--ragbloom-soft);font-size:.9em;font-weight:400}
b,input{font-variant-numeric:tabular-nums}
.hidden{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
.chips{display:flex;flex-wrap:wrap;align-items:center;gap:.5em}
.field{display:grid;gap:.25em;align-content:start}
.fields{display:grid;align-items:start;grid-template-columns:repeat(auto-fit,minmax(8em,1fr));gap:.8em}
input,select,button,.chip{font:inherit;color:inherit;min-height:44px;border:1px solid var(--ragbloom-edge);border-radius:3px;background:var(--ragbloom-sheet)}
[type=text],select{width:100%;padding:0 .6em}
::placeholder{color:var(--ragbloom-soft);opacity:1}
[aria-invalid]{border:2px solid var(--ragbloom-madder)}
.entry{position:relative}
.unit{position:absolute;inset:0 .7em 0 auto;line-height:44px;pointer-events:none}
.fault{color:var(--ragbloom-madder)}
.fault::before{content:"✕ "/""}
button,.chip{min-width:44px;padding:0 .8em;cursor:pointer;display:grid;place-items:center}
[disabled]{opacity:.4}
:focus-visible,.chip:has(:focus-visible){outline:3px solid var(--ragbloom-ink);outline-offset:2px}
legend{margin-bottom:.25em}
.chip:has(:checked){background:var(--ragbloom-ink);color:var(--ragbloom-sheet)}
.chip input{position:absolute;opacity:0}
.fractions{display:none;grid-template-columns:repeat(auto-fill,minmax(44px,1fr));gap:4px;padding-top:4px}
.fractions button{padding:0}
@media(pointer:coarse){:focus-within>.fractions{display:grid}}
@media(forced-colors:active){.chip:has(:checked){forced-color-adjust:none;background:Highlight;color:HighlightText}}
`;
