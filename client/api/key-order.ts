/**
 * The order in which the service writes the keys of each group into a canonical address. A group is
 * named by its own key; the input as a whole by nothing. Keys that are not listed come last, as given.
 */
export const KEY_ORDER: Readonly<Record<string, readonly string[]>> = {
  '': [
    ...['unit', 'target', 'block', 'cuts', 'swatches', 'layers', 'grain', 'sewn', 'wanted'],
    ...['washes', 'confidence', 'spare', 'stitch', 'pace', 'tolerance', 'explain'],
  ],
  target: ['width', 'height', 'at', 'size', 'region', 'bed', 'columns', 'rows'],
  bed: ['width', 'length', 'drop', 'footDrop'],
  block: ['cut', 'seam', 'snipDepth', 'snipPitch'],
  layers: [
    ...['role', 'fabric', 'width', 'selvage', 'prints', 'shrink', 'shrinkWashes', 'prewashed'],
    ...['gsm', 'thickness'],
  ],
  prints: ['id', 'share', 'count', 'directional', 'width', 'value', 'color'],
  shrink: ['length', 'width'],
  stitch: ['length', 'tail', 'link', 'chained', 'borderPasses', 'bobbin', 'ratio'],
  pace: ['cutPiece', 'stackBlock', 'sewMetre', 'handleSeam', 'snip', 'layBlock', 'trimBlock'],
  tolerance: ['seam', 'cut', 'ease'],
  fabrics: ['id', 'width', 'selvage', 'prewash', 'squaring', 'step', 'lengthLeft', 'pieces'],
  prewash: ['length', 'width'],
  pieces: ['id', 'width', 'length', 'count', 'directional'],
  swatches: ['fabric', 'direction', 'before', 'after', 'washes'],
  sewn: ['width', 'height'],
  wanted: ['width', 'height'],
};
