import { describe, expect, test, vi } from 'vitest';
import { type Notices, noticesView } from '../../../client/fields/notices-view.ts';
import { en } from '../../../client/text/light/en.ts';
import { find, readText, renderFresh } from '../../support/render.ts';

const QUIET: Notices = {
  words: en,
  odd: [],
  trouble: undefined,
  isOld: false,
  from: 'service',
  retry: () => undefined,
};
const said = (change: Partial<Notices>) =>
  readText(renderFresh(noticesView({ ...QUIET, ...change })), '[role=alert]');

describe('noticesView', () => {
  test('noticesView has its region before there is anything to say', () => {
    expect(said({})).toBe('');
    expect(said({ from: undefined })).toBe('');
  });

  test('noticesView names the places that could not be used', () => {
    expect(said({ odd: ['colour', 'unit'] })).toBe(`${en.host} colour, unit`);
  });

  test.each(Object.entries(en.trouble))(
    'noticesView says what the trouble is: %s',
    (kind, words) => {
      const trouble = kind as keyof typeof en.trouble;
      expect(said({ trouble })).toBe(`${words} ${en.retry}`);
      expect(said({ trouble, isOld: true })).toContain(en.stale);
      expect(said({ trouble, from: 'device' })).not.toContain(en.device);
    },
  );

  test('noticesView offers to try again', () => {
    const retry = vi.fn();
    find(renderFresh(noticesView({ ...QUIET, trouble: 'busy', retry })), 'button').click();
    expect(retry).toHaveBeenCalledOnce();
  });

  test('noticesView says who worked the answer out, and that it is of before', () => {
    expect(said({ from: 'device' })).toBe(en.device);
    expect(said({ isOld: true })).toBe(en.stale);
  });
});
