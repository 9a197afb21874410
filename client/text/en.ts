import type { FabricName, PlanAnswer, Role, SizeName } from '#core/contract.ts';
import type { FaultCode } from '#core/faults.ts';
import type { Fault } from '#core/outcome.ts';

/** One sentence for each fault: what is wrong, and what would make it right. */
type Sentences = Readonly<Record<FaultCode, (fault: Fault) => string>>;

const where = ({ path }: Fault) => `“${path.join('.')}”`;
const given = ({ received = '' }: Fault) => `“${received}”`;
const wanted = ({ expected = '' }: Fault) => expected;

const broken = () => 'The planner could not read that. Try again.';

const faults: Sentences = {
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
  empty: () => 'Type a number, such as 8½.',
  'too-short': (fault) => `That is too few. Give at least ${wanted(fault)}.`,
  'too-long': (fault) => `That is too much. Give at most ${wanted(fault)}.`,
  'not-whole': () => 'Give a whole number.',
  'too-small': (fault) => `That is too small. Give at least ${wanted(fault)}.`,
  'too-large': (fault) => `That is too large. Give at most ${wanted(fault)}.`,
  'bad-name': (fault) => `${given(fault)} cannot be used here. Keep to letters and figures.`,
  'not-a-length': (fault) => `${given(fault)} is not a length. Write 8½, 8.5 or 21,5 cm.`,
  'unclear-comma': (fault) => `${given(fault)} may mean thousands. Write a point for the comma.`,
  'target-unclear': () => 'Give one size: width and length, a name, a mattress or blocks.',
  'size-not-in-region': (fault) =>
    `${given(fault)} is not a size there. Choose another region or size.`,
  'seam-eats-face': (fault) =>
    `Two seams of ${fault.received} leave nothing of the block. Stay under ${wanted(fault)}, or cut larger.`,
  'snips-reach-stitching': (fault) =>
    `Snips of ${fault.received} reach the stitching. Stay under ${wanted(fault)}.`,
  'roll-too-narrow': (fault) =>
    `This bolt gives ${fault.received} and a block needs ${wanted(fault)}. Cut smaller, or find wider cloth.`,
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

/** `california-king` as `California king`: the names on the wire are English, a hyphen for a space. */
const say = (name: string) => name.charAt(0).toUpperCase() + name.slice(1).replace('-', ' ');

const machines: Readonly<Record<PlanAnswer['weight']['washer']['machine'], string>> = {
  household: 'a household washer takes it',
  large: 'it wants a large washer',
  laundry: 'it wants the machines of a laundry',
};

/** All that the page says, in English. */
export const en = {
  language: 'en',
  faults,
  machines,
  fabric: say as (name: FabricName) => string,
  role: say as (name: Role) => string,
  section: say,
  size: say as (name: SizeName) => string,
  kinds: { own: 'My own size', bed: 'My own mattress', grid: 'So many blocks' },
  severities: { danger: 'Danger', care: 'Take care', note: 'Good to know' },
  states: { sewn: 'Sewn', washed: 'Washed' },
  side: (name: string, state: string) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Width',
    height: 'Length',
    'bed.width': 'Mattress width',
    'bed.length': 'Mattress length',
    'bed.drop': 'Hang at the sides',
    'bed.footDrop': 'Hang at the foot',
    columns: 'Blocks across',
    rows: 'Blocks down',
    cut: 'Or a size of your own',
    seam: 'Seam',
    snipDepth: 'Snip depth',
    snipPitch: 'Between snips',
  },
  fractions: 'Fractions',
  unitQuestion: 'Measure in',
  wish: {
    title: 'Your wish',
    label: 'In your own words',
    example: 'a throw, 40 by 50 inches',
    go: 'Plan it',
    kind: 'Size',
    region: 'Region',
    at: 'This size is',
    read: (what: string) => `Read as ${what}. Blocks and cloth are set below.`,
  },
  blocks: {
    title: 'Blocks',
    cut: 'Cut squares of',
    choose: 'Best fit',
    more: 'Seam and snips',
    explain: 'The seam stands up on the front. Snipped and washed, it becomes the fringe.',
  },
  cloth: {
    title: 'Cloth',
    prints: 'Prints in the top',
    fewer: 'One print fewer',
    more: 'One print more',
    none: 'None',
    bolts: 'Bolts and prewashing',
    width: (role: string) => `${role}, bolt width`,
    prewashed: (role: string) => `${role} is washed before cutting`,
    turned: 'Turn every other block, so it shrinks alike both ways',
  },
  plan: 'Your plan',
  drawing: (across: number, down: number, size: string) =>
    `The quilt to scale: ${across} blocks across, ${down} down, ${size}.`,
  figures: { blocks: 'Blocks', each: 'cut', cloth: 'Cloth', work: 'Work' },
  fit: {
    width: ['wider than your wish', 'narrower than your wish', 'As wide as your wish'],
    height: ['longer', 'shorter', 'as long'],
  } as const,
  between: (from: string, to: string) => `Cloth varies: ${from} to ${to}.`,
  shopping: {
    title: 'Buy and cut',
    columns: ['Cloth', 'Buy', 'Strips', 'Squares'],
    each: (squares: number) => `× ${squares}`,
    idle: (prints: number) => `No block is left for ${prints} of the prints. Take fewer.`,
    how: (cut: string) =>
      `Cut strips ${cut} tall across the bolt, each into its squares. Spares included.`,
    thread: 'Thread',
    threadText: (amount: string, bobbins: number, saved: string) =>
      `At most about ${amount}, half of it on ${bobbins} ${bobbins === 1 ? 'bobbin' : 'bobbins'}. Sewing in a chain saves ${saved}.`,
  },
  facts: {
    title: 'What to expect',
    work: 'Work',
    workText: (hours: string, snips: string) =>
      `About ${hours} at the table${snips && `, ${snips} of it snipping`}.`,
    weight: 'Weight',
    weightText: (dry: string, wet: string, machine: string) =>
      `${dry} dry, ${wet} wet: ${machine}.`,
    rows: 'Row ends',
    rowsText: (ease: string, middle: number, end: number) =>
      `Joined from the middle out, ${middle} in 100 meet within ${ease}; from one end, ${end}.`,
    shrink: 'Shrink',
    shrinkText: (across: string, down: string) => `${across} across, ${down} down.`,
  },
  work: { title: 'The work', done: (done: number, all: number) => `${done} of ${all} done` },
  others: 'Other plans that fit',
  moreOthers: 'More',
  notes: {
    cautions: 'Before you begin',
    assumptions: 'What we took for granted',
    why: 'How each figure is reckoned',
  },
  device: 'The planner did not answer, so your device worked this out. The figures are the same.',
  unreachable: 'The planner cannot be reached.',
  retry: 'Try again',
  stale: 'The plan shown is the one from before.',
  host: 'Some of what was asked for could not be read:',
  print: 'Print',
  ready: (across: number, down: number, figures: string) =>
    `Planned: ${across} by ${down} blocks, ${figures}.`,
};
