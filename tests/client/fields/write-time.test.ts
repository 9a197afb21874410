import { expect, test } from 'vitest';
import { writeTime } from '../../../client/fields/write-time.ts';

test('writeTime says minutes to five, then hours to the half', () => {
  const say = (minutes: number) => writeTime('en', minutes).replace('\u00a0', ' ');
  expect([1, 5, 41, 89].map(say)).toEqual(['5 min', '5 min', '45 min', '90 min']);
  expect([90, 276].map(say)).toEqual(['1½ h', '4½ h']);
});

test('writeTime says minutes in the manner of each language', () => {
  for (const language of ['es', 'de', 'fr']) {
    expect(writeTime(language, 40)).toMatch(/^40\u00a0\p{L}+\.?$/u);
  }
});
