import { describe, expect, test } from 'vitest';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { checkRequest } from '../../../client/data/check-request.ts';
import { readQuery } from '../../../client/data/read-query.ts';
import { planThrow } from '../../support/plan-throw.ts';

describe('readQuery', () => {
  test('readQuery takes plain decimals for numbers and nothing else', () => {
    const query = 'a=8.5&b=-2&c=0x10&d=1e3&e=&f=08&g=1,5&h=Infinity';
    expect(readQuery(query)).toEqual({
      a: 8.5,
      b: -2,
      c: '0x10',
      d: '1e3',
      e: '',
      f: 8,
      g: '1,5',
      h: 'Infinity',
    });
  });

  test('readQuery leaves names alone', () => {
    expect(readQuery('layers.0.prints.0.id=12')).toEqual({
      layers: [{ prints: [{ id: '12' }] }],
    });
  });

  test('readQuery makes no list of keys that skip', () => {
    expect(readQuery('a.0=1&a.2=3')).toEqual({ a: { '0': 1, '2': 3 } });
  });

  test('readQuery reaches no prototype', () => {
    readQuery('__proto__.polluted=1&constructor.prototype.polluted=1');
    expect(Reflect.get({}, 'polluted')).toBeUndefined();
  });

  test('readQuery passes over paths deeper than any plan', () => {
    expect(readQuery(`${Array(50).fill('a').join('.')}=1`)).toEqual({});
  });

  test.each([
    { target: { size: 'queen' }, unit: 'cm' },
    { target: { columns: 4, rows: 5 }, block: { cut: 8.5, seam: 0.75 }, washes: 3, explain: true },
    { target: { bed: { width: 60, length: 80 } }, cuts: [7, 9], grain: 'aligned' },
    {
      layers: [
        { role: 'top', prints: 6 },
        { role: 'middle' },
        { role: 'backing', prewashed: true },
      ],
    },
    {
      layers: [
        { role: 'top', prints: [{ id: '7', share: 2 }, { id: 'B & C' }] },
        { role: 'backing' },
      ],
    },
  ] as const)('readQuery reads the canonical query of %j back to the same plan', (request) => {
    const plan = planThrow(request as Parameters<typeof planThrow>[0]);
    const checked = checkRequest(readQuery(plan.links.page.slice(2)));
    const resolved = checked.ok ? resolvePlan(checked.value) : checked;
    expect(resolved.ok && resolved.value.input).toEqual(plan.input);
  });
});
