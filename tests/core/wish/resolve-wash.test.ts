import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { WashRequest } from '#core/contract.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { TEXT_KEYS } from '../../../api/http/schemas/wire-schemas.ts';
import { unfoldQuery } from '../../../api/http/unfold-query.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';
import { washRequests } from '../../support/requests.ts';

function read(request: WashRequest) {
  const found = resolveWash(deepFreeze(request));
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.value;
}
const faultsOf = (request: WashRequest) => {
  const found = resolveWash(request);
  return found.ok ? [] : found.faults;
};
const swatch = (after: number | string, before: number | string = 10) =>
  ({ direction: 'length', before, after }) as const;

describe('resolveWash', () => {
  test('resolveWash of nothing is the classic layers and the usual wash counts, all of it told', () => {
    const { input, assumptions, query } = read({});
    expect(input).toMatchObject({ unit: 'in', swatches: [], grain: 'alternating', confidence: 95 });
    expect(input.washes).toEqual([1, 3, 5, 10]);
    expect(query).toBe('');
    const told = assumptions.map(({ path }) => path);
    for (const path of ['unit', 'layers', 'grain', 'washes', 'confidence']) {
      expect(told).toContain(path);
    }
  });

  test('resolveWash tells that a swatch without a name stands for no layer, and counts one wash', () => {
    const { input, assumptions } = read({ swatches: [swatch(9.6)] });
    expect(input.swatches[0]).toMatchObject({ fabric: 'cloth', washes: 1 });
    const told = assumptions.map(({ path }) => path);
    expect(told).toContain('swatches.0.fabric');
    expect(told).toContain('swatches.0.washes');
  });

  test.each([
    ['Flannel', 'flannel'],
    [' quilting  cotton ', 'quilting-cotton'],
    ['SANDWICH', 'sandwich'],
    ['Gran’s curtain', 'Gran’s curtain'],
  ])('resolveWash takes the swatch “%s” for %s', (fabric, name) => {
    const { input } = read({ swatches: [{ ...swatch(9.6), fabric }] });
    expect(input.swatches[0]?.fabric).toBe(name);
  });

  test('resolveWash refuses a swatch that doubled or halved, and says what to expect', () => {
    const fault = { code: 'after-unlikely', path: ['swatches', 0, 'after'] };
    expect(faultsOf({ swatches: [swatch(24)] })).toEqual([
      { ...fault, expected: '5 to 20 in', received: '24 in' },
    ]);
    // 9.6 in measured in the wrong unit.
    expect(faultsOf({ swatches: [swatch('9.6 cm')] })).toMatchObject([fault]);
    expect(faultsOf({ swatches: [swatch(5), swatch(20)] })).toEqual([]);
  });

  test('resolveWash judges no swatch by a length that it could not read', () => {
    const faults = faultsOf({
      swatches: [swatch('x'), swatch(9, 'y'), swatch(25)],
      sewn: { width: 'z', height: 50 },
    });
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['not-a-length', 'swatches.0.after'],
      ['not-a-length', 'swatches.1.before'],
      ['after-unlikely', 'swatches.2.after'],
      ['not-a-length', 'sewn.width'],
    ]);
  });

  test('resolveWash takes each wash count once, and the usual ones spelt out as left out', () => {
    const { input, query } = read({ washes: [5, 2, 5] });
    expect(new Set(input.washes)).toEqual(new Set([2, 5]));
    expect(input.washes).toHaveLength(2);
    expect(query).toBe(input.washes.map((count, index) => `washes.${index}=${count}`).join('&'));
    expect(read({ washes: [1, 3, 5, 10, 3] })).toEqual(read({}));
  });

  test('resolveWash of what it understood is the same, as input and as query', () => {
    fc.assert(
      fc.property(washRequests, (request) => {
        const found = resolveWash(request);
        fc.pre(found.ok);
        expect(resolveWash(found.value.input)).toEqual(found);
        const unfolded = unfoldQuery(found.value.query, TEXT_KEYS);
        if (!unfolded.ok) throw new Error(found.value.query);
        expect(resolveWash(unfolded.value as WashRequest)).toEqual(found);
      }),
    );
  });
});
