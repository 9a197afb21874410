import { describe, expect, test } from 'vitest';
import { planLayout } from '#core/layout.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { computeLayout } from '../../../client/data/layout-on-device.ts';

const QUERY = 'columns=4&rows=3&prints.0.id=A&prints.1.id=B&prints.2.id=C';

describe('computeLayout', () => {
  test('computeLayout answers as the core does to the same request', () => {
    const resolved = resolveLayout({
      ...{ columns: 4, rows: 3, seed: 7, fixed: ['A...', '....', '...C'] },
      prints: [{ id: 'A' }, { id: 'B' }, { id: 'C' }],
    });
    const answer = computeLayout(`${QUERY}&seed=7&fixed.0=A...&fixed.1=....&fixed.2=...C`);
    expect(answer).toEqual(resolved.ok && { ok: true, value: planLayout(resolved.value) });
  });

  test.each([
    [QUERY.replace('rows=3', 'rows=41'), ['too-large rows']],
    [QUERY.replace('columns=4', 'columns=41'), ['too-large columns']],
    [`${QUERY}&fixed.0=A...&fixed.1=.D..&fixed.2=....`, ['not-one-of fixed.1']],
    [`${QUERY}&fixed.0=A..&fixed.1=....&fixed.2=....`, ['too-short fixed.0']],
    [`${QUERY}&fixed.0=A...`, ['too-short fixed']],
    [`${QUERY}&prints.0.count=1&prints.1.count=5&prints.2.count=5`, ['counts-do-not-sum prints']],
    [
      `${QUERY}&prints.0.count=1&prints.1.count=6&prints.2.count=5&fixed.0=A.A.&fixed.1=....&fixed.2=....`,
      ['too-small prints.0.count'],
    ],
    [`${QUERY}&stripes=2`, ['unknown-key stripes']],
  ] as const)('computeLayout(%j) tells %j', (query, told) => {
    const outcome = computeLayout(query);
    const faults = outcome.ok ? [] : outcome.faults;
    expect(faults.map(({ code, path }) => `${code} ${path.join('.')}`)).toEqual(told);
  });
});
