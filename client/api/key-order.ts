/** Keys of an input as a whole, whichever address it is for. */
const WHOLE: readonly string[] = [
  ...['unit', 'target', 'plan', 'kits', 'columns', 'rows', 'prints', 'pattern', 'pieces', 'block'],
  ...['cuts', 'swatches', 'layers', 'shape', 'touch', 'grain', 'sewn', 'wanted', 'washes'],
  ...['confidence', 'spare', 'stitch', 'pace', 'tolerance', 'infant', 'pupils', 'explain'],
  ...['squaring', 'usable', 'fixed', 'seed', 'bolts', 'perKit', 'costs', 'currency', 'fibres'],
];

/**
 * The order in which the service writes the keys of each group into a canonical address. A group is
 * named by its own key; the input as a whole by nothing. Keys that are not listed come last, as given.
 */
export const KEY_ORDER: Readonly<Record<string, readonly string[]>> = {
  '': WHOLE,
  plan: WHOLE,
  target: ['width', 'height', 'at', 'size', 'region', 'bed', 'columns', 'rows'],
  bed: ['width', 'length', 'drop', 'footDrop'],
  block: ['cut', 'seam', 'snipDepth', 'snipPitch'],
  layers: [
    ...['role', 'fabric', 'width', 'selvage', 'prints', 'shrink', 'shrinkWashes', 'prewashed'],
    ...['gsm', 'thickness', 'offers'],
  ],
  prints: ['id', 'share', 'count', 'directional', 'width', 'value', 'color'],
  shrink: ['length', 'width'],
  stitch: ['length', 'tail', 'link', 'chained', 'borderPasses', 'bobbin', 'ratio'],
  pace: ['cutPiece', 'stackBlock', 'sewMetre', 'handleSeam', 'snip', 'layBlock', 'trimBlock'],
  tolerance: ['seam', 'cut', 'ease'],
  fabrics: [
    'id',
    'width',
    'selvage',
    'prewash',
    'squaring',
    'step',
    'lengthLeft',
    'offers',
    'pieces',
  ],
  offers: ['kind', 'id', 'step', 'least', 'width', 'length', 'count', 'most', 'price'],
  bolts: ['id', 'role', 'print', 'width', 'length', 'selvage', 'squaring', 'cost', 'currency'],
  perKit: ['distinctPrints', 'mostOfOne', 'spare'],
  costs: ['packaging', 'labour', 'overhead', 'margin', 'markup', 'price'],
  prewash: ['length', 'width'],
  pieces: ['id', 'role', 'print', 'width', 'length', 'count', 'directional', 'selvage'],
  swatches: ['fabric', 'direction', 'before', 'after', 'washes'],
  sewn: ['width', 'height'],
  wanted: ['width', 'height'],
};
