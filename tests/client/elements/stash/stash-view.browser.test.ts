import { describe, expect, test } from 'vitest';
import { stashView } from '../../../../client/elements/stash/stash-view.ts';
import { readText, renderFresh } from '../../../support/render.ts';
import { stashContext } from '../../../support/stock.ts';

const show = (state: Parameters<typeof stashContext>[0] = {}, hasFoot = false) =>
  renderFresh(stashView(stashContext(state), hasFoot));

describe('stashView', () => {
  test('says an answer once to those who hear the page, and nothing while it is busy', () => {
    expect(readText(show(), '.hidden[role=status]')).toMatch(/^Worked out: .*\.$/);
    expect(readText(show({ isBusy: true }), '.hidden[role=status]')).toBe('');
  });

  test('has a bar of figures where it is wanted', () => {
    expect(show({}, true).querySelector('.foot')).not.toBeNull();
    expect(show({}, false).querySelector('.foot')).toBeNull();
  });

  test('tells faults that no field shows, and that what is shown is from before', () => {
    const faults = [{ code: 'layers-unfit', path: ['pieces'] }] as const;
    const said = readText(show({ faults }), '[role=alert]');
    expect(said).toContain('Give one top, one backing');
    expect(said).toContain('What is shown is from before.');
  });

  test('tells what the host asked for and could not be had', () => {
    const hostFaults = [{ code: 'unknown-key', path: ['moon'] }] as const;
    expect(readText(show({ hostFaults }), '[role=alert]')).toContain('“moon”');
  });
});
