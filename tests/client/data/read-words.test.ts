import { describe, expect, test } from 'vitest';
import { readWords } from '../../../client/data/read-words.ts';

describe('readWords', () => {
  test('readWords measures bare numbers in the unit of the draft, and named ones in theirs', () => {
    expect(readWords('100 by 120', { unit: 'cm' })).toMatchObject({ value: { unit: 'cm' } });
    expect(readWords('40 by 50', {})).toMatchObject({ value: { unit: 'in' } });
    expect(readWords('40 by 50 inches', { unit: 'cm' })).toMatchObject({ value: { unit: 'in' } });
  });
});
