import { createHash } from 'node:crypto';
import { describe, expect, test } from 'vitest';
import { hashStyle, writeStyle } from '../../../api/pages/write-style.ts';

describe('writeStyle', () => {
  test('sets the scheme and the colours on the root', () => {
    const colors = [
      ['ink', '#112233'],
      ['madder', '#445566'],
    ] as const;
    expect(writeStyle({ scheme: 'light', colors })).toBe(
      ':root{color-scheme:light;--ragbloom-ink:#112233;--ragbloom-madder:#445566}',
    );
  });
});

describe('hashStyle', () => {
  test('is what another implementation of SHA-256 gives', async () => {
    const expected = createHash('sha256').update(':root{}').digest('base64');
    expect(await hashStyle(':root{}')).toBe(`sha256-${expected}`);
  });
});
