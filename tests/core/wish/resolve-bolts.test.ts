import { describe, expect, test } from 'vitest';
import { startReading } from '#core/wish/reading.ts';
import { resolveBolts } from '#core/wish/resolve-bolts.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

const plan = (selvage: number | string) => {
  const layers = [{ role: 'top' as const, selvage }, { role: 'backing' as const }];
  const read = resolvePlan({ target: { columns: 3, rows: 3 }, layers });
  if (!read.ok) throw new Error('refused');
  return read.value.input;
};
const bolt = { id: 'a', role: 'top' as const, width: 44, length: '10 yd' };

describe('resolveBolts', () => {
  test('resolveBolts takes the selvage of the layer in the plan, in the unit of the request', () => {
    expect(resolveBolts(startReading('in'), [bolt], plan(1))[0]).toEqual({
      id: 'a',
      role: 'top',
      print: 'a',
      width: 44,
      length: 360,
      selvage: 1,
      squaring: 1,
    });
    const metric = { ...bolt, width: 112 };
    expect(resolveBolts(startReading('cm'), [metric], plan(1))[0]).toMatchObject({
      length: 914.4,
      selvage: 2.54,
      squaring: 2.5,
    });
    expect(resolveBolts(startReading('cm'), [metric], undefined)[0]).toMatchObject({
      selvage: 1.25,
    });
  });

  test('resolveBolts keeps what was said in the query and tells what was not', () => {
    const reading = startReading('in');
    resolveBolts(reading, [{ ...bolt, print: 'Rust', selvage: 0, cost: 900 }], plan(1));
    expect(reading.kept).toEqual([
      ['bolts.0.id', 'a'],
      ['bolts.0.role', 'top'],
      ['bolts.0.print', 'Rust'],
      ['bolts.0.width', '44'],
      ['bolts.0.length', '360'],
      ['bolts.0.selvage', '0'],
      ['bolts.0.cost', '900'],
    ]);
    expect(reading.assumptions.map(({ path }) => path)).toEqual(['unit', 'bolts.0.squaring']);
  });
});
