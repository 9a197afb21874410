import { describe, expect, test } from 'vitest';
import {
  answerView,
  sayAsk,
  sumRows,
} from '../../../../client/elements/counter/counter-view-answer.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { readText, renderFresh } from '../../../support/render.ts';

function show(scene: Parameters<typeof setCounter>[0]) {
  const { context } = setCounter(scene);
  const row = context.rows[context.at];
  if (row === undefined) throw new Error('There is no cloth');
  return renderFresh(answerView(context, row));
}

describe('answerView', () => {
  test('answerView says what to ask for in figures and as it is spoken, and how it is cut', () => {
    const root = show({ shop: { at: '4' } });
    expect(readText(root, 'header')).toBe('Flannel Backing 5 of 5');
    expect(readText(root, '.amount')).toBe('2⅜ yd');
    expect(readText(root, '.spoken')).toBe('two and three eighths yards');
    expect(readText(root, '.spoken + .soft')).toBe(
      '7 strips of 3 squares, 12 in each, off 42 in 1 spare one included',
    );
  });

  test('answerView in centimetres speaks of metres', () => {
    const root = show({
      question: 'unit=cm&target.width=100&target.height=130',
      shop: { at: '4' },
    });
    expect(readText(root, '.amount')).toMatch(/^\d\.\d m$/);
    expect(readText(root, '.spoken')).toMatch(/^\d m \d0$/);
  });

  test('answerView says that a square does not fit across the bolt', () => {
    const root = show({ shop: { '0.width': '10' } });
    expect(readText(root, '.amount')).toBe('Too narrow');
    expect(readText(root, '.fault')).toBe(
      'A square of 12 in does not fit across this bolt. off 10 in',
    );
  });

  test('answerView tells enough from short by sign and words', () => {
    expect(readText(show({ shop: { '0.left': '2' } }), '.enough b')).toBe('Enough');
    expect(readText(show({ shop: { '0.left': '0.7' } }), '.enough')).toBe('Exactly enough');
    expect(readText(show({ shop: { '0.left': '0.4' } }), '.short')).toBe(
      'Not enough It gives 3 of the 6 squares that you need.',
    );
  });

  test('answerView sums in the currency, and without a sign where it knows none', () => {
    const shop = { '0.price': '10', '0.got': '1', '1.price': '8' };
    expect(readText(show({ shop }), '.sum')).toBe(
      '1 of 5 bought So far $7.50 In all $13.50 3 cloths have no price yet.',
    );
    expect(readText(show({ shop, currency: '' }), '.sum')).toBe(
      '1 of 5 bought So far 7.50 In all 13.50 3 cloths have no price yet.',
    );
    expect(readText(show({}), '.sum')).toBe('0 of 5 bought');
  });
});

describe('sumRows', () => {
  test('sumRows counts what has no price apart', () => {
    expect(sumRows(setCounter({ shop: { '0.price': '10' } }).context.rows)).toEqual({
      total: 750,
      unpriced: 4,
    });
  });
});

describe('sayAsk', () => {
  test('sayAsk says what another width takes, or nothing', () => {
    const { context } = setCounter({ shop: { at: '4' } });
    const row = context.rows[4];
    if (row === undefined) throw new Error('There is no cloth');
    expect(sayAsk(context, row, 108 * 25.4)).toBe('1⅛\u00a0yd');
    expect(sayAsk(context, row, 5 * 25.4)).toBeUndefined();
  });
});
