import { unsafeCSS } from 'lit';
import { SHARED_STYLES } from '../../look/shared-styles.ts';

/** Two of everything, side by side where there is room. */
export const compareStyles = unsafeCSS(`${SHARED_STYLES}
.comparison{display:grid;gap:1.4em}
.asked{display:grid;gap:1.2em}
.asked button{padding:0 .6em}
.pair{display:grid;grid-template-columns:1fr 1fr;gap:1em}
figure svg{display:block;width:100%;max-height:70vh}
figcaption{text-align:center}
table{width:100%;border-collapse:collapse}
th{text-align:start;font-weight:400}
:is(td,th+th){text-align:end;padding-inline-start:.6em}
:is(tbody th,td){padding-block:.45em;vertical-align:top;overflow-wrap:anywhere}
tbody tr{border-top:1px solid var(--ragbloom-line)}
td small{display:block}
a{color:inherit;min-height:44px;display:grid;align-items:center}
.notice{border:1px solid;border-inline-start:6px solid var(--ragbloom-madder);padding:.6em .9em}
.notice button{margin-top:.5em}
[role=alert]:not(:has(*)){position:absolute}
.waiting{border:1px dashed var(--ragbloom-edge);padding:2em 1.2em;min-height:14em;display:grid;place-content:center;text-align:center}
.busy .compared{opacity:.55;transition:opacity .2s .15s}
@container(min-width:46em){.asked{grid-template-columns:1fr 1fr}}
@media print{
.off,button{display:none!important}
.card{filter:none;background:none;padding:0}
.card::after{display:none}
figure svg{max-height:9cm}
tr,figure{break-inside:avoid}
}
`);
