import { describe, expect, test } from 'vitest';
import type { Layer } from '#core/contract.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { resolvePrints } from '#core/wish/resolve-prints.ts';

function read(prints: Layer['prints'], role: Layer['role'] = 'top') {
  const reading = startReading('in');
  const layer = prints === undefined ? { role } : { role, prints };
  const resolved = resolvePrints(reading, layer, { index: 0, width: 42 });
  return { resolved, ...reading, query: decodeURIComponent(writeQuery(reading.kept)) };
}
const ids = (found: ReturnType<typeof read>) => found.resolved.map(({ id }) => id).join('');

describe('resolvePrints', () => {
  test('resolvePrints of nothing is four for a top and one for the rest', () => {
    expect(ids(read(undefined))).toBe('ABCD');
    expect(ids(read(undefined, 'backing'))).toBe('A');
    expect(read(undefined).assumptions.at(-1)).toMatchObject({ path: 'layers.0.prints', value: 4 });
  });

  test('resolvePrints of a number letters that many', () => {
    const six = read(6);
    expect(ids(six)).toBe('ABCDEF');
    expect(six.query).toBe('layers.0.prints=6');
    expect(read(26).resolved.at(-1)).toMatchObject({ id: 'Z', share: 1, width: 42 });
  });

  test('resolvePrints lettered and alike by hand is as if their number were given', () => {
    const named = ['A', 'B', 'C'].map((id) => ({ id, share: 1, width: '42 in' }));
    expect(read(named)).toEqual(read(3));
  });

  test('resolvePrints keeps names, shares, widths and looks', () => {
    const own = read([
      { id: 'Blue sprig', share: 2, value: 30, color: '#AABBCC' },
      { id: 'B', width: 60, directional: true },
    ]);
    expect(own.query).toBe(
      [
        'layers.0.prints.0.id=Blue sprig&layers.0.prints.0.share=2',
        'layers.0.prints.0.value=30&layers.0.prints.0.color=#aabbcc',
        'layers.0.prints.1.id=B&layers.0.prints.1.directional=true&layers.0.prints.1.width=60',
      ].join('&'),
    );
    expect(own.assumptions).toContainEqual(
      expect.objectContaining({ path: 'layers.0.prints.1.share', value: 1 }),
    );
  });

  test('resolvePrints with counts has no shares', () => {
    const [print] = read([{ id: 'A', count: 12, share: 3 }]).resolved;
    expect(print).toEqual({ id: 'A', count: 12, directional: false, width: 42 });
  });

  test('resolvePrints refuses a name that another has, each time', () => {
    const { faults } = read([{ id: 'A' }, { id: 'B' }, { id: 'A' }, { id: 'A' }]);
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['repeated-id', 'layers.0.prints.2.id'],
      ['repeated-id', 'layers.0.prints.3.id'],
    ]);
  });

  test('resolvePrints refuses shares that come to nothing, also after rounding', () => {
    for (const share of [0, 1e-12]) {
      expect(
        read([
          { id: 'A', share },
          { id: 'B', share },
        ]).faults,
      ).toMatchObject([{ code: 'too-small', path: ['layers', 0, 'prints'] }]);
    }
    expect(read([{ id: 'A', share: 0 }, { id: 'B' }]).faults).toEqual([]);
  });
});
