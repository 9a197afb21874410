import { expect, test } from 'vitest';
import { orderFinish } from '#core/sewing/order-finish.ts';
import { findStep, WORK_FACTS } from '../../support/work-facts.ts';

test('orderFinish stitches the border, trims, and washes', () => {
  expect(orderFinish(WORK_FACTS).map(({ id }) => id)).toEqual(['border', 'trim', 'wash']);
});

test('orderFinish says how far it is round the quilt, and how often', () => {
  expect(findStep('border')?.detail).toContain('1 in inside the edge, 2 times, 182 in each round');
  expect(findStep('border')?.figures).toEqual({ passes: 2, seam: 1, perimeter: 182, bobbins: 0 });
  expect(findStep('border', { borderPasses: 1 })?.detail).toContain(', once,');
});

test('orderFinish weighs the wet quilt in pounds with inches, in kilograms with centimetres', () => {
  expect(findStep('wash')?.detail).toContain('about 3.4 lb when wet');
  expect(findStep('wash')?.figures).toEqual({ wet: 3.4182, unit: 'lb' });
  expect(findStep('wash', { unit: 'cm', wet: 0.456 })?.detail).toContain('about 0.46 kg');
});
