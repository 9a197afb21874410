import { expect, test } from 'vitest';
import { MAKER_VIEWS } from '../../../../client/maker/maker-views.ts';
import { en } from '../../../../client/text/maker/en.ts';

test('the maker has a name for every view and field, and raises its voice nowhere', () => {
  for (const { name, fields } of MAKER_VIEWS) {
    expect(en.views[name]).toBeTruthy();
    for (const { path } of fields) expect(en.fields[path], path).toBeTruthy();
  }
  expect(JSON.stringify(en)).not.toContain('!');
  expect(en.fix('Unit')).toBe('Fix: Unit');
});
