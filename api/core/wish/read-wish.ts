import type { BlockWish, Length, Target, Unit } from '../contract.ts';
import { fromMillimetres } from '../length.ts';
import { SIZE_LIMITS } from '../limits.ts';
import { fail, type Outcome, succeed } from '../outcome.ts';
import { readLength } from '../read-length.ts';
import { DEFAULTS } from '../tables/defaults.ts';
import { listPassed } from './list-passed.ts';
import { readBed } from './read-bed.ts';
import { readBlock, type SaidBlock } from './read-block.ts';
import { passCounts, readCounts } from './read-counts.ts';
import { readMaking, type SaidMaking } from './read-making.ts';
import { readSides } from './read-sides.ts';
import { readSizeName } from './read-size-name.ts';
import { writeSaid } from './said-length.ts';

/** What was understood of a wish in words: unit, target, infant, block and washes are parts of a request. */
export interface ReadWish {
  readonly unit: Unit;
  readonly target: Target;
  /** The words speak of a child under twelve months, or of where one sleeps. */
  readonly infant?: true;
  readonly block?: Pick<BlockWish, 'cut' | 'seam'>;
  readonly washes?: number;
  /** Prints of the top layer. */
  readonly prints?: number;
  /** Whether there is a layer between top and backing. */
  readonly middle?: boolean;
  /** Words that nothing was made of, in their order; absent where there are none. */
  readonly passed?: readonly string[];
}

const INFANT =
  /(?<![\p{L}\p{N}])(?:cot(?:[\s-]?bed)?s?|cribs?|bab(?:y|ies|ys|ydecken?|ybett(?:decken?)?)|infants?|newborns?|nurser(?:y|ies)|bebés?|cunas?|säuglinge?|gitterbett|bébés?|nourrissons?|berceaux?)(?![\p{L}\p{N}])/iu;
const INFANTS = new RegExp(INFANT.source, 'giu');
/** A minus, where a number follows at once and nothing that it could join stands before. */
const NEGATIVE = /(?:^|[\s(])[-−](?=[\d.½¼¾⅛⅜⅝⅞⅓⅔])/;

/**
 * Reads a wish in plain words: columns and rows of blocks, else a mattress with how far the quilt hangs
 * over it, else two lengths with "by" or "x" between them (or one that is said to be square), else the
 * name of a size. Figures win over a name, since they say more. Beside the size it reads the cut size
 * of the blocks, which “finished” makes the size between the seams, the seam, prints, a middle layer,
 * washes, and whether the quilt is for an infant; and it tells the words that nothing was made of.
 *
 * @param text at most 300 characters
 * @param unit the unit of bare numbers where the words name none
 * @returns parts of a request; fault `wish-unclear` with an empty path
 *
 * @example
 * readWish('a throw for the reading room, about 40 by 50 inches', 'cm') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 50 }, passed: ['reading room'] } }
 * readWish('crib quilt 40 by 60', 'in') // => { ok: true, value: { unit: 'in', target: { width: 40, height: 60 }, infant: true } }
 * readWish('6 by 8 blocks', 'in') // => { ok: true, value: { unit: 'in', target: { columns: 6, rows: 8 } } }
 * readWish('queen, 8.5 inch squares', 'in') // => { ok: true, value: { unit: 'in', target: { size: 'queen' }, block: { cut: 8.5 } } }
 */
export function readWish(text: string, unit: Unit): Outcome<ReadWish> {
  const words = text.slice(0, SIZE_LIMITS.wishText);
  const making = readMaking(words);
  const said = readBlock(making.rest);
  const wish = NEGATIVE.test(words) ? undefined : readTarget(said.rest, unit);
  if (wish === undefined) return fail([{ code: 'wish-unclear', path: [], received: words }]);
  const passed = listPassed(wish.rest.replaceAll(INFANTS, ' · '));
  return succeed({
    unit: wish.unit,
    target: wish.target,
    ...(INFANT.test(words) && { infant: true }),
    ...writeBlock(said, wish.unit),
    ...without(making),
    ...(passed.length > 0 && { passed }),
  });
}

function readTarget(
  words: string,
  unit: Unit,
): { readonly unit: Unit; readonly target: Target; readonly rest: string } | undefined {
  const counts = readCounts(words);
  if (counts !== undefined) return { unit, target: counts, rest: passCounts(words) };
  const bed = readBed(words, unit);
  if (bed !== undefined) return bed === 'unfit' ? undefined : bed;
  return readSides(words, unit) ?? readSizeName(words, unit);
}

function without({ rest: _rest, ...said }: SaidMaking): Omit<SaidMaking, 'rest'> {
  return said;
}

function writeBlock(said: SaidBlock, unit: Unit): Pick<ReadWish, 'block'> {
  const { cut, seam } = said;
  const finished = said.isFinished && cut && addSeams(writeSaid(cut, unit), said, unit);
  if (finished) return { block: finished };
  if (cut === undefined && seam === undefined) return {};
  return {
    block: {
      ...(cut && { cut: writeSaid(cut, unit) }),
      ...(seam && { seam: writeSaid(seam, unit) }),
    },
  };
}

/** A block of that size between its seams: cut two seams larger, the usual ones where none are said. */
function addSeams(face: Length, { seam }: SaidBlock, unit: Unit): ReadWish['block'] {
  const own = seam === undefined ? DEFAULTS[unit].seam : writeSaid(seam, unit);
  const [across, edge] = [face, own].map((length) => readLength(length, unit));
  if (!across?.ok || !edge?.ok) return undefined;
  return { cut: fromMillimetres(across.value + 2 * edge.value, unit), seam: own };
}
