/** What a layer is of where nothing was said: the classic sandwich. Common practice, no source. */
export const USUAL_FABRICS = {
  top: 'quilting-cotton',
  middle: 'cotton-batting',
  backing: 'flannel',
} as const;
