import { describe, expect, test } from 'vitest';
import type { YardageRequest } from '#core/contract.ts';
import { yardageSchema } from '../../../api/http/schemas/yardage-schema.ts';
import { checkShape } from '../../../client/data/check-shape.ts';
import { yardageRequestSchema } from '../../../client/data/yardage-request-schema.ts';

const piece = { id: 'A', width: 8, length: '8 1/2', count: 3 };
const fabric = { id: 'Fog', width: '42 in', pieces: [piece] };
const isTaken = (value: unknown) => checkShape<YardageRequest>(yardageRequestSchema, value).ok;

/** The same rows through the schema of the service and of the page. */
const ROWS: readonly (readonly [name: string, value: unknown])[] = [
  ['one cloth', { fabrics: [fabric] }],
  [
    'all that may be given',
    {
      unit: 'cm',
      fabrics: [
        {
          ...fabric,
          selvage: 1,
          lengthLeft: 90,
          squaring: 0,
          step: 10,
          prewash: { length: 4, width: 3 },
          offers: [{ kind: 'roll', id: 'bolt', price: 900 }],
        },
      ],
    },
  ],
  ['no cloth', { fabrics: [] }],
  ['no piece', { fabrics: [{ ...fabric, pieces: [] }] }],
  [
    '25 kinds of piece',
    {
      fabrics: [
        { ...fabric, pieces: Array.from({ length: 25 }, (_, at) => ({ ...piece, id: `${at}` })) },
      ],
    },
  ],
  ['half a piece', { fabrics: [{ ...fabric, pieces: [{ ...piece, count: 1.5 }] }] }],
  ['a key that is not known', { fabrics: [{ ...fabric, colour: 'red' }] }],
  ['another unit', { unit: 'ell', fabrics: [fabric] }],
];

describe('yardageRequestSchema', () => {
  test.each(ROWS)('yardageRequestSchema judges %s as the service does', (_name, value) => {
    expect(isTaken(value)).toBe(yardageSchema().safeParse(value).success);
  });

  test('yardageRequestSchema takes some rows and refuses others', () => {
    expect(ROWS.filter(([, value]) => isTaken(value))).toHaveLength(2);
  });
});
