import { describe, expect, test } from 'vitest';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { priceLength } from '#core/counter/price-length.ts';
import { sumBolts } from '#core/counter/sum-bolts.ts';
import { counterFor } from '../../support/counter-needs.ts';

const { needs } = counterFor({ target: { width: 40, height: 50 } });
const inch = (value: number) => value * 25.4;

describe('sumBolts', () => {
  test('sumBolts is the sum of the lines of the till', () => {
    const bolts = needs.map((_need, at) => ({ width: inch(44), price: 999 + at * 100 }));
    const lines = needs.map((need, at) =>
      priceLength(999 + at * 100, askBolt(need, inch(44)).buy?.amount ?? Number.NaN),
    );
    const total = lines.reduce((sum, line) => sum + line, 0);
    expect(sumBolts(needs, bolts)).toEqual({ total, unpriced: 0 });
  });

  test('sumBolts counts what has no price, and what is too narrow, apart', () => {
    const narrow = needs.map(() => ({ width: inch(5), price: 1000 }));
    expect(sumBolts(needs, narrow)).toEqual({ total: 0, unpriced: needs.length });
    expect(sumBolts(needs, [])).toEqual({ total: 0, unpriced: needs.length });
  });
});
