import { unsafeCSS } from 'lit';
import { LIGHT_STYLES } from '../../look/light-styles.ts';

/** The blocks drawn beside their figures. */
export const sizeStyles = unsafeCSS(`${LIGHT_STYLES}
.waiting{min-height:36em}
@container(min-width:46em){.waiting{min-height:27em}}
.fields>.field:first-child{grid-column:1/-1}
.result{display:grid;gap:.8em 1.2em;grid-template-columns:minmax(4em,var(--ragbloom-drawing,7em)) 1fr;align-items:start}
.figures+p{margin-top:.6em}
svg{display:block;width:100%;max-height:12em;overflow:visible}
path{fill:var(--ragbloom-ground);stroke:var(--ragbloom-edge);stroke-width:2;vector-effect:non-scaling-stroke;stroke-dasharray:2 1.5}
.seams{fill:none}
.cost{border-top-width:3px;font-size:1.1em}
`);
