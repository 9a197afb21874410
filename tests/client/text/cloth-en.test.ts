import { describe, expect, test } from 'vitest';
import { clothEn } from '../../../client/text/cloth-en.ts';

describe('clothEn', () => {
  test.each(Object.keys(clothEn.file))('clothEn.file[%j] says what to change', (code) => {
    const say = clothEn.file[code as keyof typeof clothEn.file];
    expect(say({ row: 3, column: 'width', most: 60 })).toMatch(/^[A-Z].*\.$/);
    expect(say({})).not.toMatch(/undefined/);
  });

  test('clothEn names the row where there is one', () => {
    expect(clothEn.file['stray-quote']({ row: 7 })).toContain('Row 7');
    expect(clothEn.file['too-many-rows']({ row: 62, most: 60 })).toContain('row 62');
  });

  test('clothEn counts', () => {
    expect(clothEn.opened(1)).toBe('1 row read from the file.');
    expect(clothEn.pasted(2)).toBe('2 rows pasted.');
  });
});
