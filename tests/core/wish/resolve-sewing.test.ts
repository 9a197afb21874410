import { describe, expect, test } from 'vitest';
import { PACES } from '#core/tables/paces.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { resolvePace, resolveStitch, resolveTolerance } from '#core/wish/resolve-sewing.ts';

describe('resolveStitch', () => {
  test('resolveStitch of nothing tells each of its defaults', () => {
    const reading = startReading('cm');
    const stitch = resolveStitch(reading, undefined);
    expect(stitch).toEqual({
      length: 0.25,
      tail: 7.5,
      link: 1.25,
      chained: true,
      borderPasses: 2,
      bobbin: 5500,
    });
    const told = reading.assumptions.map(({ path }) => path);
    expect(told).toEqual(Object.keys(stitch).map((name) => `stitch.${name}`));
  });

  test('resolveStitch reads a stitch in millimetres and a bobbin in yards', () => {
    const reading = startReading('in');
    const stitch = resolveStitch(reading, { length: '3 mm', bobbin: '80 yd', chained: false });
    expect(stitch).toMatchObject({ length: 0.118110236, bobbin: 2880, chained: false });
    expect(writeQuery(reading.kept)).toBe(
      'stitch.length=0.118110236&stitch.chained=false&stitch.bobbin=2880',
    );
  });

  test('resolveStitch keeps a measured ratio to nine decimals, in input and query alike', () => {
    const reading = startReading('in');
    expect(resolveStitch(reading, { ratio: 2.61234567891 }).ratio).toBe(2.612345679);
    expect(writeQuery(reading.kept)).toBe('stitch.ratio=2.612345679');
  });

  test('resolveStitch refuses a stitch of an inch', () => {
    const reading = startReading('in');
    resolveStitch(reading, { length: 1 });
    expect(reading.faults).toMatchObject([{ code: 'too-large', path: ['stitch', 'length'] }]);
  });
});

describe('resolvePace', () => {
  test('resolvePace fills what is missing from the table and tells it', () => {
    const reading = startReading('in');
    const pace = resolvePace(reading, { snip: 0.05 });
    expect(pace).toMatchObject({ snip: 0.05, sewMetre: PACES.sewMetre.minutes });
    expect(Object.keys(pace).toSorted()).toEqual(Object.keys(PACES).toSorted());
    const told = reading.assumptions.map(({ path }) => path);
    expect(told).toContain('pace.cutPiece');
    expect(told).not.toContain('pace.snip');
  });
});

describe('resolveTolerance', () => {
  test('resolveTolerance takes a perfect hand, and no slip of an inch', () => {
    const reading = startReading('in');
    expect(resolveTolerance(reading, { seam: 0, cut: 0, ease: 0 })).toEqual({
      seam: 0,
      cut: 0,
      ease: 0,
    });
    resolveTolerance(reading, { seam: '1 in' });
    expect(reading.faults).toMatchObject([{ code: 'too-large', path: ['tolerance', 'seam'] }]);
  });
});
