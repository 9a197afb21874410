import { describe, expect, test } from 'vitest';
import {
  findResults,
  isFabric,
  sayChange,
  sayCloth,
  sayFault,
  sayFaultAt,
  sayLength,
  sayPercent,
  shrinkOf,
} from '../../../../client/elements/wash/wash-context.ts';
import { showWash } from '../../../support/wash-example.ts';

const context = showWash();
const plain = (text: string | undefined) => text?.replaceAll('\u00a0', ' ');

describe('the words of a wash', () => {
  test('sayChange tells shrink and growth apart by a word, not by a sign', () => {
    expect(plain(sayChange(context, -3.72))).toBe('shrinks 3.7 %');
    expect(plain(sayChange(context, 0.4))).toBe('grows 0.4 %');
  });

  test('sayCloth names a fabric, a test block and a cloth of its own', () => {
    expect(['flannel', 'sandwich', 'Rose'].map((name) => sayCloth(context, name))).toEqual([
      'Flannel',
      'A quilted test block',
      'Rose',
    ]);
    expect([isFabric('flannel'), isFabric('sandwich')]).toEqual([true, false]);
  });

  test('sayLength and sayPercent set figures in the manner of the language', () => {
    expect(plain(sayLength(context, 40, 49.5))).toBe('40 × 49½ in');
    expect(plain(sayPercent(context, 2.345))).toBe('2.3 %');
    expect([shrinkOf(0), shrinkOf(-2)]).toEqual([0, 2]);
  });

  test('sayFaultAt finds what is wrong at a field, and with an item of a list in one', () => {
    const faults = [
      { code: 'not-whole', path: ['washes', '1'] },
      { code: 'empty', path: ['wanted', 'width'] },
    ] as const;
    const faulty = showWash('', { faults });
    expect(sayFaultAt(faulty, 'washes')).toBe('Give a whole number.');
    expect(sayFaultAt(faulty, 'wanted.width')).toContain('Type a number');
    expect(sayFaultAt(faulty, 'wanted.height')).toBeUndefined();
    expect(sayFault(faulty, undefined)).toBeUndefined();
  });
});

describe('findResults', () => {
  test('findResults finds along before across, whatever way the name is spelt', () => {
    const ways = findResults(context, ' Quilting cotton ', '1').map(({ direction }) => direction);
    expect(ways).toEqual(['length', 'width']);
    expect(findResults(context, 'flannel', '2')).toEqual([]);
  });
});
