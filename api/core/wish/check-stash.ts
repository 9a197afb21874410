import { faceOf } from '../block/size-block.ts';
import type { Role, StashInput } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SIZE_LIMITS } from '../limits.ts';
import type { Path } from '../outcome.ts';
import { SOURCES } from '../sources.ts';
import { checkIds } from './check-ids.ts';
import { isSound, type Reading } from './reading.ts';

/**
 * Checks what the parts of a stash mean to each other.
 * Faults: `repeated-id`; `layers-unfit` where no piece is for the top; `not-one-of` for a piece whose
 * role the sandwich does not have; `too-long` for more prints than letters; `seam-eats-face` as for a
 * plan. A role without a piece is told as an assumption: it is to be bought.
 *
 * @param places where each of `input.cuts` stood in the request; absent for the usual ones
 */
export function checkStash(
  reading: Reading,
  input: StashInput,
  places: readonly number[] | undefined,
): void {
  checkIds(reading, input.pieces, ['pieces']);
  checkRoles(reading, input);
  const prints = new Set(
    input.pieces.flatMap((piece) => (piece.role === 'top' ? piece.print : [])),
  );
  if (prints.size > SIZE_LIMITS.prints) {
    const expected = SIZE_LIMITS.prints;
    reading.faults.push({ code: 'too-long', path: ['pieces'], expected, received: prints.size });
  }
  checkFaces(reading, input, places);
}

function checkRoles(reading: Reading, { pieces, layers }: StashInput): void {
  const roles = [...new Set(layers.map(({ role }) => role))];
  for (const [index, { role }] of pieces.entries()) {
    if (roles.includes(role)) continue;
    const path = ['pieces', index, 'role'];
    reading.faults.push({ code: 'not-one-of', path, expected: roles, received: role });
  }
  const isMissing = (role: Role) => !pieces.some((piece) => piece.role === role);
  if (isMissing('top')) {
    const received = [...new Set(pieces.map(({ role }) => role))].join(', ');
    const expected = 'pieces for the top';
    reading.faults.push({ code: 'layers-unfit', path: ['pieces'], expected, received });
  }
  for (const role of roles.filter((role) => role !== 'top' && isMissing(role))) {
    const why = `There is no piece for the ${role}: it is to be bought and limits nothing`;
    reading.assumptions.push({ path: 'pieces', value: role, why, source: SOURCES.model });
  }
}

function checkFaces(
  reading: Reading,
  { block, cuts, unit }: StashInput,
  places: readonly number[] | undefined,
): void {
  const hasFace = (cut: number) => faceOf({ cut, seam: block.seam }) > 1e-9;
  const report = (cut: number, path: Path) => {
    if (hasFace(cut) || !isSound(reading, path, ['block', 'seam'])) return;
    const expected = `${roundTo(cut / 2, 4)} ${unit}`;
    const received = `${roundTo(block.seam, 4)} ${unit}`;
    reading.faults.push({ code: 'seam-eats-face', path, expected, received });
  };
  const { cut } = block;
  if (cut !== undefined) report(cut, ['block', 'seam']);
  else if (places !== undefined) {
    for (const [index, one] of cuts.entries()) report(one, ['cuts', places[index] ?? index]);
  } else if (!cuts.some(hasFace)) report(cuts.at(-1) ?? 0, ['block', 'seam']);
}
