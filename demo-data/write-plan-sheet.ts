import type { FabricNeed, Pair, PlanAnswer, TimeAnswer, Unit } from '#core/contract.ts';
import { toMillimetres } from '#core/length.ts';
import { writeLength } from '#core/write-length.ts';
import type { Scenario, Wish } from './load-scenario.ts';

const WIDTH = 80;
const LABEL = 12;

/** What one plan is printed from. */
export type Sheet = {
  readonly wish: Wish;
  readonly answer: PlanAnswer;
  readonly shop: Pick<Scenario, 'bolts' | 'currency'>;
};

/** One plan as a person would read it in a terminal: plain text, at most 80 columns. */
export function writePlanSheet({ wish, answer, shop }: Sheet): string {
  return [
    [
      wish.title.toUpperCase(),
      '='.repeat(wish.title.length),
      ...wrap(`${wish.who}: “${wish.says}”.`),
    ],
    writeSizes(answer),
    ['BUY', ...writeShopping(answer, shop)],
    ['CUT', ...writeCutting(answer)],
    ['LAY OUT', ...writeLayout(answer)],
    ['HOURS', ...writeHours(answer)],
    ['TAKE CARE', ...writeCautions(answer)],
  ]
    .map((lines) => lines.join('\n'))
    .join('\n\n');
}

function writeSizes(answer: PlanAnswer): readonly string[] {
  const { size, wish, grid, block, input, weight } = answer;
  const say = (length: number) => sayLength(length, input.unit);
  const sides = ({ width, height }: Pair) =>
    `${say(width).replace(/ (in|cm)$/, '')} by ${say(height)}`;
  const washes = input.washes === 1 ? 'the first wash' : `${input.washes} washes`;
  return [
    ...entry('Wished for', `${sides(wish)}, as it comes out of the wash`),
    ...entry('Washed', `${sides(size.washed)} after ${washes}`),
    ...entry('', `between ${sides(size.washed.low)} and ${sides(size.washed.high)}, as cloth goes`),
    ...entry('Sewn', sides(size.sewn)),
    ...entry('Blocks', `${grid.blocks}: ${grid.columns} across, ${grid.rows} down`),
    ...entry(
      'Each',
      `cut ${say(block.cut)}, seams of ${say(block.seam)}, shows ${say(block.face)}`,
    ),
    ...entry('Weight', `about ${weight.dry.toFixed(1)} ${weight.unit} dry`),
  ];
}

function writeShopping(answer: PlanAnswer, shop: Sheet['shop']): readonly string[] {
  const priced = answer.fabrics.map((need) => {
    const id = nameCloth(answer, need);
    const price = shop.bolts.find((bolt) => bolt.id === id)?.price[need.buy.unit] ?? 0;
    return { id, need, cost: price * need.buy.amount };
  });
  const rows = priced.map(({ id, need, cost }) =>
    row([id, spoken(need), need.role, cost.toFixed(2)]),
  );
  const total = priced.reduce((sum, { cost }) => sum + cost, 0).toFixed(2);
  const { used, unit, bobbins } = answer.thread;
  return [
    ...rows,
    row(['', '', shop.currency, total]),
    ...entry(
      'Thread',
      `at most about ${Math.ceil(used)} ${LONG[unit]}, with ${count(bobbins, 'bobbin')} of it`,
    ),
    ...entry('Needle', answer.bulk.needle),
  ];
}

function writeCutting(answer: PlanAnswer): readonly string[] {
  const { block, input } = answer;
  const cut = sayLength(block.cut, input.unit);
  return answer.fabrics.flatMap((need) => {
    const spare = need.spare === 0 ? '' : `, ${need.spare} of them spare`;
    return wrap(
      `${nameCloth(answer, need)}: ${count(need.strips, 'strip')} of ${cut} across the bolt, ` +
        `${count(need.perStrip, 'square')} from each: ${need.pieces + need.spare} squares${spare}.`,
    );
  });
}

function writeLayout(answer: PlanAnswer): readonly string[] {
  const prints = answer.input.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const key = prints.map(({ id }, index) => `${String.fromCharCode(65 + index)} ${id}`);
  return [
    ...wrap(key.join(', ')),
    ...answer.layout.cells.map((cells) => `  ${[...cells].join(' ')}`),
  ];
}

function writeHours({ time }: PlanAnswer): readonly string[] {
  return Object.entries(STAGES).map(
    ([stage, label]) =>
      `  ${label.padEnd(30)}${sayMinutes(time[stage as keyof TimeAnswer]).padStart(11)}`,
  );
}

function writeCautions(answer: PlanAnswer): readonly string[] {
  const marks = { danger: 'DANGER: ', care: '', note: '' } as const;
  return answer.cautions
    .filter(({ severity }) => severity !== 'note')
    .flatMap(({ severity, text }) => wrap(`${marks[severity]}${text}`));
}

const STAGES: Readonly<Record<keyof TimeAnswer, string>> = {
  cut: 'Cut the squares',
  stack: 'Stack the layers',
  quilt: 'Quilt the blocks',
  snip: 'Snip before joining',
  layout: 'Lay out',
  joins: 'Join blocks to rows',
  rows: 'Join row to row',
  border: 'Stitch round the border',
  trim: 'Trim the threads',
  total: 'All of it',
};

const LONG = { yd: 'yards', m: 'metres' } as const;

/** As it is said at the counter: `2 3/8 yards`, `1 yard`, `3/4 yard`. */
function spoken({ buy }: FabricNeed): string {
  const word = buy.amount > 1 ? LONG[buy.unit] : LONG[buy.unit].slice(0, -1);
  return buy.text.replace(/(yd|m)$/, word);
}

function nameCloth({ input }: PlanAnswer, { print, role }: FabricNeed): string {
  return print ?? input.layers.find((layer) => layer.role === role)?.prints[0]?.id ?? role;
}

function sayLength(length: number, unit: Unit): string {
  return writeLength(toMillimetres(length, unit), unit);
}

function sayMinutes(minutes: number): string {
  const whole = Math.round(minutes);
  return `${Math.floor(whole / 60)} h ${String(whole % 60).padStart(2, '0')} min`;
}

function count(amount: number, word: string): string {
  return `${amount} ${word}${amount === 1 ? '' : 's'}`;
}

function entry(label: string, text: string): readonly string[] {
  return wrap(text, `  ${label.padEnd(LABEL)}`);
}

function row([name = '', amount = '', role = '', cost = '']: readonly string[]): string {
  return `  ${name.padEnd(22)}${amount.padEnd(18)}${role.padEnd(12)}${cost.padStart(9)}`;
}

/** Lines of at most 80 columns, the later ones set in as far as the first. */
function wrap(text: string, first = '  '): readonly string[] {
  const lines = [first];
  for (const word of text.split(' ')) {
    const line = lines.at(-1) ?? '';
    const joined = line.trim() === '' || line === first ? `${line}${word}` : `${line} ${word}`;
    if (joined.length <= WIDTH) lines.splice(-1, 1, joined);
    else lines.push(`${' '.repeat(first.length)}${word}`);
  }
  return lines;
}
