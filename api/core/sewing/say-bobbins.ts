import type { BobbinChange, SewingStep } from '../contract.ts';
import { countChanges } from './count-changes.ts';
import { sayCount } from './say-count.ts';

/** As many places are named one by one; more are told as a number. */
const NAMED = 4;

/**
 * Where the bobbin runs out in one step, as a sentence with a space before it; nothing where it does not.
 *
 * @example
 * sayBobbins([{ step: 'quilt-first', changes: 1, after: [22] }], 'quilt-first') // => ' The bobbin runs out after about 22 blocks.'
 * sayBobbins([{ step: 'join', row: 'C', changes: 1, after: [0] }], 'join') // => ' The bobbin runs out at the start of row C.'
 * sayBobbins([], 'border') // => ''
 */
export function sayBobbins(bobbins: readonly BobbinChange[], step: SewingStep): string {
  const changes = countChanges(bobbins, step);
  if (changes === 0) return '';
  const own = bobbins.filter((one) => one.step === step);
  const places = own.flatMap(({ row, after }) => after.map((blocks) => sayPlace(row, blocks)));
  const where =
    changes > NAMED ? `${sayCount(changes, 'time')} in this step` : places.join(', and ');
  return ` The bobbin runs out ${where}.`;
}

function sayPlace(row: string | undefined, blocks: number): string {
  if (blocks === 0) return row === undefined ? 'as you begin' : `at the start of row ${row}`;
  return `after about ${sayCount(blocks, 'block')}${row === undefined ? '' : ` of row ${row}`}`;
}
