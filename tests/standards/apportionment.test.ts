/**
 * Sharing whole seats by the largest remainder with the Hare quota (Hamilton).
 * - 100,000 votes and 10 seats: Wikipedia, "Largest remainder method". From memory.
 * - Three states of 6, 6 and 2 with 10 and with 11 seats, the Alabama paradox in small: Wikipedia,
 *   "Apportionment paradox". From memory; worked again here by the definition.
 */
import { describe, expect, test } from 'vitest';
import { apportionBlocks } from '#core/cloth/apportion-blocks.ts';

describe('apportionBlocks', () => {
  test('apportionBlocks(10 seats, 100,000 votes) is 5, 2, 1, 1, 1, 0 (from memory)', () => {
    const votes = [47_000, 16_000, 15_900, 12_000, 6000, 3100];
    expect(apportionBlocks(10, votes)).toEqual([5, 2, 1, 1, 1, 0]);
  });

  test('apportionBlocks(10, then 11 seats among 6, 6, 2) takes one from the third (from memory)', () => {
    // Dues 4.286, 4.286, 1.429 and 4.714, 4.714, 1.571: the paradox that this method is known for.
    expect(apportionBlocks(10, [6, 6, 2])).toEqual([4, 4, 2]);
    expect(apportionBlocks(11, [6, 6, 2])).toEqual([5, 5, 1]);
  });
});
