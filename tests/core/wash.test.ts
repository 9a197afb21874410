import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WashAnswer, WashRequest } from '#core/contract.ts';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { deepFreeze } from '../support/deep-freeze.ts';
import { washRequests } from '../support/requests.ts';

function answerTo(request: WashRequest): WashAnswer {
  const read = resolveWash(deepFreeze(request));
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return predictWash(deepFreeze(read.value));
}

const swatch = (after: number, more: Partial<NonNullable<WashRequest['swatches']>[number]> = {}) =>
  ({ fabric: 'sandwich', direction: 'length', before: 10, after, ...more }) as const;
const both = (after: number, washes = 1) => [
  swatch(after, { washes }),
  swatch(after, { washes, direction: 'width' }),
];

describe('predictWash', () => {
  test('predictWash of nothing but defaults tells of the table and says that it does', () => {
    const answer = answerTo({});
    expect(answer.sandwich.map(({ washes }) => washes)).toEqual([1, 3, 5, 10]);
    expect(answer.sizes).toEqual([]);
    expect(answer).not.toHaveProperty('sewFor');
    expect(answer.cautions.map(({ code }) => code)).toEqual(['unmeasured-shrink', 'dryer-lint']);
    expect(answer.links.self).toBe('/v1/wash-shrinkage?');
  });

  test('predictWash after sewFor gives the size that was wanted', () => {
    const sides = fc.integer({ min: 200, max: 1200 }).map((tenths) => tenths / 10);
    const wishes = fc.record({ width: sides, height: sides });
    const lists = fc.array(fc.integer({ min: 1, max: 50 }), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(wishes, lists, washRequests, (wanted, washes, request) => {
        const asked = { ...request, washes, wanted };
        const read = resolveWash(asked);
        fc.pre(read.ok);
        const { sewFor } = answerTo(asked);
        fc.pre(sewFor !== undefined && sewFor.width < 200 && sewFor.height < 200);
        const [after] = answerTo({ ...asked, ...(sewFor && { sewn: sewFor }) }).sizes;
        expect(after?.width).toBeCloseTo(wanted.width, 3);
        expect(after?.height).toBeCloseTo(wanted.height, 3);
      }),
      { numRuns: 60 },
    );
  });

  test('predictWash leaves spread and interval out where there is one swatch', () => {
    const [result] = answerTo({ swatches: [swatch(9.6)] }).swatches;
    expect(Object.keys(result ?? {})).toEqual([
      'fabric',
      'direction',
      'washes',
      'change',
      'n',
      'reading',
      'notes',
    ]);
  });

  test('predictWash believes a quilted test block over the table, and says nothing of a table', () => {
    const answer = answerTo({ swatches: both(9.7), sewn: { width: 50, height: 60 } });
    expect(answer.sizes[0]).toMatchObject({ washes: 1, width: 48.5, height: 58.2 });
    expect(answer.cautions.map(({ code }) => code)).toEqual(['dryer-lint']);
  });

  test('predictWash follows a course through two wash counts and tells its error', () => {
    // 5 % at the first wash and 6.4286 % at the second make r = 2/7 and a limit of 7 %.
    const swatches = [...both(9.5), ...both(9.35714286, 2)];
    const answer = answerTo({ swatches, washes: [1, 10] });
    expect(answer.courses[0]).toMatchObject({ limit: -7, rate: 0.2857, error: 0 });
    expect(answer.sandwich[1]?.change.height).toBeCloseTo(-7, 3);
  });

  test('predictWash keeps the order of the wash counts, each once, and sews for the first', () => {
    const wanted = { width: 50, height: 60 };
    const answer = answerTo({ washes: [10, 1, 10, 3], wanted, sewn: wanted });
    expect(answer.sizes.map(({ washes }) => washes)).toEqual([10, 1, 3]);
    expect(answer.sewFor).toEqual(answerTo({ washes: [10], wanted }).sewFor);
  });

  test('predictWash of cloth that grew makes a larger quilt', () => {
    const answer = answerTo({ swatches: both(10.2), sewn: { width: 50, height: 60 } });
    expect(answer.sizes[0]).toMatchObject({ width: 51, height: 61.2 });
    expect(answer.swatches[0]?.change).toBe(2);
  });

  test('predictWash takes the swatch of a fabric for its layer however it is spelt', () => {
    const swatches = [
      swatch(9, { fabric: 'Flannel' }),
      swatch(9.9, { fabric: ' Quilting cotton' }),
    ];
    const answer = answerTo({ swatches, grain: 'aligned' });
    expect(answer.input.swatches.map(({ fabric }) => fabric)).toEqual([
      'flannel',
      'quilting-cotton',
    ]);
    // (170·10 + 35·1)/205
    expect(answer.sandwich[0]?.change.height).toBeCloseTo(-8.4634, 4);
  });

  test('predictWash does not depend on the order of specimens of one cloth', () => {
    const swatches = [9.5, 9.62, 9.71, 9.55].map((after) => swatch(after));
    const one = answerTo({ swatches });
    const other = answerTo({ swatches: swatches.toReversed() });
    expect(other.swatches).toEqual(one.swatches);
    expect(other.courses).toEqual(one.courses);
    expect(other.sandwich).toEqual(one.sandwich);
  });

  test('predictWash gives sizes between their low and high, and none below nothing', () => {
    fc.assert(
      fc.property(washRequests, (request) => {
        const read = resolveWash({ ...request, sewn: { width: 50, height: 60 } });
        fc.pre(read.ok);
        for (const size of predictWash(read.value).sizes) {
          for (const side of ['width', 'height'] as const) {
            expect(size.low[side]).toBeGreaterThan(0);
            expect(size[side]).toBeGreaterThanOrEqual(size.low[side]);
            expect(size[side]).toBeLessThanOrEqual(size.high[side]);
          }
        }
      }),
    );
  });

  test('predictWash gives the same bytes for the same input', () => {
    fc.assert(
      fc.property(washRequests, (request) => {
        const read = resolveWash(request);
        fc.pre(read.ok);
        const again = resolveWash(structuredClone(request));
        if (!again.ok) throw new Error('not the same');
        expect(JSON.stringify(predictWash(again.value))).toBe(
          JSON.stringify(predictWash(read.value)),
        );
      }),
      { numRuns: 30 },
    );
  });
});
