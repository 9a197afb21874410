import { describe, expect, test } from 'vitest';
import { chooseSplit } from '#core/cloth/strips/choose-split.ts';
import { startProgramme } from '#core/cloth/strips/start-programme.ts';

describe('chooseSplit', () => {
  test('chooseSplit takes the sum farthest from whole, and none where all are whole', () => {
    const dictionary = {
      ...startProgramme([], [0, 0]),
      basic: Int32Array.of(0, 1),
      amounts: Float64Array.of(1.9, 2.4),
    };
    const sets = [Uint8Array.of(1, 0), Uint8Array.of(0, 1), Uint8Array.of(1, 1)];
    expect(chooseSplit(dictionary, sets)).toMatchObject({ members: sets[1], value: 2 });
    expect(chooseSplit({ ...dictionary, amounts: Float64Array.of(2, 3) }, sets)).toBeUndefined();
  });
});
