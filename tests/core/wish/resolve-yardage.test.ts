import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RollFabric } from '#core/contract.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { TEXT_KEYS } from '../../../api/http/schemas/wire-schemas.ts';
import { unfoldQuery } from '../../../api/http/unfold-query.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';
import { yardageRequests } from '../../support/requests.ts';

const piece = { id: 'square', width: 8.5, length: 8.5, count: 40 };
const fabric = { id: 'flannel', width: 44, pieces: [piece] };
const faultsOf = (...fabrics: readonly RollFabric[]) => {
  const read = resolveYardage({ fabrics });
  return read.ok ? [] : read.faults.map(({ code, path }) => [code, path.join('.')]);
};

describe('resolveYardage', () => {
  test('resolveYardage fills what shops and makers usually do, and tells it', () => {
    const read = resolveYardage({ fabrics: [fabric] });
    if (!read.ok) throw new Error('refused');
    expect(read.value.input.fabrics[0]).toMatchObject({
      selvage: 0.5,
      squaring: 1,
      step: 4.5,
      prewash: { length: 0, width: 0 },
    });
    expect(read.value.assumptions.map(({ path }) => path)).toEqual([
      'unit',
      'fabrics.0.selvage',
      'fabrics.0.squaring',
      'fabrics.0.step',
      'fabrics.0.pieces.0.directional',
    ]);
  });

  test('resolveYardage refuses a piece that is wider than the roll both ways', () => {
    const long = { ...piece, width: 50, length: 20 };
    expect(faultsOf({ ...fabric, pieces: [long] })).toEqual([]);
    expect(faultsOf({ ...fabric, pieces: [{ ...long, directional: true }] })).toEqual([
      ['roll-too-narrow', 'fabrics.0.pieces.0.width'],
    ]);
    expect(faultsOf({ ...fabric, pieces: [{ ...long, length: 50 }] })).toEqual([
      ['roll-too-narrow', 'fabrics.0.pieces.0.width'],
    ]);
  });

  test('resolveYardage finds everything at once, roll by roll', () => {
    const wide = { ...piece, width: 50, length: 50 };
    expect(
      faultsOf(
        { ...fabric, selvage: 'x' },
        { ...fabric, id: 'a', pieces: [wide] },
        { ...fabric, pieces: [piece, piece] },
      ),
    ).toEqual([
      ['not-a-length', 'fabrics.0.selvage'],
      ['repeated-id', 'fabrics.2.pieces.1.id'],
      ['repeated-id', 'fabrics.2.id'],
      ['roll-too-narrow', 'fabrics.1.pieces.0.width'],
    ]);
  });

  test('resolveYardage of what it understood is the same, as input and as query', () => {
    fc.assert(
      fc.property(yardageRequests, (request) => {
        const read = resolveYardage(deepFreeze(request));
        fc.pre(read.ok);
        expect(resolveYardage(read.value.input)).toEqual(read);
        const unfolded = unfoldQuery(read.value.query, TEXT_KEYS);
        if (!unfolded.ok) throw new Error(read.value.query);
        expect(resolveYardage(unfolded.value as typeof request)).toEqual(read);
      }),
    );
  });
});
