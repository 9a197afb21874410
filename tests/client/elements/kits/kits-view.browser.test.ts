import { describe, expect, test } from 'vitest';
import { kitsView } from '../../../../client/elements/kits/kits-view.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { kitsContext } from '../../../support/stock.ts';

const show = (state: Parameters<typeof kitsContext>[0] = {}, hasFoot = false) =>
  renderFresh(kitsView(kitsContext(state), hasFoot));

describe('kitsView', () => {
  test('says an answer once to those who hear the page, and nothing while it is busy', () => {
    expect(readText(show(), '.hidden[role=status]')).toMatch(
      /^Worked out: \d+ kits, costs \$.*\.$/,
    );
    expect(readText(show({ isBusy: true }), '.hidden[role=status]')).toBe('');
  });

  test('has a bar of figures where it is wanted', () => {
    expect(readText(show({}, true), '.foot')).toMatch(/kits/);
    expect(show({}, false).querySelector('.foot')).toBeNull();
  });

  test('tells faults that no field shows, and that what is shown is from before', () => {
    const faults = [{ code: 'quilt-too-large', path: ['plan', 'target'] }] as const;
    const said = readText(show({ faults }), '[role=alert]');
    expect(said).toContain('too much quilt');
    expect(said).toContain('What is shown is from before.');
  });

  test('shows no sheets while there is no answer', () => {
    expect(show({ answer: undefined }).querySelector('.sheets')).toBeNull();
  });
});
