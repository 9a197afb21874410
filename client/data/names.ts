/**
 * Names that the wire knows, for checking and for lists to choose from; the schemas' bond to the
 * contract keeps them whole.
 */
export const FABRIC_NAMES = [
  'quilting-cotton',
  'flannel',
  'denim',
  'linen-cotton',
  'plush',
  'fleece',
  'cotton-batting',
  'blend-batting',
  'bamboo-batting',
  'polyester-batting',
] as const;

export const SIZE_NAMES = [
  'cot',
  'lap',
  'throw',
  'twin',
  'single',
  'full',
  'double',
  'queen',
  'king',
  'california-king',
  'super-king',
] as const;
