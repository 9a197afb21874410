import { describe, expect, test } from 'vitest';
import { cautionsList } from '../../../../client/elements/plan/cautions-list.ts';
import { sayCaution } from '../../../../client/elements/plan/say-caution.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const cot = planThrow({ target: { size: 'cot' } });
const DANGERS = { severity: 'danger', say: sayCaution } as const;

describe('cautionsList', () => {
  test('cautionsList says danger in words as well as in colour, with its source', () => {
    const root = renderFresh(cautionsList(watchContext(), cot, DANGERS));
    expect(find(root, 'li').className).toBe('danger');
    expect(readText(root, 'li strong')).toBe('Danger.');
    expect(readText(root, 'li small')).toMatch(/Pediatrics/);
  });

  test('cautionsList is empty where there is none', () => {
    const root = renderFresh(cautionsList(watchContext(), planThrow(), DANGERS));
    expect(root.querySelector('li')).toBeNull();
  });

  test('cautionsList says them as it is told to', () => {
    const say = () => 'Mind the blade.';
    const root = renderFresh(cautionsList(watchContext(), cot, { severity: 'danger', say }));
    expect(readText(root, 'li')).toContain('Mind the blade.');
  });
});
