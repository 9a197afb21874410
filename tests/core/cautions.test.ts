import { describe, expect, test } from 'vitest';
import {
  type CautionFacts,
  dryerLint,
  isCotSize,
  listCautions,
  rotaryCutter,
  unmeasuredShrink,
} from '#core/cautions.ts';
import type { Caution, CautionCode } from '#core/contract.ts';
import { deepFreeze } from '../support/deep-freeze.ts';

const IN = 25.4;
const print = { id: 'a', directional: false, width: 42 };
const FACTS: CautionFacts = deepFreeze({
  unit: 'in',
  size: { width: 50 * IN, height: 60 * IN },
  wish: { width: 50 * IN, height: 60 * IN },
  clearance: 12.7,
  crossingThickness: 3.6,
  snips: 6336,
  needle: '100/16',
  machine: 'household',
  layers: [
    { role: 'top', fabric: 'quilting-cotton', prewashed: false, prints: [print] },
    { role: 'backing', fabric: 'flannel', prewashed: false, prints: [print] },
  ],
});

function find(code: CautionCode, change: Partial<CautionFacts> = {}): Caution | undefined {
  return listCautions({ ...FACTS, ...change }).find((caution) => caution.code === code);
}

describe('listCautions', () => {
  test('listCautions puts the gravest first, each code once, each with a source', () => {
    const all = listCautions({
      ...FACTS,
      size: { width: 30 * IN, height: 40 * IN },
      clearance: 2,
      machine: 'large',
      doubt: { width: 50, height: 80 },
    });
    const ranks = all.map((caution) => ['danger', 'care', 'note'].indexOf(caution.severity));
    expect(ranks).toEqual(ranks.toSorted((one, other) => one - other));
    expect(new Set(all.map((caution) => caution.code)).size).toBe(all.length);
    expect(all).toHaveLength(12);
    for (const caution of all) expect(caution.source).toBeTruthy();
  });

  test('listCautions(cot size) warns of a sleeping baby as danger, other sizes as a note', () => {
    expect(find('infant-sleep')?.severity).toBe('note');
    const cot = { width: 28 * IN, height: 52.375 * IN };
    expect(find('infant-sleep', { size: cot })?.severity).toBe('danger');
    expect(find('infant-sleep', { size: { width: cot.height, height: cot.width } })?.severity).toBe(
      'danger',
    );
  });

  test('listCautions(for an infant) warns as danger whatever the size', () => {
    expect(find('infant-sleep', { infant: true })?.severity).toBe('danger');
    expect(find('infant-sleep', { infant: false })?.severity).toBe('note');
  });

  test('listCautions(a cot was wished for) warns as danger, even where the quilt comes out larger', () => {
    const wish = { width: 36 * IN, height: 54 * IN };
    const size = { width: 36.3 * IN, height: 53.5 * IN };
    expect(isCotSize(size)).toBe(false);
    expect(find('infant-sleep', { size, wish })?.severity).toBe('danger');
  });

  test.each([
    [2.99, 'danger'],
    [3, 'care'],
    [5.99, 'care'],
    [6, 'note'],
    [12.7, 'note'],
  ])('listCautions(clearance %d mm) says %s of the snips', (clearance, severity) => {
    expect(find('snip-near-seam', { clearance })?.severity).toBe(severity);
  });

  test('listCautions says the clearance in the unit, and never as nothing', () => {
    expect(find('snip-near-seam')?.text).toContain('1/2 in');
    expect(find('snip-near-seam', { unit: 'cm' })?.text).toContain('1.27 cm');
    expect(find('snip-near-seam', { clearance: 1 })?.text).toContain('less than 1/16 in');
  });

  test('listCautions takes care at crossings thicker than 6 mm', () => {
    expect(find('needle-at-crossings', { crossingThickness: 6 })?.severity).toBe('note');
    expect(find('needle-at-crossings', { crossingThickness: 6.1 })?.severity).toBe('care');
    expect(find('needle-at-crossings')?.text).toContain('100/16');
  });

  test('listCautions speaks of the washer only where a household one will not do', () => {
    expect(find('washer-load')).toBeUndefined();
    expect(find('washer-load', { machine: 'large' })?.text).toContain('a large machine');
    expect(find('washer-load', { machine: 'laundry' })?.text).toContain('a laundry');
  });

  test('listCautions tells the doubt of the washed size only where there is any', () => {
    expect(find('unmeasured-shrink')).toBeUndefined();
    const doubt = { width: 2 * IN, height: 3.5 * IN };
    expect(find('unmeasured-shrink', { doubt })?.text).toContain('2 in across and 3 1/2 in down');
  });

  test('listCautions speaks of dye where top or backing go raw into the wash', () => {
    expect(find('dye-bleed')).toBeDefined();
    const layers = FACTS.layers.map((layer) => ({ ...layer, prewashed: true }));
    expect(find('dye-bleed', { layers })).toBeUndefined();
    const middle = { role: 'middle', fabric: 'cotton-batting', prewashed: false, prints: [print] };
    const padded = [...layers, middle] as CautionFacts['layers'];
    expect(find('dye-bleed', { layers: padded })).toBeUndefined();
  });

  test('listCautions names the number of snips', () => {
    expect(find('repetitive-snipping')?.text).toContain('6336 snips');
  });
});

describe('isCotSize', () => {
  test('isCotSize is true up to 36 by 54 in either way round, and false beyond', () => {
    expect(isCotSize({ width: 36 * IN, height: 54 * IN })).toBe(true);
    expect(isCotSize({ width: 54 * IN, height: 36 * IN })).toBe(true);
    expect(isCotSize({ width: 36.1 * IN, height: 54 * IN })).toBe(false);
    expect(isCotSize({ width: 36 * IN, height: 54.1 * IN })).toBe(false);
    expect(isCotSize({ width: 10, height: 10 })).toBe(true);
  });
});

describe('rotaryCutter, dryerLint, unmeasuredShrink', () => {
  test('each is a caution of its own code, asking for care', () => {
    expect(rotaryCutter()).toMatchObject({ code: 'rotary-cutter', severity: 'care' });
    expect(dryerLint()).toMatchObject({ code: 'dryer-lint', severity: 'care' });
    expect(unmeasuredShrink()).toMatchObject({ code: 'unmeasured-shrink', severity: 'care' });
  });

  test('dryerLint says what the fire administration counted, and when', () => {
    // US Fire Administration, Topical Report 13(7), read: 2,900 a year, 2008 to 2010.
    expect(dryerLint().text).toContain('2,900 home dryer fires');
    expect(dryerLint().text).toContain('2008 to 2010');
  });
});
