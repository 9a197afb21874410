import { describe, expect, test, vi } from 'vitest';
import { kitView, moneyView } from '../../../../client/elements/kits/kits-view-kit.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';
import { kitsContext } from '../../../support/stock.ts';

describe('kitView', () => {
  test('asks for blocks, for sides, or for a name alone', () => {
    const ids = (draft: Parameters<typeof kitsContext>[0] = {}) =>
      [...renderFresh(kitView(kitsContext(draft))).querySelectorAll('input')].map(({ id }) => id);
    expect(ids()).toContain('plan-target-columns');
    expect(ids({ draft: { 'plan.target.width': '40' } })).toContain('plan-target-width');
    const named = ids({ draft: { 'plan.target.size': 'lap' } });
    expect(named.some((id) => id.startsWith('plan-target'))).toBe(false);
  });

  test('tells what is typed, and shows what is wrong at its field', () => {
    const edit = vi.fn();
    const faults = [{ code: 'not-whole', path: ['kits'] }] as const;
    const root = renderFresh(kitView(kitsContext({ faults }, { edit })));
    type(root, '#kits', '2.5');
    expect(edit).toHaveBeenCalledWith('kits', '2.5');
    expect(readText(root, '#kits-fault')).toBe('Give a whole number.');
  });
});

describe('moneyView', () => {
  test('asks for one of margin, markup and price', () => {
    const replace = vi.fn();
    const root = renderFresh(moneyView(kitsContext({}, { replace })));
    expect(root.querySelector('#costs-margin')).not.toBeNull();
    expect(root.querySelector('#costs-price')).toBeNull();
    find<HTMLInputElement>(root, '[name=way]:not(:checked)').click();
    expect(replace.mock.calls[0]?.[0]).not.toHaveProperty('costs.margin');
  });

  test('offers every currency that the browser knows, by name', () => {
    const payIn = vi.fn();
    const list = find<HTMLSelectElement>(
      renderFresh(moneyView(kitsContext({}, { payIn }))),
      '#currency',
    );
    expect(list.selectedOptions[0]?.textContent).toBe('USD US Dollar');
    const names = [...list.options].map((option) => option.textContent);
    list.selectedIndex = names.indexOf('JPY Japanese Yen');
    list.dispatchEvent(new Event('change'));
    expect(payIn).toHaveBeenCalledWith('JPY');
  });

  test('keeps a currency that the browser does not know', () => {
    const root = renderFresh(moneyView(kitsContext({ draft: { currency: 'vennholt' } })));
    expect(find<HTMLSelectElement>(root, '#currency').selectedOptions[0]?.textContent).toBe(
      'vennholt',
    );
  });
});
