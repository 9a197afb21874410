/**
 * The closed list of what can be wrong, from the wire to the workroom.
 * Each code has a status in api/http, a sentence in client/text, and a test that provokes it.
 */
export const FAULT_CODES = [
  // The message itself
  'malformed-json',
  'malformed-query',
  'wrong-content-type',
  'body-too-large',
  'too-deep',
  'not-found',
  'wrong-method',
  'internal',
  // Its shape
  'unknown-key',
  'repeated-key',
  'missing',
  'wrong-type',
  'not-one-of',
  'empty',
  'too-short',
  'too-long',
  'not-whole',
  'too-small',
  'too-large',
  'bad-name',
  // Lengths as people write them
  'not-a-length',
  'unclear-comma',
  'negative-length',
  'zero-parts',
  'two-lengths',
  'unknown-unit',
  // Its meaning
  'target-unclear',
  'size-not-in-region',
  'seam-eats-face',
  'snips-reach-stitching',
  'roll-too-narrow',
  'layers-unfit',
  'repeated-id',
  'counts-do-not-sum',
  'quilt-too-large',
  'after-unlikely',
  'wish-unclear',
  'mixed-currencies',
  'price-unclear',
  'percents-do-not-sum',
] as const;

export type FaultCode = (typeof FAULT_CODES)[number];
