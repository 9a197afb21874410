import { describe, expect, test } from 'vitest';
import { isYardageAnswer } from '../../../client/data/is-yardage-answer.ts';
import { computeYardage } from '../../../client/data/yardage-on-device.ts';

const CLOTH =
  'fabrics.0.id=Fog&fabrics.0.width=42&fabrics.0.pieces.0.id=A&fabrics.0.pieces.0.width=8&fabrics.0.pieces.0.length=8&fabrics.0.pieces.0.count=42';

function answer(more = '') {
  const outcome = computeYardage(CLOTH + more);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return JSON.parse(JSON.stringify(outcome.value));
}

describe('isYardageAnswer', () => {
  test('isYardageAnswer takes what the core answers, with a bolt, packs and prices too', () => {
    expect(isYardageAnswer(answer())).toBe(true);
    const left = answer('&fabrics.0.lengthLeft=20');
    expect(left.fabrics[0].enough).toBe(false);
    expect(isYardageAnswer(left)).toBe(true);
    const packs =
      '&fabrics.0.offers.0.kind=pieces&fabrics.0.offers.0.id=fat&fabrics.0.offers.0.width=18&fabrics.0.offers.0.length=21&fabrics.0.offers.0.count=1&fabrics.0.offers.0.price=300';
    expect(isYardageAnswer(answer(packs))).toBe(true);
  });

  test('isYardageAnswer refuses an answer that lacks what is shown', () => {
    const { fabrics, ...rest } = answer();
    expect(isYardageAnswer(rest)).toBe(false);
    expect(isYardageAnswer({ ...rest, fabrics: [{ ...fabrics[0], strips: undefined }] })).toBe(
      false,
    );
    expect(isYardageAnswer({ ...rest, fabrics: [{ ...fabrics[0], enough: 'yes' }] })).toBe(false);
  });
});
