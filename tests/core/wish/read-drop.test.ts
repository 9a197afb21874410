import { describe, expect, test } from 'vitest';
import { readDrop } from '#core/wish/read-drop.ts';
import { writeSaid } from '#core/wish/said-length.ts';

function read(words: string) {
  const said = readDrop(words);
  return (
    said && [
      said.drop && writeSaid(said.drop, 'in'),
      said.footDrop && writeSaid(said.footDrop, 'in'),
    ]
  );
}

describe('readDrop', () => {
  test.each([
    ['with 15 inch drop', 15, undefined],
    ['a drop of 12 1/2 inches', '12 1/2', undefined],
    ['hanging down 30 cm', '30 cm', undefined],
    ['it hangs over the sides by 10"', 10, undefined],
    ['12 inches of overhang', 12, undefined],
    ['overhang: 12', 12, undefined],
    ['drop 12 inches at the foot', undefined, 12],
    ['12 inch drop, 8 inches at the foot', 12, 8],
  ])('readDrop finds the drop in “%s”', (words, drop, foot) => {
    expect(read(words)).toEqual([drop, foot]);
  });

  test.each([
    'queen',
    'a generous drop',
    '60 by 80 drop',
    'a wall hanging 40 by 50',
    'a wall hanging 40 x 50 inches',
    'hanging 6 blocks',
    'hangar 12 inches',
    '40 by 50 at the bottom',
  ])('readDrop finds none in “%s”', (words) => {
    expect(read(words)).toBeUndefined();
  });

  test('readDrop leaves the words without what it read', () => {
    expect(readDrop('queen with a 15 inch drop')?.rest).toBe('queen with a  · ');
  });
});
