import { unsafeCSS } from 'lit';
import { LIGHT_STYLES } from '../../look/light-styles.ts';

/** Rows to type pieces into, and strips drawn below their words. */
export const yardageStyles = unsafeCSS(`${LIGHT_STYLES}
.piece{grid-template-columns:repeat(auto-fit,minmax(5.5em,1fr));gap:.5em;padding-bottom:1em}
.piece button{margin-top:1.55em;justify-self:start}
.strip{padding:.5em 0;border-top:1px solid var(--ragbloom-line)}
.enough{color:var(--ragbloom-leaf);font-weight:600}
.enough::before{content:"✓ "/""}
[part=strips]{margin-top:1em}
svg{display:block;width:100%;max-width:var(--ragbloom-drawing,30em);max-height:7em;margin-top:.4em;overflow:visible}
path{fill:var(--ragbloom-ground);stroke:var(--ragbloom-edge);stroke-width:1.5;vector-effect:non-scaling-stroke}
.bare{fill:none;stroke-dasharray:4 3}
`);
