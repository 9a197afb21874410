import { describe, expect, test } from 'vitest';
import { faceOf } from '#core/block/size-block.ts';
import type { Unit } from '#core/contract.ts';
import { toMillimetres } from '#core/length.ts';
import { LENGTH_LIMITS, type LengthLimit, SIZE_LIMITS } from '#core/limits.ts';
import {
  BORDER_PASSES,
  BUCKLING,
  DEFAULT_LAYERS,
  DEFAULTS,
  type Defaults,
  PRINTS,
  RETAINED_WATER,
  SPARE,
  WASHES,
} from '#core/tables/defaults.ts';

const UNITS: readonly Unit[] = ['in', 'cm'];
const LIMIT_OF: Record<Exclude<keyof Defaults, 'cuts'>, LengthLimit> = {
  cut: 'cut',
  seam: 'seam',
  snipPitch: 'snipPitch',
  rollWidth: 'rollWidth',
  selvage: 'selvage',
  squaring: 'squaring',
  step: 'rollStep',
  usable: 'usable',
  drop: 'drop',
  stitchLength: 'stitchLength',
  tail: 'tail',
  link: 'link',
  bobbin: 'bobbin',
  seamDeviation: 'trueness',
  cutDeviation: 'trueness',
  ease: 'ease',
};

describe('DEFAULTS', () => {
  test('DEFAULTS lie inside what a request may say', () => {
    for (const unit of UNITS) {
      for (const [name, limit] of Object.entries(LIMIT_OF)) {
        const value = toMillimetres(DEFAULTS[unit][name as keyof typeof LIMIT_OF], unit);
        expect(value).toBeGreaterThanOrEqual(LENGTH_LIMITS[limit].least);
        expect(value).toBeLessThanOrEqual(LENGTH_LIMITS[limit].most);
      }
    }
  });

  test('DEFAULTS in inches and centimetres are lengths alike, within 15 %', () => {
    for (const name of Object.keys(LIMIT_OF) as (keyof typeof LIMIT_OF)[]) {
      const ratio = (DEFAULTS.cm[name] * 10) / (DEFAULTS.in[name] * 25.4);
      expect([name, ratio > 0.85 && ratio < 1.15]).toEqual([name, true]);
    }
  });

  test('DEFAULTS leave a face, and snips of half the seam stop at least 6 mm before the stitching', () => {
    for (const unit of UNITS) {
      const { cut, cuts, seam } = DEFAULTS[unit];
      for (const one of [cut, ...cuts]) expect(faceOf({ cut: one, seam })).toBeGreaterThan(0);
      expect(toMillimetres(seam / 2, unit)).toBeGreaterThanOrEqual(6);
    }
  });

  test('DEFAULTS consider 6 to 12 in by halves and 15 to 30 cm by ones', () => {
    expect(DEFAULTS.in.cuts).toEqual([6, 6.5, 7, 7.5, 8, 8.5, 9, 9.5, 10, 10.5, 11, 11.5, 12]);
    expect(DEFAULTS.cm.cuts).toHaveLength(16);
    expect([DEFAULTS.cm.cuts[0], DEFAULTS.cm.cuts.at(-1)]).toEqual([15, 30]);
    for (const unit of UNITS) {
      expect(DEFAULTS[unit].cuts).toContain(DEFAULTS[unit].cut);
      expect(DEFAULTS[unit].cuts.length).toBeLessThanOrEqual(SIZE_LIMITS.cuts);
    }
  });

  test('DEFAULTS: a link is shorter than a tail, so that chaining saves thread', () => {
    for (const unit of UNITS) expect(DEFAULTS[unit].link).toBeLessThan(DEFAULTS[unit].tail);
  });
});

describe('DEFAULT_LAYERS', () => {
  test('DEFAULT_LAYERS are print on flannel, the top first', () => {
    expect(DEFAULT_LAYERS.map(({ role, fabric }) => [role, fabric])).toEqual([
      ['top', 'quilting-cotton'],
      ['backing', 'flannel'],
    ]);
  });
});

describe('single defaults', () => {
  test('SPARE, WASHES, BORDER_PASSES and PRINTS are whole and at least one', () => {
    for (const value of [SPARE, WASHES, BORDER_PASSES, PRINTS]) {
      expect(Number.isInteger(value) && value >= 1).toBe(true);
    }
  });

  test('RETAINED_WATER and BUCKLING are shares', () => {
    for (const share of [RETAINED_WATER, BUCKLING]) expect(share > 0 && share < 1).toBe(true);
  });
});
