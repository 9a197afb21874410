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

/** Sizes that a region has no mattress of. */
export const UNKNOWN_SIZES: Readonly<Record<string, readonly string[]>> = {
  us: ['super-king'],
  uk: ['queen', 'california-king'],
  eu: ['california-king', 'super-king'],
};

/** First parts of the paths of a plan's address; what else stands in an address is not ours. */
export const REQUEST_KEYS = [
  'unit',
  'target',
  'block',
  'cuts',
  'layers',
  'swatches',
  'grain',
  'washes',
  'spare',
  'stitch',
  'pace',
  'tolerance',
  'infant',
  'pupils',
  'explain',
] as const;

/** The same of the address of a wash. */
export const WASH_KEYS = [
  'unit',
  'swatches',
  'layers',
  'grain',
  'sewn',
  'wanted',
  'block',
  'cuts',
  'fit',
  'washes',
  'confidence',
] as const;

/** The same of the address of a stash. */
export const STASH_KEYS = [
  'unit',
  'pieces',
  'block',
  'cuts',
  'layers',
  'shape',
  'touch',
  'grain',
  'washes',
  'squaring',
  'usable',
] as const;

/** The same of the address of kits. */
export const KITS_KEYS = [
  'unit',
  'plan',
  'kits',
  'bolts',
  'perKit',
  'costs',
  'currency',
  'fibres',
] as const;
