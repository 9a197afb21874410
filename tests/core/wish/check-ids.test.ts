import { describe, expect, test } from 'vitest';
import { checkIds } from '#core/wish/check-ids.ts';
import { startReading } from '#core/wish/reading.ts';

describe('checkIds', () => {
  test('checkIds names every later one of a name', () => {
    const reading = startReading('in');
    checkIds(reading, [{ id: 'a' }, { id: 'b' }, { id: 'a' }, { id: 'a' }], ['bolts']);
    expect(reading.faults.map(({ path }) => path)).toEqual([
      ['bolts', 2, 'id'],
      ['bolts', 3, 'id'],
    ]);
  });
});
