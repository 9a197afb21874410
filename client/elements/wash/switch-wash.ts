import type { Unit } from '#core/contract.ts';
import { fromMillimetres } from '#core/length.ts';
import { readLength } from '#core/read-length.ts';
import { type AnyDraft, writeQuery } from '../../data/draft.ts';
import { readQuery } from '../../data/read-query.ts';
import { type Called, switchUnit } from '../../fields/switch-unit.ts';
import { exampleSwatches } from './example-swatches.ts';
import type { Cloth } from './swatch-table.ts';
import { type Typed, unitOf, type WashDraft, writeTyped } from './wash-state.ts';

/**
 * Says every length that was typed in the other unit, each in its own cell; what is no length stays as it is. A table
 * that is all the invented shop's becomes the one that it measured in that unit.
 *
 * @param called what lengths were called in the other unit, as `switchUnit` gave it.
 */
export function switchWash(
  state: Typed,
  unit: Unit,
  called: Called,
): Typed & { readonly called: Called } {
  const from = unitOf(state.draft);
  const typed = writeTyped(state);
  const input = readQuery(writeQuery(readNumbers(typed, from)));
  const next = switchUnit(typed, unit, { called, input });
  const isExample = JSON.stringify(state.cloths) === JSON.stringify(exampleSwatches(from));
  const { washes, ...draft } = next.draft;
  const rest = Object.entries(draft).filter(([path]) => !path.startsWith('swatches.'));
  return {
    cloths: isExample ? exampleSwatches(unit) : putBack(state.cloths, next.draft),
    draft: { ...Object.fromEntries(rest), ...(washes !== undefined && { washes }) } as WashDraft,
    called: next.called,
  };
}

/** What can be read as a length, as a plain decimal. */
function readNumbers(typed: AnyDraft, unit: Unit): AnyDraft {
  const entries = Object.entries(typed).flatMap(([path, text = '']) => {
    const read = readLength(text, unit);
    return read.ok ? [[path, String(fromMillimetres(read.value, unit))]] : [];
  });
  return Object.fromEntries(entries);
}

/** Puts what `writeTyped` took out of the rows back where it came from: two swatches a row. */
function putBack(cloths: readonly Cloth[], typed: AnyDraft): readonly Cloth[] {
  let index = 0;
  return cloths.map((cloth) => ({
    ...cloth,
    rows: cloth.rows.map(() => {
      const at = (offset: number, name: string) =>
        typed[`swatches.${index + offset}.${name}`] ?? '';
      const row = {
        'length.before': at(0, 'before'),
        'length.after': at(0, 'after'),
        'width.before': at(1, 'before'),
        'width.after': at(1, 'after'),
        ac: at(0, 'diagonals.ac'),
        bd: at(0, 'diagonals.bd'),
      };
      index += 2;
      return row;
    }),
  }));
}
