import { describe, expect, test } from 'vitest';
import {
  figureView,
  sayFault,
  sayFaultAt,
  sayLength,
} from '../../../../client/elements/plan/plan-context.ts';
import { faultsSource } from '../../../../client/text/faults/source.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { readText, renderFresh } from '../../../support/render.ts';

describe('sayFault', () => {
  test('sayFault says the sentence of the code, and nothing of no fault', () => {
    const context = watchContext();
    expect(sayFault(context, { code: 'empty', path: [] })).toBe(
      faultsSource.en.empty({ code: 'empty', path: [] }),
    );
    expect(sayFault(context, undefined)).toBeUndefined();
  });

  test('sayFault writes bounds to the eighth within them', () => {
    const say = (code: 'too-large' | 'too-small', expected: string) =>
      sayFault(watchContext(), { code, path: [], expected });
    expect(say('too-large', '196.85 in')).toContain('at most 196¾ in');
    expect(say('too-small', '0.0394 in')).toContain('at least ⅛ in');
    expect(say('too-large', '500 cm')).toContain('at most 500 cm');
  });

  test('sayFault says one sentence that fits all until the sentences have come', () => {
    const context = { ...watchContext(), sentences: undefined };
    expect(sayFault(context, { code: 'empty', path: [] })).toBe(context.text.light.wrong);
  });

  test('sayFault has a sentence for a code that a later service may bring', () => {
    const { faults } = JSON.parse('{"faults":[{"code":"moonlight","path":[]}]}');
    expect(sayFault(watchContext(), faults[0])).toMatch(/\.$/);
  });
});

describe('sayFaultAt', () => {
  test('sayFaultAt finds the fault of just that place', () => {
    const context = watchContext({ faults: [{ code: 'empty', path: ['target', 'width'] }] });
    expect(sayFaultAt(context, 'target.width')).toMatch(/number/);
    expect(sayFaultAt(context, 'target.height')).toBeUndefined();
  });
});

describe('sayLength and figureView', () => {
  test('sayLength keeps the unit with its figures', () => {
    expect(sayLength(watchContext(), 50, 59.75)).toBe('50 × 59¾\u00a0in');
    expect(sayLength({ ...watchContext(), said: 'cm' }, 127)).toBe('127\u00a0cm');
    expect(sayLength(watchContext({ draft: { unit: 'cm' } }), 40)).toBe('40\u00a0in');
  });

  test('figureView sets the figures apart from their unit', () => {
    const root = renderFresh(figureView('50 × 59¾\u00a0in'));
    expect([readText(root, 'b'), readText(root, 'small')]).toEqual(['50 × 59¾', 'in']);
  });
});
