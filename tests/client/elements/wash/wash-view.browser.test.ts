import { describe, expect, test } from 'vitest';
import { washView } from '../../../../client/elements/wash/wash-view.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

describe('washView', () => {
  test('washView says one sentence when an answer is ready, and none while it waits', () => {
    const said = (isBusy: boolean) =>
      readText(renderFresh(washView(showWash('', { isBusy }), true)), '[role=status]');
    expect(said(false).replaceAll('\u00a0', ' ')).toBe('Worked out: Sew 42 × 52 in → 40 × 49½ in.');
    expect(said(true)).toBe('');
  });

  test('washView tells of shrink where no size was given', () => {
    const root = renderFresh(washView(showWash('washes.0=2&confidence=95'), true));
    expect(readText(root, '.foot').replaceAll('\u00a0', ' ')).toMatch(
      /^Shrinks [\d.]+ % × [\d.]+ % ?two washes$/,
    );
  });

  test('washView tells who worked it out, what an address asked for in vain, and what is from before', () => {
    const context = showWash('', {
      from: 'device',
      hostFaults: [{ code: 'unknown-key', path: ['moon'] }],
      faults: [{ code: 'empty', path: ['wanted', 'width'] }],
    });
    const alerts = [...renderFresh(washView(context, false)).querySelectorAll('[role=alert]')];
    const said = alerts.map((alert) => alert.textContent).join(' ');
    expect(said).toContain('your device worked this out');
    expect(said).toContain('“moon” is not part');
    expect(said).toContain('The figures shown are the ones from before.');
  });

  test('washView can be tried again where nobody is to be reached', () => {
    const context = showWash('', { trouble: 'silent' });
    find(renderFresh(washView(context, false)), '[role=alert] button').click();
    expect(context.act.retry).toHaveBeenCalledOnce();
  });

  test('washView has a bar at the foot only where it is wanted, and the sheet only when it prints', () => {
    const root = renderFresh(washView(showWash(), false));
    expect([root.querySelector('.foot'), root.querySelector('.swatch-sheet')]).toEqual([
      null,
      null,
    ]);
    const other = renderFresh(washView(showWash('', { isSheet: true }), true));
    expect(other.querySelectorAll('.foot, .swatch-sheet').length).toBe(2);
  });
});
