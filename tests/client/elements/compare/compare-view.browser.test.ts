import { describe, expect, test } from 'vitest';
import { BLANK } from '../../../../client/elements/compare/compare-state.ts';
import { compareView } from '../../../../client/elements/compare/compare-view.ts';
import { compareContext, sideOf } from '../../../support/compare-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const side = sideOf(planThrow({ target: { size: 'lap' } }));

describe('compareView', () => {
  test('without a plan says what to do', () => {
    const root = renderFresh(compareView(compareContext({ a: BLANK, b: BLANK }).context));
    expect(readText(root, '.waiting')).toMatch(/^Paste the addresses/);
    expect(root.querySelector('table')).toBeNull();
  });

  test('says once to those who hear it that both are there', () => {
    const { context } = compareContext({ a: side, b: side });
    expect(readText(renderFresh(compareView(context)), '[role=status]')).toMatch(
      /^Compared: .* and /,
    );
    const busy = compareContext({ a: side, b: { ...side, isBusy: true } }).context;
    expect(readText(renderFresh(compareView(busy)), '[role=status]')).toBe('');
  });

  test('says why nothing comes, keeps what was there and asks again', () => {
    const { context, done } = compareContext({ a: side, b: { ...side, trouble: 'busy' } });
    const root = renderFresh(compareView(context));
    expect(readText(root, '[role=alert]')).toMatch(/too much to do.*from before/);
    find(root, '[role=alert] button').click();
    expect(done).toEqual([['retry']]);
    expect(root.querySelector('table')).not.toBeNull();
  });

  test('changes places and units', () => {
    const { context, done } = compareContext({ a: side, b: side });
    const root = renderFresh(compareView(context));
    find(root, 'header button').click();
    const [, metric] = root.querySelectorAll<HTMLInputElement>('[type=radio]');
    metric?.click();
    expect(done).toEqual([['swap'], ['measureIn', 'cm']]);
  });
});
