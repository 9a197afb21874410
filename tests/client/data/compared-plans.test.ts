import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  readCompared,
  readPlanAddress,
  writeCompared,
} from '../../../client/data/compared-plans.ts';

describe('readPlanAddress', () => {
  test.each([
    ['https://quilts.example/?target.size=lap', 'target.size=lap'],
    [
      '  http://localhost:8787/v1/plan?target.width=8%201%2F2&target.height=9#work ',
      'target.width=8%201%2F2&target.height=9',
    ],
    ['/?unit=cm&target.size=cot&utm_source=mail', 'unit=cm&target.size=cot'],
    ['target.columns=4&target.rows=5', 'target.columns=4&target.rows=5'],
    ['https://quilts.example/about', ''],
    ['forty by fifty', ''],
    ['', ''],
  ])('of %s takes %s', (text, query) => {
    expect(readPlanAddress(text)).toBe(query);
  });
});

describe('readCompared and writeCompared', () => {
  test('undo each other, whatever the plans say', () => {
    const plan = fc
      .record({
        'target.width': fc.integer({ min: 1, max: 90 }),
        'layers.0.prints.0.id': fc.stringMatching(/^[a-zäé &=+%]{1,12}$/),
      })
      .map((fields) =>
        Object.entries(fields)
          .map(([path, value]) => `${path}=${encodeURIComponent(value)}`)
          .join('&'),
      );
    const side = fc.oneof(fc.constant(''), plan);
    fc.assert(
      fc.property(side, side, (a, b) => {
        expect(readCompared(writeCompared({ a, b }))).toEqual({ a, b });
      }),
    );
  });

  test('leave out what is no plan', () => {
    expect(readCompared('?a=hello&b=target.size%3Dlap&c=3')).toEqual({
      a: '',
      b: 'target.size=lap',
    });
  });
});
