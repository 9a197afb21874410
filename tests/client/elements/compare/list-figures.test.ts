import { describe, expect, test } from 'vitest';
import { computePlan } from '../../../../client/data/on-device.ts';
import { FIGURES, listFigures } from '../../../../client/elements/compare/list-figures.ts';

function figures(query: string) {
  const outcome = computePlan(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return { plan: outcome.value, figures: listFigures(outcome.value) };
}

describe('listFigures', () => {
  test('gives the same figures of one quilt told in inches and in centimetres', () => {
    const layers =
      'layers.0.role=top&layers.0.width=42 in&layers.1.role=backing&layers.1.width=42 in&stitch.bobbin=70 m';
    const rest = `target.columns=4&target.rows=5&block.cut=8 in&block.seam=1 in&block.snipDepth=0.5 in&block.snipPitch=0.25 in&stitch.length=2.5 mm&stitch.tail=8 cm&stitch.link=1 cm&${layers}`;
    const inches = figures(`unit=in&${rest}`).figures;
    const metric = figures(`unit=cm&${rest}`).figures;
    for (const name of ['width', 'height', 'cut', 'thread', 'weight'] as const) {
      expect(metric[name] ?? 0).toBeCloseTo(inches[name] ?? Number.NaN, -1);
    }
    expect(metric.snips).toBe(inches.snips);
  });

  test('adds up the cloth of all layers, and knows an inch and a yard', () => {
    const { plan, figures: found } = figures('target.size=lap');
    expect(found.width).toBeCloseTo(plan.size.washed.width * 25.4, 9);
    expect(found.cloth).toBeCloseTo((found.top ?? 0) + (found.backing ?? 0), 9);
    const yards = plan.fabrics.reduce((sum, { buy }) => sum + buy.amount, 0);
    expect(found.cloth).toBeCloseTo(yards * 914.4, 9);
    expect(found.middle).toBeUndefined();
    expect(found.cost).toBeUndefined();
  });

  test('knows a cost only where every cloth has a price', () => {
    const offer = (layer: number) =>
      `layers.${layer}.offers.0.id=Bolt&layers.${layer}.offers.0.kind=roll&layers.${layer}.offers.0.step=0.25 yd&layers.${layer}.offers.0.price=1200`;
    const base = 'target.size=lap&layers.0.role=top&layers.1.role=backing';
    const priced = figures(`${base}&${offer(0)}&${offer(1)}`);
    const costs = priced.plan.fabrics.map(({ cost }) => cost?.total ?? Number.NaN);
    expect(priced.figures.cost).toBe(costs.reduce((sum, cost) => sum + cost, 0));
    expect(figures(`${base}&${offer(0)}`).figures.cost).toBeUndefined();
  });

  test('has every figure in the order in which it is told', () => {
    const { figures: found } = figures('target.size=lap');
    expect(FIGURES.filter((name) => found[name] !== undefined)).toEqual(
      FIGURES.filter((name) => name !== 'middle' && name !== 'cost'),
    );
  });
});
