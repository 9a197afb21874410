import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { usableCuts } from '#core/wish/check-block.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const target = { width: 40, height: 50 };
const faultsOf = (request: Partial<PlanRequest>) => {
  const read = resolvePlan({ target, ...request });
  return read.ok ? [] : read.faults;
};

describe('checkBlock', () => {
  test('checkBlock refuses a seam that eats the face, to the last bit', () => {
    const fault = { code: 'seam-eats-face', path: ['block', 'seam'] };
    expect(faultsOf({ block: { cut: 4, seam: 2 } })).toEqual([
      { ...fault, expected: '2 in', received: '2 in' },
    ]);
    const grid = { columns: 6, rows: 8 };
    expect(faultsOf({ target: grid, block: { cut: 4, seam: 1.999 } })).toEqual([]);
  });

  test('checkBlock refuses snips as deep as the seam, in whatever unit', () => {
    expect(faultsOf({ block: { snipDepth: '2.54 cm' } })).toEqual([
      {
        code: 'snips-reach-stitching',
        path: ['block', 'snipDepth'],
        expected: '1 in',
        received: '1 in',
      },
    ]);
  });

  test('checkBlock points at each cut where it stood in the request', () => {
    const faults = faultsOf({ cuts: [9, 3, 8, 2], block: { seam: 1.5 } });
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['seam-eats-face', 'cuts.3'],
      ['seam-eats-face', 'cuts.1'],
    ]);
  });

  test('checkBlock passes over usual cuts that will not do while one will', () => {
    expect(faultsOf({ block: { seam: 3 } })).toEqual([]);
    expect(faultsOf({ block: { seam: '6 cm', snipDepth: 1 }, unit: 'cm' })).toEqual([]);
  });

  test('checkBlock blames the seam where no usual cut will do', () => {
    const [fault] = faultsOf({
      unit: 'cm',
      target: { size: 'throw' },
      block: { seam: 10, cut: 15 },
    });
    expect(fault).toMatchObject({ code: 'seam-eats-face', expected: '7.5 cm', received: '10 cm' });
  });

  test('checkBlock refuses a roll that is narrower than a piece, naming what can be used', () => {
    const layers = [{ role: 'top', width: 10 }, { role: 'backing' }] as const;
    expect(faultsOf({ layers, block: { cut: 10 } })).toEqual([
      {
        code: 'roll-too-narrow',
        path: ['layers', 0, 'width'],
        expected: '10 in',
        received: '9 in',
      },
    ]);
    expect(faultsOf({ layers })).toEqual([]);
  });

  test('checkBlock counts what a prewash takes from the width', () => {
    const layers = [
      { role: 'top', width: 10, prewashed: true, shrink: { length: 0, width: 10 } },
      { role: 'backing' },
    ] as const;
    expect(faultsOf({ layers, block: { cut: 8 } })).toEqual([]);
    expect(faultsOf({ layers, block: { cut: 8.5 } })).toMatchObject([{ received: '8 in' }]);
  });

  test('checkBlock points at the one print whose roll is too narrow', () => {
    const prints = [{ id: 'a' }, { id: 'b', width: 7 }];
    const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
    expect(faultsOf({ layers, block: { cut: 8 } })).toMatchObject([
      { code: 'roll-too-narrow', path: ['layers', 0, 'prints', 1, 'width'], received: '6 in' },
    ]);
  });

  test('checkBlock judges every rule whose parts are sound, beside faults elsewhere', () => {
    const faults = faultsOf({
      target: { width: 'x', height: 50 },
      block: { cut: 4, seam: 2, snipDepth: 2 },
      layers: [
        { role: 'top', gsm: 100 },
        { role: 'backing', width: 'y' },
      ],
    });
    expect(faults.map(({ code }) => code)).toEqual([
      'not-a-length',
      'not-a-length',
      'snips-reach-stitching',
      'seam-eats-face',
    ]);
  });

  test('checkBlock judges nothing by a part that could not be read', () => {
    expect(faultsOf({ block: { cut: 'x', seam: 2 } })).toHaveLength(1);
    expect(faultsOf({ block: { cut: 3, seam: 'x' } })).toHaveLength(1);
    expect(faultsOf({ block: { snipDepth: 'x', seam: 0.2 } })).toHaveLength(1);
    const layers = [{ role: 'top', width: '1 in' }, { role: 'backing' }] as const;
    expect(faultsOf({ layers, block: { cut: 10 } })).toMatchObject([{ code: 'too-small' }]);
  });
});

describe('usableCuts', () => {
  test('usableCuts leaves a face and fits every roll', () => {
    const layers = [{ role: 'top', width: 10 }, { role: 'backing' }] as const;
    const read = resolvePlan({ target, layers, block: { seam: 3.5, snipDepth: 1 } });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(usableCuts(read.value.input)).toEqual([7.5, 8, 8.5, 9]);
  });

  test('usableCuts fits something of what each layer is sold as', () => {
    const offers = [{ kind: 'pieces', id: 'squares', width: 8, length: 8, count: 20 }] as const;
    const layers = [{ role: 'top', offers }, { role: 'backing' }] as const;
    const read = resolvePlan({ target, layers });
    if (!read.ok) throw new Error(JSON.stringify(read.faults));
    expect(usableCuts(read.value.input)).toEqual([6, 6.5, 7, 7.5, 8]);
  });
});
