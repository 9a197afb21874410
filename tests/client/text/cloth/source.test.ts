import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/cloth/en.ts';

describe('the words of cloth in English', () => {
  test.each(Object.keys(en.file))('en.file[%j] says what to change', (code) => {
    const say = en.file[code as keyof typeof en.file];
    expect(say({ row: 3, column: 'width', most: 60 })).toMatch(/^[A-Z].*\.$/);
    expect(say({})).not.toMatch(/undefined/);
  });

  test('en names the row where there is one', () => {
    expect(en.file['stray-quote']({ row: 7 })).toContain('Row 7');
    expect(en.file['too-many-rows']({ row: 62, most: 60 })).toContain('row 62');
  });

  test('en counts', () => {
    expect(en.opened(1)).toBe('1 row read from the file.');
    expect(en.pasted(2)).toBe('2 rows pasted.');
  });
});
