import { BASE_STYLES } from './base-styles.ts';

/** What every larger element wears beside that: cards with a snipped edge, folds, boxes to tick. */
export const SHARED_STYLES = `${BASE_STYLES}
ol,summary{list-style:none}
thead{color:var(--ragbloom-soft);font-size:.9em;font-weight:400}
output,td{font-variant-numeric:tabular-nums}
input,select,button,.chip{scroll-margin:5em}
.card,.stack{display:grid;gap:.9em;align-content:start}
.card{position:relative;background:var(--ragbloom-sheet);padding:1.1em 1.15em;margin-bottom:10px;filter:drop-shadow(0 1px 1px light-dark(#1b223322,var(--ragbloom-edge)))}
.card::after{content:"";position:absolute;inset:100% 0 auto;height:9px;background:
repeating-linear-gradient(90deg,var(--ragbloom-sheet) 0 5px,#0000 5px 7px) 0 0/100% 6px no-repeat,
repeating-linear-gradient(90deg,var(--ragbloom-sheet) 0 5px,#0000 5px 21px)}
legend+.stack{padding-top:.3em}
.locked{opacity:1}
header,.say,.check,summary,.name{display:flex;align-items:center;gap:.5em}
header{justify-content:space-between}
.go{background:var(--ragbloom-madder);border-color:#0000;color:var(--ragbloom-on-madder);font-weight:600;flex:none}
.check{min-height:44px;padding:.3em 0;gap:.7em;cursor:pointer;color:var(--ragbloom-ink);font-size:1em}
.check input{flex:none;width:1.3em;min-height:1.3em;accent-color:var(--ragbloom-leaf)}
summary{min-height:44px;cursor:pointer;font-weight:600}
summary::before{content:"";width:.5em;height:.5em;border:solid;border-width:0 2px 2px 0;rotate:-45deg}
[open]>summary::before{rotate:45deg}
@media(forced-colors:active){.card{border:1px solid}}
`;
