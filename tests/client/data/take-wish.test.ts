import { describe, expect, test } from 'vitest';
import { takeWish } from '../../../client/data/take-wish.ts';

const CLASSIC = { 'layers.0.role': 'top', 'layers.1.role': 'backing' };
const SIZED = { ...CLASSIC, 'target.width': '40', 'target.height': '50', infant: 'true' };
const TWIN = { unit: 'in', target: { size: 'twin' } } as const;

describe('takeWish', () => {
  test('takeWish puts the size in place of the old one and forgets the infant', () => {
    expect(takeWish(SIZED, TWIN)).toEqual({ ...CLASSIC, 'target.size': 'twin' });
  });

  test('takeWish names the unit of lengths where the draft keeps another', () => {
    const wish = {
      unit: 'cm',
      target: { width: 100, height: '150 cm' },
      block: { cut: 20 },
    } as const;
    const lengths = { 'target.width': '100 cm', 'target.height': '150 cm', 'block.cut': '20 cm' };
    expect(takeWish({ ...CLASSIC, unit: 'in' }, wish)).toEqual({
      ...CLASSIC,
      unit: 'in',
      ...lengths,
    });
    expect(takeWish(CLASSIC, wish)['target.width']).toBe('100 cm');
    expect(takeWish({ ...CLASSIC, unit: 'cm' }, wish)['target.width']).toBe('100');
    expect(takeWish(CLASSIC, { unit: 'cm', target: { columns: 4, rows: 5 } })['target.rows']).toBe(
      '5',
    );
  });

  test('takeWish leaves prints with names alone where there are as many as wished', () => {
    const named = { ...CLASSIC, 'layers.0.prints.0.id': 'Blue', 'layers.0.prints.1.id': 'Red' };
    const taken = takeWish(named, { ...TWIN, prints: 2 });
    expect(taken).toEqual({ ...named, 'target.size': 'twin' });
    expect(takeWish(named, { ...TWIN, prints: 3 })['layers.0.prints']).toBe('3');
  });

  test('takeWish sets prints, washes and blocks, and asks for no words that were passed over', () => {
    const wish = { ...TWIN, prints: 6, washes: 2, block: { cut: 8 }, passed: ['blue'] };
    expect(takeWish(CLASSIC, wish)).toEqual({
      ...CLASSIC,
      'layers.0.prints': '6',
      'target.size': 'twin',
      washes: '2',
      'block.cut': '8',
    });
  });

  test('takeWish puts a middle between the others, keeps one that is there, and takes it out', () => {
    const three = takeWish(CLASSIC, { ...TWIN, middle: true });
    expect(three).toMatchObject({
      'layers.1.fabric': 'cotton-batting',
      'layers.2.role': 'backing',
    });
    const warm = { ...three, 'layers.1.fabric': 'flannel' };
    expect(takeWish(warm, { ...TWIN, middle: true })['layers.1.fabric']).toBe('flannel');
    expect(takeWish(three, { ...TWIN, middle: false })['layers.1.role']).toBe('backing');
  });
});
