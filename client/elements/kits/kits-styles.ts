import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';
import { TABLE_STYLES } from '../../look/table-styles.ts';

/** What the kits wear: the columns of their table and the bolts unrolled, beside what all tables of cloth share. */
export const kitsStyles = unsafeCSS(`${SHARED_STYLES}
:host{--cells:minmax(7em,2fr) 6.6em minmax(4em,1fr) minmax(4.4em,1fr) minmax(4.2em,1fr) 36px}
.cloths:has(.print){--cells:minmax(7em,2fr) 6.6em minmax(5em,1fr) minmax(4em,1fr) minmax(4.4em,1fr) minmax(4.2em,1fr) 36px}
.groups{display:grid;gap:1.2em}
.group{display:grid;grid-template-columns:minmax(7em,11em) 1fr;gap:.4em 1.2em;align-items:start}
.group svg.kit{display:block;width:100%;max-height:15em}
.group b.count{font-family:var(--ragbloom-display,inherit);font-size:1.3em}
.group li{display:flex;gap:.5em;align-items:center;padding:.15em 0}
.group li svg{width:24px;height:24px;flex:none}
.unrolled{display:grid;gap:1.1em}
.unrolled svg{display:block;width:100%}
.pairs{display:grid;grid-template-columns:auto 1fr;gap:.5em 1em}
.pairs dt{font-size:1em}
.total th,.total td{font-weight:600}
${TABLE_STYLES}
.figures{grid-template-columns:repeat(auto-fit,minmax(6.4em,auto))}
.fields>:has(#currency){grid-column:1/-1}
@container(max-width:24em){.list{font-size:.85em}.list svg{display:none}.list :is(td,th+th){padding-inline-start:.4em}.list :is(tbody th,td){overflow-wrap:break-word}}
@media print{.others{display:block!important}.groups{grid-template-columns:repeat(3,1fr)}.group{grid-template-columns:1fr;break-inside:avoid}.unrolled svg{width:75%}.unrolled .piece{fill-opacity:.4}}`);
