import { describe, expect, test } from 'vitest';
import { FIRST_DRAFT, writeAsked } from '../../../../client/elements/kits/kits-state.ts';
import { resultView } from '../../../../client/elements/kits/kits-view-result.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { answerKits, kitsContext } from '../../../support/stock.ts';

const { query } = writeAsked(FIRST_DRAFT);
const show = (state: Parameters<typeof kitsContext>[0] = {}) =>
  renderFresh(resultView(kitsContext(state)));

describe('resultView', () => {
  test('says how many kits there are, what one costs and what it sells at', () => {
    expect(readText(show(), '.figures')).toMatch(
      /^Kits ?\d+ Costs ?\$\d+\.\d\d Sells at ?\$\d+\.\d\d$/,
    );
  });

  test('has a picture and a list for kits that are alike', () => {
    const groups = [...show().querySelectorAll('.group')];
    expect(groups).toHaveLength(answerKits().kits.length);
    for (const group of groups) {
      const counts = [...group.querySelectorAll('li')].map((item) =>
        Number.parseInt(item.textContent?.replace(/^\D+/, '') ?? '', 10),
      );
      expect(counts.reduce((sum, count) => sum + count, 0)).toBe(30);
    }
  });

  test('says how many of those wanted are made, and what to buy for the rest', () => {
    const few = show({ answer: answerKits(`${query}&kits=3`) });
    expect(readText(few, '.figures')).toMatch(/Kits ?3 of \d+/);
    expect(few.querySelector('.notice')).toBeNull();
    const more = show({ answer: answerKits(`${query}&kits=60`) });
    expect(readText(more, '.notice')).toContain('To make 60 kits, buy more');
  });

  test('leaves money out where there is none', () => {
    const { money: _money, ...answer } = answerKits();
    expect(readText(show({ answer }), '.figures')).toMatch(/^Kits ?\d+$/);
  });

  test('says so where no kit can be made', () => {
    expect(readText(show({ answer: { ...answerKits(), made: 0 } }), '.waiting')).toContain(
      'no whole kit',
    );
    expect(readText(show({ answer: undefined }), '.waiting')).toContain('Type a bolt');
  });
});
