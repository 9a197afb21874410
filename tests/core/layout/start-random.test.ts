import { describe, expect, test } from 'vitest';
import { startRandom } from '#core/layout/start-random.ts';

describe('startRandom', () => {
  test('startRandom(1) draws the first numbers of mulberry32 as its author gives the rule (from memory)', () => {
    const draw = startRandom(1);
    // 2 693 262 067 / 2^32 = 0.6270…, then 0.0027…, 0.5274….
    expect([draw(1000), draw(1000), draw(1000)]).toEqual([627, 2, 527]);
  });

  test('startRandom of one seed draws the same again, of another seed others', () => {
    const take = (seed: number) => {
      const draw = startRandom(seed);
      return Array.from({ length: 20 }, () => draw(100));
    };
    expect(take(5)).toEqual(take(5));
    expect(take(5)).not.toEqual(take(6));
    expect(take(4_294_967_295)).toEqual(take(-1));
  });

  test('startRandom draws each of ten numbers about as often: chi squared below 27.9 (9 degrees, 0.1 %)', () => {
    const draw = startRandom(2024);
    const found = Array.from({ length: 10 }, () => 0);
    for (let at = 0; at < 100_000; at += 1) {
      const number = draw(10);
      found[number] = (found[number] ?? 0) + 1;
    }
    const chi = found.reduce((sum, count) => sum + (count - 10_000) ** 2 / 10_000, 0);
    expect(chi).toBeLessThan(27.88);
  });
});
