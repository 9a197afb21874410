import type { BobbinChange, SewingStep } from '../contract.ts';

/**
 * How many bobbins run out in one step.
 *
 * @example
 * countChanges([{ step: 'join', row: 'A', changes: 2, after: [1, 3] }], 'join') // => 2
 */
export function countChanges(bobbins: readonly BobbinChange[], step: SewingStep): number {
  return bobbins.reduce((sum, one) => sum + (one.step === step ? one.changes : 0), 0);
}
