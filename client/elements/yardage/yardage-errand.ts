import { findBlank } from '../../data/find-blank.ts';
import { isYardageAnswer, type ShownYardage } from '../../data/is-yardage-answer.ts';
import { loadAnswer } from '../../data/load-answer.ts';
import { readPieces, writePieces, type YardageDraft } from '../../data/piece-rows.ts';
import type { YardageOnDevice } from '../../data/yardage-on-device.ts';
import type { Errand } from '../../host/errand.ts';

/** What is on the table before anybody has said a word, in the unit of the draft. */
const FIRST = {
  in: { width: '42', side: '8 1/2' },
  cm: { width: '110', side: '21.5' },
} as const;

/** Pieces cut from cloth on a roll, asked of `/v1/yardage`. */
export const yardageErrand: Errand<YardageDraft, ShownYardage, YardageOnDevice> = {
  name: 'ragbloom-yardage',
  keys: ['unit', 'fabrics'],
  complete: completeYardage,
  findBlank,
  load: (query, source, signal) =>
    loadAnswer<ShownYardage, YardageOnDevice>(
      {
        address: `/v1/yardage?${query}`,
        isAnswer: isYardageAnswer,
        compute: ({ computeYardage }) => computeYardage(query),
      },
      source,
      signal,
    ),
};

function completeYardage(draft: YardageDraft): YardageDraft {
  const { width, side } = FIRST[draft.unit === 'cm' ? 'cm' : 'in'];
  const cloth = { 'fabrics.0.id': 'cloth', 'fabrics.0.width': width, ...draft };
  if (readPieces(draft).length > 0) return cloth;
  return writePieces(cloth, [{ id: 'A', width: side, length: side, count: '20' }]);
}
