import { describe, expect, test } from 'vitest';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import { isYardageAnswer } from '../../../client/data/is-yardage-answer.ts';
import { computeYardage } from '../../../client/data/yardage-on-device.ts';

const QUERY =
  'fabrics.0.id=Fog&fabrics.0.width=42&fabrics.0.pieces.0.id=A&fabrics.0.pieces.0.width=8%201%2F2&fabrics.0.pieces.0.length=8.5&fabrics.0.pieces.0.count=42';

describe('computeYardage', () => {
  test('computeYardage answers as the core does to the same request', () => {
    const answer = computeYardage(QUERY);
    const pieces = [{ id: 'A', width: '8 1/2', length: 8.5, count: 42 }];
    const resolved = resolveYardage({ fabrics: [{ id: 'Fog', width: 42, pieces }] });
    expect(resolved.ok && answer).toEqual({
      ok: true,
      value: resolved.ok && planYardage(resolved.value),
    });
    expect(answer.ok && isYardageAnswer(JSON.parse(JSON.stringify(answer.value)))).toBe(true);
  });

  test('computeYardage tells every fault with its place', () => {
    const answer = computeYardage(`${QUERY.replace('42&', '2&')}&spare=3&unit=ell`);
    const places = answer.ok ? [] : answer.faults.map(({ path }) => path.join('.'));
    expect(places).toEqual(expect.arrayContaining(['spare', 'unit']));
    const wide = computeYardage(QUERY.replace('8%201%2F2', 'wide'));
    expect(!wide.ok && wide.faults.map(({ code }) => code)).toEqual(['not-a-length']);
  });
});
