import { describe, expect, test } from 'vitest';
import { answerWish, loadScenario } from '../../demo-data/load-scenario.ts';
import { writePlanSheet } from '../../demo-data/write-plan-sheet.ts';

const shop = loadScenario();
const sheets = shop.wishes.map((wish) => ({
  file: wish.file,
  answer: answerWish(wish.file),
  text: writePlanSheet({ wish, answer: answerWish(wish.file), shop }),
}));

describe('writePlanSheet', () => {
  test.each(sheets)('writePlanSheet of $file keeps within 80 columns', ({ text }) => {
    const widest = Math.max(...text.split('\n').map((line) => [...line].length));
    expect(widest).toBeLessThanOrEqual(80);
    expect(widest).toBeGreaterThan(60);
  });

  test.each(sheets)('writePlanSheet of $file has every part', ({ text }) => {
    for (const title of ['BUY', 'CUT', 'LAY OUT', 'HOURS', 'TAKE CARE']) {
      expect(text).toContain(`\n\n${title}\n`);
    }
  });

  test.each(sheets)(
    'writePlanSheet of $file says what to buy of each cloth',
    ({ text, answer }) => {
      const bought = text.slice(text.indexOf('\nBUY'), text.indexOf('\nCUT'));
      for (const { buy, print } of answer.fabrics) {
        const amount = buy.text.replace(/ \w+$/, '').replaceAll('.', '\\.');
        expect(bought).toMatch(new RegExp(`${print ?? ''} .*${amount} (yard|metre)s?\\b`));
      }
    },
  );

  test.each(sheets)('writePlanSheet of $file adds the money up', ({ text, answer }) => {
    const rows = text.matchAll(/^ {2}.+ (?:top|middle|backing) +(\d+\.\d\d)$/gm);
    const costs = [...rows].map(([, cost]) => Number(cost));
    const total = Number(/crowns +(\d+\.\d\d)/.exec(text)?.[1]);
    expect(costs).toHaveLength(answer.fabrics.length);
    expect(total).toBeCloseTo(
      costs.reduce((sum, cost) => sum + cost, 0),
      1,
    );
  });

  test.each(sheets)('writePlanSheet of $file draws every block', ({ text, answer }) => {
    const rows = text.match(/^ {2}[A-Z]( [A-Z])*$/gm) ?? [];
    expect(rows.map((row) => row.replaceAll(' ', ''))).toEqual(answer.layout.cells);
  });

  test('writePlanSheet says a danger first and as one', () => {
    const pim = sheets.find(({ file }) => file === 'floor-for-pim.json');
    expect(pim?.text).toMatch(/TAKE CARE\n {2}DANGER: Not for a sleeping baby\./);
  });

  test('writePlanSheet says fractions as they are said at the counter', () => {
    const room = sheets.find(({ file }) => file === 'reading-room.json');
    expect(room?.text).toMatch(/Fog flannel +\d+ \d\/\d yards/);
  });
});
