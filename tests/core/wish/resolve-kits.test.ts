import { describe, expect, test } from 'vitest';
import type { KitBolt, KitsRequest } from '#core/contract.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { expectStable } from '../../support/resolved-twice.ts';

const plan = { target: { width: 40, height: 50 } };
const bolt = (id: string, own: Partial<KitBolt> = {}): KitBolt => ({
  id,
  role: 'top',
  width: 44,
  length: 360,
  ...own,
});
const read = (own: Partial<KitsRequest>) => {
  const resolved = resolveKits({ plan, bolts: [bolt('a')], ...own });
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return resolved.value;
};

describe('resolveKits', () => {
  test('resolveKits reads the plan as a plan is read, below plan', () => {
    const { input, assumptions, query } = read({ plan: { ...plan, washes: 3 } });
    expect(input.plan).toMatchObject({ unit: 'in', washes: 3, spare: 5 });
    expect(assumptions.map(({ path }) => path)).toContain('plan.block.seam');
    expect(query).toBe(
      'plan.target.width=40&plan.target.height=50&plan.washes=3' +
        '&bolts.0.id=a&bolts.0.role=top&bolts.0.width=44&bolts.0.length=360',
    );
  });

  test('resolveKits does not tell how many prints a plan has by itself: the bolts do', () => {
    const paths = read({}).assumptions.map(({ path }) => path);
    expect(paths.filter((path) => /prints$/.test(path) && path.startsWith('plan'))).toEqual([]);
    expect(paths).not.toContain('plan.unit');
  });

  test('resolveKits gives the plan the unit of the whole unless it has one', () => {
    const metric = [bolt('a', { width: 112, length: 900 })];
    expect(
      read({ unit: 'cm', plan: { target: { width: 100, height: 120 } }, bolts: metric }),
    ).toMatchObject({
      input: { plan: { unit: 'cm' } },
      query: expect.not.stringContaining('plan.unit'),
    });
    const mixed = read({ unit: 'cm', plan: { ...plan, unit: 'in' }, bolts: metric });
    expect(mixed.query).toMatch(/^unit=cm&plan\.unit=in&/);
  });

  test('resolveKits wants as many prints a kit as the plan has, as far as there are bolts', () => {
    const many = ['a', 'b', 'c', 'd', 'e', 'f'].map((id) => bolt(id));
    expect(read({ bolts: many }).input.perKit).toEqual({ distinctPrints: 4, spare: 0 });
    expect(read({ bolts: many.slice(0, 2) }).input.perKit.distinctPrints).toBe(2);
    const alike = many.map((one) => ({ ...one, print: 'one' }));
    expect(read({ bolts: alike }).input.perKit.distinctPrints).toBe(1);
  });

  test.each<[string, Partial<KitsRequest>]>([
    ['plain', {}],
    [
      'in two units',
      { unit: 'cm', plan: { ...plan, unit: 'in' }, bolts: [bolt('12', { width: 110 })] },
    ],
    [
      'with everything said',
      {
        kits: 12,
        bolts: [
          bolt('a', {
            print: 'Rust & co',
            selvage: '1/4',
            squaring: 0,
            cost: 900,
            currency: 'GBP',
          }),
          bolt('b', { role: 'backing', cost: 0 }),
        ],
        perKit: { distinctPrints: 1, mostOfOne: 40, spare: 2 },
        costs: { packaging: 20, labour: 300, overhead: 10, margin: 37.5 },
        fibres: { top: [{ fibre: 'hemp', percent: 100 }] },
      },
    ],
  ])('resolveKits understands what it understood, given back: %s', (_, own) => {
    expectStable(resolveKits, { plan, bolts: [bolt('a')], ...own });
  });

  test('resolveKits finds everything at once, the plan’s own below plan', () => {
    const resolved = resolveKits({
      plan: { target: { width: 'x', height: 50 }, block: { snipDepth: 1 } },
      bolts: [bolt('a', { width: 'y', cost: 3, currency: 'EUR' }), bolt('b', { cost: 3 })],
      currency: 'USD',
      costs: { margin: 1, markup: 1 },
      fibres: { top: [{ fibre: 'cotton', percent: 5 }] },
    });
    const faults = resolved.ok
      ? []
      : resolved.faults.map(({ code, path }) => [code, path.join('.')]);
    expect(faults).toEqual([
      ['not-a-length', 'plan.target.width'],
      ['snips-reach-stitching', 'plan.block.snipDepth'],
      ['not-a-length', 'bolts.0.width'],
      ['price-unclear', 'costs'],
      ['mixed-currencies', 'bolts.0.currency'],
      ['percents-do-not-sum', 'fibres.top'],
    ]);
  });
});
