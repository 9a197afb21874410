import { describe, expect, test } from 'vitest';
import { readBlock } from '#core/wish/read-block.ts';
import { writeSaid } from '#core/wish/said-length.ts';

function read(words: string) {
  const { cut, seam } = readBlock(words);
  return [cut && writeSaid(cut, 'in'), seam && writeSaid(seam, 'in')];
}

describe('readBlock', () => {
  test.each([
    ['with 8.5 inch squares', 8.5],
    ['10 1/2-inch squares', '10 1/2'],
    ['8" blocks', 8],
    ['8 inch square blocks', 8],
    ['8 x 8 inch blocks', 8],
    ['21 cm pieces', '21 cm'],
    ['8.5 squares', 8.5],
    ['squares of 8.5 inches', 8.5],
    ['blocks cut at 9 inches', 9],
    ['42 8 inch blocks', 8],
    ['40 by 50 and 8 inch blocks', 8],
    ['40 x 50 8.5 inch squares', 8.5],
    ['a box x 8 inch squares', 8],
  ])('readBlock finds the cut size in “%s”', (words, cut) => {
    expect(read(words)).toEqual([cut, undefined]);
  });

  test.each([
    ['1/2 inch seams', '1/2'],
    ['half inch seams', '1/2'],
    ['half an inch seam', '1/2'],
    ['a quarter-inch seam allowance', '1/4'],
    ['three quarters of an inch seams', '3/4'],
    ['seam allowance of 1 inch', 1],
    ['seams: 2.5 cm', '2.5 cm'],
  ])('readBlock finds the seam in “%s”', (words, seam) => {
    expect(read(words)).toEqual([undefined, seam]);
  });

  test.each([
    '6 by 8 blocks',
    '48 squares',
    '8 x 10 inch blocks',
    '8-10 inch blocks',
    '8 or 10 inch blocks',
    '8 and 10 inch blocks',
    '8 inch blocks and 10 inch blocks',
    'eight inch blocks',
    '50 inch square',
    '50 square inches',
    '40 by 50 1/2 inch seams',
    'wide seams 40 inches by 50',
    'blocks of 40 inches by 50',
    '',
  ])('readBlock finds no one block in “%s”', (words) => {
    expect(read(words)).toEqual([undefined, undefined]);
  });

  test('readBlock leaves the words without what it read, and no others', () => {
    expect(readBlock('6 by 8 blocks of 10 inches').rest).toBe('6 by 8 blocks of  · ');
    expect(readBlock('8 inch blocks, 40 by 50, 1/2 inch seams').rest).toBe(' · , 40 by 50,  · ');
    expect(readBlock('40 by 50').rest).toBe('40 by 50');
  });
});
