import type { FabricName, Role, SizeName } from '#core/contract.ts';
import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';

/** One sentence for each fault: what is wrong, and what would make it right. */
type Sentences = Readonly<Record<FaultCode, (fault: Fault) => string>>;

const apiTrouble = () => 'The planner could not read that request. Reload the page and try again.';

const faults: Sentences = {
  'malformed-json': apiTrouble,
  'malformed-query': () => 'The address is not written as a plan. Start from the fields here.',
  'wrong-content-type': apiTrouble,
  'body-too-large': () => 'That is more than one plan can hold. Leave some of it out.',
  'too-deep': apiTrouble,
  'not-found': () => 'There is nothing at that address.',
  'wrong-method': apiTrouble,
  internal: () => 'Something broke on our side. Try again in a minute.',
  'unknown-key': ({ path }) => `“${path.join('.')}” is not part of a plan, so it was left out.`,
  'repeated-key': ({ path }) => `“${path.join('.')}” is given twice. Give it once.`,
  missing: ({ path }) => `“${path.join('.')}” is missing.`,
  'wrong-type': ({ path }) => `“${path.join('.')}” holds the wrong kind of value.`,
  'not-one-of': ({ received }) => `“${received ?? ''}” is not on the list. Choose one that is.`,
  empty: () => 'Type a number here, such as 8 1/2.',
  'too-short': () => 'That is too short.',
  'too-long': ({ expected }) => `That is too long. At most ${expected ?? 'a line'} will do.`,
  'not-whole': () => 'This has to be a whole number.',
  'too-small': ({ expected }) => `That is too small. It must be ${expected ?? 'a little'} or more.`,
  'too-large': ({ expected }) => `That is too large. It must be ${expected ?? 'a lot'} or less.`,
  'bad-name': () => 'A name can hold letters, figures, spaces and hyphens.',
  'not-a-length': ({ received }) =>
    `“${received ?? ''}” is not a length. Write it like 8 1/2, 8.5 or 21,5 cm.`,
  'unclear-comma': ({ received }) =>
    `“${received ?? ''}” could be thousands or a decimal. Use a point instead of the comma.`,
  'target-unclear': () => 'Give one size: width and height, a named size, a bed or a count of blocks.',
  'size-not-in-region': ({ received }) =>
    `There is no ${received ?? 'such'} size in that region. Choose another size or region.`,
  'seam-eats-face': ({ expected, received }) =>
    `Two seams of ${received ?? ''} leave nothing of the block. Sew a seam under ${expected ?? ''}, or cut larger.`,
  'snips-reach-stitching': ({ expected, received }) =>
    `Snips of ${received ?? ''} would cut the stitching. Stay under the seam of ${expected ?? ''}.`,
  'roll-too-narrow': ({ expected, received }) =>
    `Only ${received ?? ''} of this bolt can be used, and a block needs ${expected ?? ''}. Cut smaller, or find wider cloth.`,
  'layers-unfit': () => 'A quilt needs one top, one backing and at most two layers between.',
  'repeated-id': ({ received }) => `Two prints are called “${received ?? ''}”. Rename one.`,
  'counts-do-not-sum': () => 'The blocks of the prints do not add up to the blocks of the quilt.',
  'quilt-too-large': () => 'That is more quilt than this can plan. Cut larger blocks, or make it smaller.',
  'after-unlikely': () => 'The swatch after washing does not go with the one before. Measure again.',
  'wish-unclear': () =>
    'No size in that yet. Say it with numbers, “about 40 by 50 inches”, or a name: throw, queen.',
  'mixed-currencies': ({ received = 'Some of it', expected = 'another currency' }) =>
    `${received} stands beside ${expected}. Give all money in one currency.`,
  'price-unclear': ({ received = 'More than one' }) =>
    `${received} cannot all hold. Give a margin, a markup or a price.`,
  'percents-do-not-sum': ({ received = 'not 100' }) =>
    `These percents add up to ${received}. Make them 100 together.`,
};

const fabrics: Readonly<Record<FabricName, string>> = {
  'quilting-cotton': 'Quilting cotton',
  flannel: 'Flannel',
  denim: 'Denim',
  plush: 'Plush',
  fleece: 'Fleece',
  'linen-cotton': 'Linen and cotton',
  'cotton-batting': 'Cotton batting',
  'blend-batting': 'Blend batting',
  'polyester-batting': 'Polyester batting',
  'bamboo-batting': 'Bamboo batting',
};

const roles: Readonly<Record<Role, string>> = { top: 'Top', middle: 'Middle', backing: 'Backing' };

const sizes: Readonly<Record<SizeName, string>> = {
  cot: 'Cot',
  lap: 'Lap',
  throw: 'Throw',
  twin: 'Twin',
  single: 'Single',
  full: 'Full',
  double: 'Double',
  queen: 'Queen',
  king: 'King',
  'california-king': 'California king',
  'super-king': 'Super king',
};

/** All that the page says, in English. */
export const en = {
  language: 'en',
  faults,
  fabrics,
  roles,
  sizes,
  severities: { danger: 'Danger', care: 'Take care', note: 'Good to know' },
};
