import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { PlanRequest } from '#core/contract.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { TEXT_KEYS } from '../../../api/http/schemas/wire-schemas.ts';
import { unfoldQuery } from '../../../api/http/unfold-query.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';
import { planRequests } from '../../support/requests.ts';

const target = { width: 40, height: 50 };
function understand(request: PlanRequest) {
  const found = resolvePlan(deepFreeze(request));
  if (!found.ok) throw new Error(JSON.stringify(found.faults));
  return found.value;
}
const faultsOf = (request: PlanRequest) => {
  const found = resolvePlan(request);
  return found.ok ? [] : found.faults.map(({ code, path }) => [code, path.join('.')]);
};

/** Each code that a request of the right shape can raise, with the least that raises it. */
const FAULTS: readonly (readonly [code: string, path: string, request: PlanRequest])[] = [
  ['not-a-length', 'target.width', { target: { width: 'forty', height: 50 } }],
  ['unclear-comma', 'target.width', { target: { width: '1,016 mm', height: 50 } }],
  ['empty', 'block.cut', { target, block: { cut: ' ' } }],
  ['too-small', 'block.cut', { target, block: { cut: 1 } }],
  ['too-large', 'stitch.length', { target, stitch: { length: 1 } }],
  [
    'too-small',
    'layers.0.prints',
    { target, layers: [{ role: 'top', prints: [{ id: 'a', share: 0 }] }, { role: 'backing' }] },
  ],
  ['size-not-in-region', 'target.size', { target: { size: 'queen', region: 'uk' } }],
  ['seam-eats-face', 'block.seam', { target, block: { cut: 6, seam: 3 } }],
  ['snips-reach-stitching', 'block.snipDepth', { target, block: { snipDepth: 1 } }],
  [
    'roll-too-narrow',
    'layers.0.width',
    { target, block: { cut: 10 }, layers: [{ role: 'top', width: 10 }, { role: 'backing' }] },
  ],
  ['layers-unfit', 'layers', { target, layers: [{ role: 'top' }, { role: 'top' }] }],
  [
    'repeated-id',
    'layers.0.prints.1.id',
    { target, layers: [{ role: 'top', prints: [{ id: 'a' }, { id: 'a' }] }, { role: 'backing' }] },
  ],
  [
    'counts-do-not-sum',
    'layers.0.prints',
    {
      target: { columns: 2, rows: 2 },
      layers: [{ role: 'top', prints: [{ id: 'a', count: 3 }] }, { role: 'backing' }],
    },
  ],
  ['quilt-too-large', 'target', { target: { columns: 60, rows: 60 } }],
];

/** The same request in another spelling: keys turned round, numbers as text with their unit. */
function respell(value: unknown, unit: string): unknown {
  if (Array.isArray(value)) return value.map((part) => respell(part, unit));
  if (typeof value !== 'object' || value === null) return value;
  const lengths = ['width', 'height', 'cut', 'seam', 'snipPitch', 'selvage'];
  const entries = Object.entries(value).map(([key, part]) => {
    if (key === 'shrink') return [key, part];
    const isLength = lengths.includes(key) && typeof part === 'number';
    return [key, isLength ? ` ${part} ${unit}` : respell(part, unit)];
  });
  return Object.fromEntries(entries.toReversed());
}

