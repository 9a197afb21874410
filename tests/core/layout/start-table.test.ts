import { describe, expect, test } from 'vitest';
import { startRandom } from '#core/layout/start-random.ts';
import { startTable } from '#core/layout/start-table.ts';

describe('startTable', () => {
  test('startTable keeps what a Map keeps, for numbers up to 2⁵², as it grows', () => {
    const [table, map, draw] = [startTable(), new Map<number, number>(), startRandom(3)];
    for (let turn = 0; turn < 20_000; turn += 1) {
      const key = draw(2) === 0 ? draw(5000) : draw(2 ** 20) * 2 ** 32 + draw(7);
      const value = draw(1000);
      table.keep(key, value);
      map.set(key, value);
    }
    for (const [key, value] of map) expect(table.find(key)).toBe(value);
    expect(table.find(2 ** 51 + 99)).toBe(-1);
  });
});
