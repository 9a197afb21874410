import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';
import { makeFaultWords } from '../fault-words.ts';

/** One sentence for each fault: what is wrong, and what would make it right. */
type Sentences = Readonly<Record<FaultCode, (fault: Fault) => string>>;

const { where, given, found, bound, meant, isCount } = makeFaultWords('en', ['“', '”']);

const broken = () => 'The planner could not read that. Try again.';

/** One sentence for each fault, in English. */
export const en: Sentences = {
  'malformed-json': broken,
  'malformed-query': broken,
  'wrong-content-type': broken,
  'body-too-large': broken,
  'too-deep': broken,
  'not-found': broken,
  'wrong-method': broken,
  internal: () => 'The planner broke. Try again in a minute.',
  'unknown-key': (fault) => `${where(fault)} is not part of a plan, so it was left out.`,
  'repeated-key': (fault) => `${where(fault)} is given twice. Give it once.`,
  missing: (fault) => `${where(fault)} is missing. Give it too.`,
  'wrong-type': (fault) => `${given(fault)} is not what belongs here. Try a number.`,
  'not-one-of': (fault) => `${given(fault)} is not on the list. Choose one that is.`,
  empty: (fault) => `Type a number, such as ${isCount(fault) ? '6' : '8½'}.`,
  'too-short': (fault) => `That is too short. ${bound(fault, 'Give at least', 'Give more.')}`,
  'too-long': (fault) => `That is too long. ${bound(fault, 'Keep to at most', 'Give less.')}`,
  'not-whole': () => 'Give a whole number.',
  'too-small': (fault) => `That is too small. ${bound(fault, 'Give at least', 'Give more.')}`,
  'too-large': (fault) => `That is too large. ${bound(fault, 'Give at most', 'Give less.')}`,
  'bad-name': (fault) => `${given(fault)} cannot be used here. Keep to letters and figures.`,
  'not-a-length': (fault) => `${given(fault)} is not a length. Write 8½, 8.5 or 21,5 cm.`,
  'unclear-comma': (fault) => `${given(fault)} may mean two things. Write ${meant(fault, ' or ')}.`,
  'negative-length': () => 'A length is never below nothing. Leave out the minus.',
  'zero-parts': (fault) => `${given(fault)}: nothing is cut into 0 parts. Write 8½ or 8 1/2.`,
  'two-lengths': (fault) =>
    `${given(fault)} reads as two lengths. Give one, such as 8½ or 4 ft 2 in.`,
  'unknown-unit': (fault) =>
    `The unit in ${given(fault)} is not known. Use in, ft, yd, mm, cm or m.`,
  'target-unclear': () => 'Give one size: width and length, a name, a mattress or blocks.',
  'size-not-in-region': (fault) =>
    `${given(fault)} is not a size there. Choose another region or size.`,
  'seam-eats-face': (fault) =>
    `Two seams of ${found(fault, 'that width')} leave nothing of the block. Cut larger. ${bound(fault, 'Or stay under', 'Or sew narrower seams.')}`,
  'snips-reach-stitching': (fault) =>
    `Snips of ${found(fault, 'that depth')} reach the stitching. ${bound(fault, 'Stay under', 'Snip less deep.')}`,
  'roll-too-narrow': (fault) =>
    `This bolt is too narrow. ${bound(fault, 'A block needs', 'It takes no block.')} Cut smaller, or find wider cloth.`,
  'layers-unfit': () => 'Give one top, one backing and at most two layers between.',
  'repeated-id': (fault) => `Two prints are called ${given(fault)}. Rename one.`,
  'counts-do-not-sum': () => 'The prints and the quilt differ in blocks. Make them equal.',
  'quilt-too-large': () => 'That is too much quilt. Cut larger blocks, or make it smaller.',
  'after-unlikely': () => 'The swatch cannot have changed so much. Measure it again.',
  'wish-unclear': () => 'There is no size in that. Say “40 by 50 inches”, or a name such as queen.',
  // What only kits ask for is said where they are.
  'mixed-currencies': broken,
  'price-unclear': broken,
  'percents-do-not-sum': broken,
};
