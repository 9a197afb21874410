import { describe, expect, test } from 'vitest';
import {
  cuttingView,
  groundsView,
  shelfView,
} from '../../../../client/elements/kits/kits-view-sheets.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { answerKits, kitsContext } from '../../../support/stock.ts';

const answer = answerKits();

describe('cuttingView', () => {
  const root = () => renderFresh(cuttingView(kitsContext(), answer));

  test('has a row and a drawing for each bolt', () => {
    expect(root().querySelectorAll('tbody tr')).toHaveLength(answer.cutting.length);
    expect(root().querySelectorAll('figure svg')).toHaveLength(answer.cutting.length);
  });

  test('tells squares that are cut and in no kit', () => {
    const left = answer.left.map((one, at) => ({ ...one, squares: at === 0 ? 3 : 0 }));
    const changed = renderFresh(cuttingView(kitsContext(), { ...answer, left }));
    expect(readText(changed, 'tbody tr')).toContain('and 3 squares');
  });
});

describe('shelfView', () => {
  test('adds up: cloth, labour, packaging and overhead are the cost', () => {
    const rows = [...renderFresh(shelfView(kitsContext(), answer)).querySelectorAll('td')];
    const [cloth = 0, labour = 0, packaging = 0, overhead = 0, cost = 0] = rows.map((cell) =>
      Math.round(Number(cell.textContent?.replace('$', '')) * 100),
    );
    expect(cloth + labour + packaging + overhead).toBe(cost);
  });

  test('says what is missing where there is no money, and weight and label all the same', () => {
    const { money: _money, ...bare } = answer;
    const root = renderFresh(shelfView(kitsContext(), bare));
    expect(readText(root, 'p')).toBe('Give every bolt a cost, and the money shows here.');
    expect(readText(root, '.pairs')).toContain('100% cotton');
  });
});

test('groundsView has every caution and every assumption', () => {
  const root = renderFresh(groundsView(kitsContext(), answer));
  const { cautions, assumptions } = answer;
  expect(root.querySelectorAll('li')).toHaveLength(cautions.length + assumptions.length);
});
