import type { BlockWish, Target, Unit } from '../contract.ts';
import { SIZE_LIMITS } from '../limits.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { readBed } from './read-bed.ts';
import { readBlock, type SaidBlock } from './read-block.ts';
import { readCounts } from './read-counts.ts';
import { readSides } from './read-sides.ts';
import { readSizeName } from './read-size-name.ts';
import { writeSaid } from './said-length.ts';

/** What was understood of a wish in words. */
export interface ReadWish {
  readonly unit: Unit;
  readonly target: Target;
  /** The words speak of a child under twelve months, or of where one sleeps. */
  readonly infant?: true;
  readonly block?: Pick<BlockWish, 'cut' | 'seam'>;
}

const INFANT =
  /(?<![\p{L}\p{N}])(?:cot(?:[\s-]?bed)?s?|cribs?|bab(?:y|ies)|infants?|newborns?|nurser(?:y|ies))(?![\p{L}\p{N}])/iu;
/** A minus, where a number follows at once and nothing that it could join stands before. */
const NEGATIVE = /(?:^|[\s(])[-−](?=[\d.½¼¾⅛⅜⅝⅞⅓⅔])/;

/**
 * Reads a wish in plain words: columns and rows of blocks, else a mattress with how far the quilt hangs
 * over it, else two lengths with "by" or "x" between them (or one that is said to be square), else the
 * name of a size. Figures win over a name, since they say more. Beside the size it reads the cut size
 * of the blocks, the seam, and whether the quilt is for an infant.
 *
 * @param text at most 300 characters
 * @param unit the unit of bare numbers where the words name none
 * @returns parts of a request; fault `wish-unclear` with an empty path
 *
 * @example
 * readWish('a throw for the reading room, about 40 by 50 inches', 'cm') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 50 } } }
 * readWish('crib quilt 40 by 60', 'in') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 60 }, infant: true } }
 * readWish('6 by 8 blocks', 'in') // => { ok: true, value: { unit: 'in', target: { columns: 6, rows: 8 } } }
 * readWish('queen, 8.5 inch squares', 'in') // => { ok: true, value: { unit: 'in', target: { size: 'queen' }, block: { cut: 8.5 } } }
 */
export function readWish(text: string, unit: Unit): Outcome<ReadWish> {
  const words = text.slice(0, SIZE_LIMITS.wishText);
  const said = readBlock(words);
  const wish = NEGATIVE.test(words) ? undefined : readTarget(said.rest, unit);
  if (wish === undefined) return fail([{ code: 'wish-unclear', path: [], received: words }]);
  return succeed({
    unit: wish.unit,
    target: wish.target,
    ...(INFANT.test(words) && { infant: true }),
    ...writeBlock(said, wish.unit),
  });
}

function readTarget(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: Target } | undefined {
  const counts = readCounts(words);
  if (counts !== undefined) return { unit, target: counts };
  const bed = readBed(words, unit);
  if (bed !== undefined) return bed === 'unfit' ? undefined : bed;
  return readSides(words, unit) ?? readSizeName(words, unit);
}

function writeBlock({ cut, seam }: SaidBlock, unit: Unit): Pick<ReadWish, 'block'> {
  if (cut === undefined && seam === undefined) return {};
  return {
    block: {
      ...(cut && { cut: writeSaid(cut, unit) }),
      ...(seam && { seam: writeSaid(seam, unit) }),
    },
  };
}
