import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chooseSplit } from '#core/cloth/strips/choose-split.ts';
import { settleDictionary } from '#core/cloth/strips/dictionary.ts';
import { splitDictionary } from '#core/cloth/strips/split-dictionary.ts';
import { startProgramme } from '#core/cloth/strips/start-programme.ts';
import { programmes, type SmallProgramme } from '../../../support/programmes.ts';

const ENDLESS = Number.POSITIVE_INFINITY;

function settled({ columns, needs }: SmallProgramme) {
  const dictionary = startProgramme(columns, needs);
  settleDictionary(dictionary, ENDLESS, { steps: 1e5 });
  return dictionary;
}

const singles = (names: number) =>
  Array.from({ length: names }, (_, own) =>
    Uint8Array.from({ length: names }, (_, name) => (name === own ? 1 : 0)),
  );

describe('splitDictionary', () => {
  test('splitDictionary asks for no more in one copy and for no less in the other, and keeps the first', () => {
    fc.assert(
      fc.property(programmes, (one) => {
        const whole = settled(one);
        const split = chooseSplit(whole, singles(one.columns.length));
        fc.pre(split !== undefined);
        const before = structuredClone(whole);
        for (const child of splitDictionary(whole, split, ENDLESS)) {
          if (!settleDictionary(child, ENDLESS, { steps: 1e5 })) continue;
          const sum = [...child.basic.entries()].reduce(
            (total, [row, name]) =>
              total + (split.members[name] === 1 ? (child.amounts[row] ?? 0) : 0),
            0,
          );
          expect(sum <= split.value + 1e-6 || sum >= split.value + 1 - 1e-6).toBe(true);
          expect(child.cost).toBeGreaterThan(whole.cost - 1e-6);
        }
        expect(whole).toEqual(before);
      }),
    );
  });

  test('splitDictionary keeps every free variable that costs no more than is to spare, or is no whole one', () => {
    fc.assert(
      fc.property(programmes, fc.integer({ min: 0, max: 10 }), (one, spare) => {
        const whole = settled(one);
        const names = one.columns.length;
        const split = chooseSplit(whole, singles(names));
        fc.pre(split !== undefined);
        const kept = [...whole.free].filter(
          (name, column) => name >= names || (whole.costs[column] ?? 0) <= spare,
        );
        for (const child of splitDictionary(whole, split, spare)) {
          expect([...child.free]).toEqual(expect.arrayContaining(kept));
        }
      }),
    );
  });

  test('splitDictionary leaves out a copy that nothing can mend, or only what is too dear', () => {
    // Two of the one variable give 3: a half too many, and one is too few.
    const whole = settled({ columns: [{ cost: 10, gives: [2] }], needs: [3] });
    const [members] = singles(1);
    const split = { members: members ?? Uint8Array.of(1), value: 1, sum: 1.5 };
    expect(splitDictionary(whole, split, 100).map((child) => child.amounts[1])).toEqual([-0.5]);
    expect(splitDictionary(whole, split, 4)).toEqual([]);
  });
});
