import { BASE_STYLES } from './base-styles.ts';

/** What the elements for the pages of others wear: one sheet of cloth, what is asked beside its answer where there is room. */
export const LIGHT_STYLES = `${BASE_STYLES}
.table{display:grid;gap:var(--ragbloom-gap,1em);background:var(--ragbloom-sheet);border:var(--ragbloom-border,1px solid var(--ragbloom-line));border-radius:var(--ragbloom-radius,3px);padding:var(--ragbloom-gap,1em)}
.stack{display:grid;gap:1em;align-content:start}
.stack>:is([role=alert],ul):not(:has(*)){position:absolute}
h3{font-size:1em;font-weight:600;padding-bottom:.3em}
.figures{display:flex;flex-wrap:wrap;gap:.6em 1.4em}
.figures b{font-family:var(--ragbloom-display,inherit);font-size:var(--ragbloom-figure,1.35em);line-height:1.15}
.figures small{display:block}
.line{display:flex;flex-wrap:wrap;justify-content:space-between;gap:0 1em;padding:.45em 0;border-top:1px solid var(--ragbloom-line)}
.line>.fault{flex:100%}
a{color:inherit;min-height:44px;display:grid;align-items:center;justify-self:start}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.notice+.notice,.notice button{margin-top:.5em}
.notice strong{color:var(--ragbloom-madder)}
.waiting{min-height:25em}
.busy section+section{opacity:.55;transition:opacity .2s .15s}
@container(min-width:46em){.table{grid-template-columns:minmax(16em,1fr) minmax(0,44em);column-gap:2em}}
@media print{.table>:first-child,button,a{display:none}.table{display:block}}
`;
