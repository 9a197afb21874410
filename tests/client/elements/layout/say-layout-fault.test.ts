import { describe, expect, test } from 'vitest';
import { computeLayout } from '../../../../client/data/layout-on-device.ts';
import { sayLayoutFault } from '../../../../client/elements/layout/say-layout-fault.ts';
import { en } from '../../../../client/text/layout/en.ts';

const QUERY = 'columns=3&rows=2&prints.0.id=Moss&prints.1.id=Rust';

/** The sentences for what the core finds wrong. */
function say(query: string): readonly (string | undefined)[] {
  const outcome = computeLayout(query);
  return outcome.ok ? [] : outcome.faults.map((fault) => sayLayoutFault(en, fault));
}

describe('sayLayoutFault', () => {
  test.each([
    ['fixed.0=A..&fixed.1=.Q.', [en.stranger('B', 'Q')]],
    ['fixed.0=A.&fixed.1=...', [en.uneven('A')]],
    ['fixed.0=A..&fixed.1=....', [en.uneven('B')]],
    ['fixed.0=A..', [en.ragged]],
    ['prints.0.count=1&prints.1.count=5&fixed.0=A.A&fixed.1=...', [en.tooFew('A', 2)]],
  ])('sayLayoutFault says in one sentence what is wrong with %s', (change, said) => {
    expect(say(`${QUERY}&${change}`)).toEqual(said);
  });

  test('sayLayoutFault leaves what any request can have wrong to the sentences for all', () => {
    expect(say(QUERY.replace('columns=3', 'columns=41'))).toEqual([undefined]);
    expect(say(`${QUERY}&prints.0.count=1&prints.1.count=1`)).toEqual([undefined]);
  });
});
