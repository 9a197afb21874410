import { describe, expect, test } from 'vitest';
import { predictWash } from '#core/wash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { app } from '../../../api/app.ts';
import { computeWash } from '../../../client/data/wash-on-device.ts';

const QUERY =
  'unit=cm&swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=25&swatches.0.after=23.4&sewn.width=100&sewn.height=125&washes.0=3';

describe('computeWash', () => {
  test('computeWash(query) is what the core predicts for that request', () => {
    const resolved = resolveWash({
      unit: 'cm',
      swatches: [{ fabric: 'flannel', direction: 'length', before: 25, after: 23.4 }],
      sewn: { width: 100, height: 125 },
      washes: [3],
    });
    if (!resolved.ok) throw new Error('The core refused.');
    expect(computeWash(QUERY)).toEqual({ ok: true, value: predictWash(resolved.value) });
  });

  test('computeWash(query) gives the bytes that the service gives', async () => {
    const outcome = computeWash(QUERY);
    const body = await (await app.request(`/v1/wash-shrinkage?${QUERY}`)).text();
    expect(JSON.stringify(outcome.ok && outcome.value)).toBe(body);
  });

  test('computeWash finds faults of shape and of meaning', () => {
    const codes = (query: string) => {
      const outcome = computeWash(query);
      return outcome.ok ? [] : outcome.faults.map(({ code }) => code);
    };
    expect(codes('washes.0=often&confidence=80&moon=1')).toEqual([
      'wrong-type',
      'not-one-of',
      'unknown-key',
    ]);
    expect(codes('swatches.0.direction=length&swatches.0.before=10&swatches.0.after=25')).toEqual([
      'after-unlikely',
    ]);
  });
});