describe('resolvePlan', () => {
  test.each(FAULTS)('resolvePlan raises %s at %s', (code, path, request) => {
    expect(faultsOf(request)).toEqual([[code, path]]);
  });

  test('resolvePlan gives every fault at once, those between fields too', () => {
    const request: PlanRequest = {
      target: { width: 'forty', height: 5000 },
      block: { cut: 4, seam: 2, snipDepth: 2, snipPitch: '' },
      layers: [
        {
          role: 'top',
          width: '1 mm',
          prints: [
            { id: 'a', count: 3 },
            { id: 'a', count: 1 },
          ],
        },
        { role: 'top' },
      ],
      stitch: { bobbin: '1 in' },
      tolerance: { ease: 'x' },
    };
    expect(faultsOf(request)).toEqual([
      ['not-a-length', 'target.width'],
      ['too-large', 'target.height'],
      ['empty', 'block.snipPitch'],
      ['too-small', 'layers.0.width'],
      ['repeated-id', 'layers.0.prints.1.id'],
      ['layers-unfit', 'layers'],
      ['too-small', 'stitch.bobbin'],
      ['not-a-length', 'tolerance.ease'],
      ['snips-reach-stitching', 'block.snipDepth'],
      ['seam-eats-face', 'block.seam'],
      ['counts-do-not-sum', 'layers.0.prints'],
    ]);
  });

  test('resolvePlan of a bare wish tells every default that it filled in', () => {
    const { input, assumptions, query } = understand({ target });
    expect(query).toBe('target.width=40&target.height=50');
    const told = new Set(assumptions.map(({ path }) => path));
    const parts = [
      'unit',
      'target.at',
      'cuts',
      'layers',
      'layers.0.prints',
      'grain',
      'washes',
      'spare',
    ];
    for (const path of parts) expect(told).toContain(path);
    for (const group of ['block', 'stitch', 'pace', 'tolerance'] as const) {
      for (const name of Object.keys(input[group])) expect(told).toContain(`${group}.${name}`);
    }
    for (const name of ['width', 'selvage', 'prewashed', 'gsm', 'thickness', 'shrink.length']) {
      expect(told).toContain(`layers.0.${name}`);
      expect(told).toContain(`layers.1.${name}`);
    }
    for (const { why, source } of assumptions) {
      expect(why).not.toBe('');
      expect(source).toBeTruthy();
    }
  });

  test('resolvePlan keeps how many make the quilt, and assumes nothing where nobody said so', () => {
    const said = understand({ target, pupils: 1 });
    expect(said.input.pupils).toBe(1);
    expect(said.query).toBe('target.width=40&target.height=50&pupils=1');
    expect(understand({ target }).input).not.toHaveProperty('pupils');
  });

  test('resolvePlan keeps that a quilt is for an infant, and assumes nothing where nobody said so', () => {
    const said = understand({ target, infant: true });
    expect(said.input.infant).toBe(true);
    expect(said.query).toBe('target.width=40&target.height=50&infant=true');
    for (const request of [{ target }, { target, infant: false }]) {
      const { input, query, assumptions } = understand(request);
      expect([input.infant, query]).toEqual([false, 'target.width=40&target.height=50']);
      expect(assumptions.map(({ path }) => path)).not.toContain('infant');
    }
  });

  test('resolvePlan in cm fills defaults that are round in cm', () => {
    const { input } = understand({ unit: 'cm', target: { size: 'throw' } });
    expect(input.block).toEqual({ seam: 2.5, snipDepth: 1.25, snipPitch: 0.6 });
    expect(input.layers[0]).toMatchObject({ width: 108, selvage: 1.25 });
  });

  test('resolvePlan of what it understood is the same: input, query and assumptions', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        const found = resolvePlan(deepFreeze(request));
        fc.pre(found.ok);
        expect(resolvePlan(found.value.input)).toEqual(found);
      }),
    );
  });

  test('resolvePlan of its own query unfolded is the same', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        const found = resolvePlan(request);
        fc.pre(found.ok);
        const unfolded = unfoldQuery(found.value.query, TEXT_KEYS);
        if (!unfolded.ok) throw new Error(found.value.query);
        expect(resolvePlan(unfolded.value as PlanRequest)).toEqual(found);
      }),
    );
  });

  test('resolvePlan has one query for one wish, however it is spelt or ordered', () => {
    fc.assert(
      fc.property(planRequests, (request) => {
        const found = resolvePlan(request);
        fc.pre(found.ok);
        expect(resolvePlan(respell(request, 'in') as PlanRequest)).toEqual(found);
      }),
    );
  });

  test('resolvePlan spells no default into its query, whichever are spelt out', () => {
    const bare = understand({ target });
    const { target: _, ...rest } = bare.input;
    for (const [name, value] of Object.entries(rest)) {
      expect(understand({ target, [name]: value })).toEqual(bare);
    }
  });

  test('resolvePlan keeps its query when a seam too wide for some usual cuts goes round', () => {
    const { input, query } = understand({ target, block: { seam: 3 } });
    expect(understand(input).query).toBe(query);
  });

  test('resolvePlan takes layers in any order, a bed in centimetres and cuts in mixed units', () => {
    const { input } = understand({
      target: { bed: { width: '150 cm', length: '200 cm', drop: '30 cm', footDrop: 0 } },
      layers: [{ role: 'backing' }, { role: 'middle' }, { role: 'middle' }, { role: 'top' }],
      cuts: ['10 in', '20 cm'],
    });
    expect(input.layers.map(({ role }) => role)).toEqual(['backing', 'middle', 'middle', 'top']);
    expect(input.cuts).toEqual([7.874015748, 10]);
    expect(input.target).toMatchObject({ bed: { drop: 11.811023622, footDrop: 0 } });
  });
});
