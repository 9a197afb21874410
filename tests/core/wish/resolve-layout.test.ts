import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { LayoutRequest } from '#core/contract.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';
import { layoutRequests } from '../../support/layout-requests.ts';

const three = [{ id: 'Blue sprig' }, { id: 'Dots' }, { id: 'Plaid' }];
const base = { columns: 4, rows: 2, prints: three };

function read(request: LayoutRequest) {
  const resolved = resolveLayout(deepFreeze(request));
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return resolved.value;
}

function faultsOf(request: LayoutRequest) {
  const resolved = resolveLayout(deepFreeze(request));
  return resolved.ok ? [] : resolved.faults;
}

const counted = (...counts: readonly number[]) =>
  counts.map((count, at) => ({ id: `p${at}`, count }));

describe('resolveLayout', () => {
  test('resolveLayout(4×2, three prints) shares evenly and fills every default', () => {
    const { input, query, assumptions } = read(base);
    expect(input).toEqual({
      columns: 4,
      rows: 2,
      prints: [
        { id: 'Blue sprig', count: 3 },
        { id: 'Dots', count: 3 },
        { id: 'Plaid', count: 2 },
      ],
      pattern: 'scattered',
      touch: 'sides',
      seed: 1,
    });
    expect(query).toBe(
      'columns=4&rows=2&prints.0.id=Blue%20sprig&prints.1.id=Dots&prints.2.id=Plaid',
    );
    expect(assumptions.map(({ path }) => path)).toEqual(['prints', 'pattern', 'touch']);
  });

  test('resolveLayout counts corners with four prints that have blocks, or where it is told to', () => {
    expect(read({ ...base, prints: [...three, { id: 'Fern' }] }).input.touch).toBe('corners');
    expect(read({ ...base, prints: counted(4, 2, 2, 0) }).input.touch).toBe('sides');
    expect(read({ ...base, touch: 'corners' }).query).toContain('touch=corners');
  });

  test('resolveLayout of a whole grid takes the counts from it', () => {
    const { input } = read({ ...base, fixed: ['AAAA', 'ABAA'] });
    expect(input.prints.map(({ count }) => count)).toEqual([7, 1, 0]);
  });

  test('resolveLayout shares around pins that are more than a fair share', () => {
    const { input } = read({ ...base, fixed: ['AAAA', '....'] });
    expect(input.prints.map(({ count }) => count)).toEqual([4, 2, 2]);
  });

  test('resolveLayout leaves out a grid of free cells, counts that are the even share, and defaults', () => {
    const said: LayoutRequest = {
      ...base,
      prints: [3, 3, 2].map((count, at) => ({ id: three[at]?.id ?? '', count })),
      pattern: 'scattered',
      touch: 'sides',
      seed: 1,
      fixed: ['....', '....'],
    };
    expect(read(said)).toEqual(read(base));
  });

  test.each([
    [{ prints: counted(4, 3) }, 'counts-do-not-sum', ['prints'], 7],
    [{ prints: [{ id: 'a', count: 8 }, { id: 'b' }] }, 'counts-do-not-sum', ['prints'], 8],
    [{ prints: counted(2, 6), fixed: ['AAA.', '....'] }, 'too-small', ['prints', 0, 'count'], 2],
    [{ prints: [{ id: 'a' }, { id: 'a' }] }, 'repeated-id', ['prints', 1, 'id'], 'a'],
    [{ fixed: ['AAAD', '....'] }, 'not-one-of', ['fixed', 0], 'D'],
    [{ fixed: ['AAA', '....'] }, 'too-short', ['fixed', 0], 3],
  ] as const)('resolveLayout(%j) is refused with %s at %j', (own, code, path, received) => {
    expect(faultsOf({ ...base, ...own })).toMatchObject([{ code, path, received }]);
  });

  test('resolveLayout tells all faults at once', () => {
    const request = {
      ...base,
      prints: counted(4, 3).map((print) => ({ ...print, id: 'x' })),
      fixed: ['A', 'Z...'],
    };
    expect(faultsOf(request).map(({ code }) => code)).toEqual([
      'too-short',
      'not-one-of',
      'counts-do-not-sum',
      'repeated-id',
    ]);
  });

  test('resolveLayout of its own input is the same', () => {
    fc.assert(
      fc.property(layoutRequests, (request) => {
        const resolved = resolveLayout(request);
        fc.pre(resolved.ok);
        expect(resolveLayout(resolved.value.input)).toEqual(resolved);
      }),
    );
  });
});
