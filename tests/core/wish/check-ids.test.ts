import { describe, expect, test } from 'vitest';
import { checkIds } from '#core/wish/check-ids.ts';
import { startReading } from '#core/wish/reading.ts';

describe('checkIds', () => {
  test('checkIds faults every later one of a name, at its place', () => {
    const reading = startReading('in');
    checkIds(reading, [{ id: 'a' }, { id: 'b' }, { id: 'a' }, { id: 'a' }], ['pieces']);
    expect(reading.faults).toEqual([
      { code: 'repeated-id', path: ['pieces', 2, 'id'], received: 'a' },
      { code: 'repeated-id', path: ['pieces', 3, 'id'], received: 'a' },
    ]);
  });

  test('checkIds takes names that differ in case or spaces as different', () => {
    const reading = startReading('in');
    checkIds(reading, [{ id: 'a' }, { id: 'A' }, { id: 'a ' }], []);
    expect(reading.faults).toEqual([]);
  });
});
