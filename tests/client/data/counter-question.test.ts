import { describe, expect, test } from 'vitest';
import { askBolt } from '#core/counter/ask-bolt.ts';
import { readCounter } from '../../../client/data/counter-question.ts';
import { computePlan } from '../../../client/data/on-device.ts';

function understand(question: string) {
  const read = readCounter(question);
  if (!read.ok) throw new Error(JSON.stringify(read.faults));
  return read.value;
}

describe('readCounter', () => {
  test.each([
    'target.width=40&target.height=50',
    'unit=cm&target.size=double',
    'target.size=queen&layers.0.role=top&layers.0.prints=6&layers.1.role=middle&layers.2.role=backing&layers.2.width=108',
    'target.columns=6&target.rows=8&block.cut=8.5&spare=0',
  ])('readCounter(%j) buys what the plan of the service buys', (question) => {
    const { needs } = understand(question);
    const plan = computePlan(question);
    if (!plan.ok) throw new Error(JSON.stringify(plan.faults));
    const asked = needs.map((need) => askBolt(need, need.roll.width).buy);
    expect(asked).toEqual(plan.value.fabrics.map(({ buy }) => buy));
  });

  test('readCounter asks by the canonical query', () => {
    expect(understand('target.height=50&target.width=40.0&unit=in').question).toBe(
      'target.width=40&target.height=50',
    );
  });

  test('readCounter(squares of one size) has one cloth and no plan', () => {
    const { needs, plan, question } = understand('cut=8 1/2&count=40');
    expect(needs).toMatchObject([{ cut: 215.9, squares: 40, unit: 'in' }]);
    expect(plan).toBeUndefined();
    expect(question).toBe('cut=8.5&count=40');
    expect(understand('unit=cm&cut=21,5&count=40').needs).toMatchObject([{ cut: 215, unit: 'cm' }]);
    expect(understand(question).question).toBe(question);
  });

  test.each([
    ['cut=&count=40', 'cut', 'empty'],
    ['cut=wide&count=40', 'cut', 'not-a-length'],
    ['cut=90&count=40', 'cut', 'too-large'],
    ['cut=8.5', 'count', 'empty'],
    ['cut=8.5&count=4.5', 'count', 'not-whole'],
    ['cut=8.5&count=0', 'count', 'too-small'],
    ['cut=8.5&count=999999', 'count', 'too-large'],
    ['count=4', 'cut', 'empty'],
    ['target.width=40', 'target', 'target-unclear'],
    ['target.size=lap&block.seam=20', 'block.seam', 'too-large'],
  ])('readCounter(%j) finds %s at fault: %s', (question, place, code) => {
    const read = readCounter(question);
    const faults = read.ok ? [] : read.faults;
    expect(faults.map(({ path, code: found }) => `${path.join('.')} ${found}`)).toContain(
      `${place} ${code}`,
    );
  });
});
