import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { checkRequest } from '../../../client/data/check-request.ts';

const faultsOf = (value: unknown) => {
  const outcome = checkRequest(value);
  return outcome.ok ? [] : outcome.faults.map(({ code, path }) => `${code} ${path.join('.')}`);
};
const LAP: PlanRequest = { target: { size: 'lap' } };

describe('checkRequest', () => {
  test.each<PlanRequest>([
    LAP,
    { unit: 'cm', target: { width: '40', height: 50.5, at: 'sewn' } },
    { target: { bed: { width: 60, length: '80 in', drop: 0 } }, washes: 3 },
    { target: { columns: 5, rows: 6 }, block: { cut: '8 1/2' }, cuts: [8, '9'] },
    {
      ...LAP,
      layers: [
        { role: 'top', prints: [{ id: 'Sprig', share: 2, color: '#AbCdEf' }] },
        { role: 'backing', shrink: { length: 3, width: -2 }, prewashed: true },
      ],
    },
  ])('checkRequest(%j) takes it as it is', (request) => {
    expect(checkRequest(request)).toEqual({ ok: true, value: request });
  });

  test.each([
    [{ ...LAP, colour: 'red' }, 'unknown-key colour'],
    [{ ...LAP, block: { cut: 8, seem: 1 } }, 'unknown-key block.seem'],
    [{}, 'missing target'],
    [{ target: 5 }, 'target-unclear target'],
    [{ target: { size: 'gigantic' } }, 'target-unclear target'],
    [{ target: { columns: 2.5, rows: 4 } }, 'not-whole target.columns'],
    [{ target: { columns: 101, rows: 4 } }, 'too-large target.columns'],
    [{ ...LAP, washes: 0 }, 'too-small washes'],
    [{ ...LAP, washes: Number.POSITIVE_INFINITY }, 'too-large washes'],
    [{ ...LAP, washes: Number.NaN }, 'wrong-type washes'],
    [{ ...LAP, washes: 'often' }, 'wrong-type washes'],
    [{ ...LAP, unit: 'ell' }, 'not-one-of unit'],
    [{ ...LAP, block: { cut: '' } }, 'empty block.cut'],
    [{ ...LAP, block: { cut: 'x'.repeat(33) } }, 'too-long block.cut'],
    [{ ...LAP, layers: [{ role: 'top' }] }, 'too-short layers'],
    [
      {
        ...LAP,
        layers: [{ role: 'top', prints: [{ id: 'A', color: 'red' }] }, { role: 'backing' }],
      },
      'bad-name layers.0.prints.0.color',
    ],
  ])('checkRequest(%j) finds %s', (value, fault) => {
    expect(faultsOf(value)).toContain(fault);
  });

  test('checkRequest tells all faults at once', () => {
    expect(faultsOf({ ...LAP, washes: 99, spare: -1, foo: 1 })).toEqual([
      'too-large washes',
      'too-small spare',
      'unknown-key foo',
    ]);
  });

  test('checkRequest says what was expected and what was found', () => {
    const outcome = checkRequest({ ...LAP, washes: 99 });
    expect(outcome.ok ? [] : outcome.faults).toEqual([
      { code: 'too-large', path: ['washes'], expected: '50', received: 99 },
    ]);
  });
});
