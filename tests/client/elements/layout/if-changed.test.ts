import { noChange } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { ifChanged, type Memo } from '../../../../client/elements/layout/if-changed.ts';

describe('ifChanged', () => {
  test('ifChanged makes a part once, and again when one of its keys is another', () => {
    const memo: Memo = new Map();
    const make = vi.fn(() => 'made');
    const see = (...keys: readonly unknown[]) => ifChanged(memo, ['row 1', ...keys], make);
    const once = [see('AB', 1), see('AB', 1), see('AB', 2), see('AB', 2), see('AB')];
    expect(once).toEqual(['made', noChange, 'made', noChange, 'made']);
    expect(make).toHaveBeenCalledTimes(3);
  });

  test('ifChanged knows places apart, and what was forgotten is made anew', () => {
    const memo: Memo = new Map();
    const see = (place: string) => ifChanged(memo, [place, 'AB'], () => place);
    expect([see('row 1'), see('row 2'), see('row 1')]).toEqual(['row 1', 'row 2', noChange]);
    memo.delete('row 1');
    expect(see('row 1')).toBe('row 1');
  });
});
