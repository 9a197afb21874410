import { describe, expect, test } from 'vitest';
import { BLANK } from '../../../../client/elements/compare/compare-state.ts';
import { askView, drawingsView } from '../../../../client/elements/compare/compare-view-sides.ts';
import { compareContext, sideOf } from '../../../support/compare-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';

const small = sideOf(planThrow({ target: { columns: 4, rows: 5 }, block: { cut: 10 } }));
const large = sideOf(planThrow({ target: { columns: 8, rows: 10 }, block: { cut: 10 } }));

describe('askView', () => {
  test('takes what is typed, and doubles the plan', () => {
    const { context, done } = compareContext({ a: small, b: BLANK });
    const root = renderFresh(askView(context, 'a'));
    type(root, 'input', '/?target.size=lap');
    for (const button of root.querySelectorAll('button')) button.click();
    expect(done).toEqual([
      ['type', 'a', '/?target.size=lap'],
      ['double', 'a', 'long'],
      ['double', 'a', 'both'],
    ]);
    expect(find<HTMLAnchorElement>(root, 'a').href).toMatch(/^https:\/\/quilts\.example\/\?/);
  });

  test('ties what is wrong to the field, and keeps a locked one from being changed', () => {
    const wrong = {
      ...BLANK,
      typed: 'no',
      faults: [{ code: 'target-unclear', path: [] } as const],
    };
    const { context } = compareContext(
      { a: wrong, b: BLANK },
      { isLocked: (path) => path === 'b' },
    );
    const root = renderFresh(askView(context, 'a'));
    const input = find<HTMLInputElement>(root, 'input');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(input.getAttribute('aria-describedby')).toContain(find(root, '.fault').id);
    expect(input.value).toBe('no');
    expect(input.readOnly).toBe(false);
    expect(root.querySelector('button')).toBeNull();
    expect(find<HTMLInputElement>(renderFresh(askView(context, 'b')), 'input').readOnly).toBe(true);
  });
});

describe('drawingsView', () => {
  test('draws both at one scale and names them', () => {
    const root = renderFresh(drawingsView(compareContext({ a: small, b: large }).context));
    const boxes = [...root.querySelectorAll('svg')].map((svg) => svg.viewBox.baseVal);
    expect(boxes.map(({ width }) => width)).toEqual([boxes[1]?.width, boxes[1]?.width]);
    expect(boxes.map(({ height }) => height)).toEqual([boxes[1]?.height, boxes[1]?.height]);
    expect(root.querySelector('svg')?.getAttribute('aria-label')).toMatch(/^One plan to scale, /);
    expect(readText(root, 'p')).toBe('Both are drawn at one scale.');
  });

  test.each(['in', 'cm'] as const)('measures both in %s, whatever each is planned in', (unit) => {
    const metric = sideOf(
      planThrow({ unit: 'cm', target: { columns: 4, rows: 5 }, block: { cut: 25 } }),
    );
    const telling = { language: 'en', unit, sayMoney: String };
    const root = renderFresh(
      drawingsView(compareContext({ a: small, b: metric }, { telling }).context),
    );
    const said = [...root.querySelectorAll('svg .measure-text')].map((text) => text.textContent);
    expect(said).toHaveLength(4);
    for (const text of said) expect(text).toMatch(new RegExp(`^[\\d.,½⅛¼⅜⅝¾⅞ ]+ ${unit}$`));
  });

  test('of one plan draws one', () => {
    const root = renderFresh(drawingsView(compareContext({ a: BLANK, b: large }).context));
    expect(root.querySelectorAll('svg')).toHaveLength(1);
    expect(root.querySelector('p')).toBeNull();
  });
});
