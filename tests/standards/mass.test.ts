/**
 * Mass of cloth and quilt.
 * - 1 lb = 453.59237 g exactly: International yard and pound agreement, 1959. From memory.
 * - 1 oz/yd² = 33.9057474748823 g/m²: follows from the pound (16 oz) and the yard.
 * - A swatch of 10 by 10 cm that weighs 1.50 g has 150 g/m²: ASTM D3776, option C, asks for at least
 *   100 cm². Read; the figures are arithmetic.
 * - Retained water (wet - dry) / dry; 2.0 kg at 48 % weighs 2.96 kg: definition, from memory.
 * - EU spin classes, cotton at 60 °C, residual water: A below 45 %, B 45 to below 54 %, C 54 to below
 *   63 %. consultant.ru, LAW_101619, table 4. Read.
 * - Cotton, 1 kg for each 10 L of drum: laundrys.blogspot.com, 2025. Read at second hand. Seven
 *   household machines rated 6 to 8 kg had 53 to 60 L: ukwhitegoods.co.uk. Read.
 */
import { describe, expect, test } from 'vitest';
import { MILLIMETRES } from '#core/length.ts';
import { GRAMS } from '#core/mass.ts';
import { weighQuilt } from '#core/sewing/weigh-quilt.ts';
import { RETAINED_WATER } from '#core/tables/defaults.ts';

const OUNCE = GRAMS.lb / 16;

describe('GRAMS', () => {
  test('GRAMS.lb is 453.59237 exactly (from memory)', () => {
    expect(GRAMS.lb).toBe(453.59237);
    expect(OUNCE).toBeCloseTo(28.349523125, 12);
  });

  test.each([
    [1, 33.9057474748823],
    [4, 135.623],
    [4.3, 145.795],
    [5, 169.529],
    [6, 203.434],
  ])('%d oz a square yard is %d g/m² (follows from pound and yard)', (ounces, gsm) => {
    const perSquareMetre = (ounces * OUNCE) / (MILLIMETRES.yd / 1000) ** 2;
    expect(perSquareMetre).toBeCloseTo(gsm, 3);
  });
});

describe('weighQuilt', () => {
  test('weighQuilt(a square yard of 4 oz cloth) is 4 oz, whatever the blocks (follows)', () => {
    const gsm = (4 * OUNCE) / (MILLIMETRES.yd / 1000) ** 2;
    expect(weighQuilt({ blocks: 36, cut: 152.4, gsm }).dry).toBeCloseTo(4 * OUNCE, 6);
    expect(weighQuilt({ blocks: 16, cut: 228.6, gsm }).dry).toBeCloseTo(4 * OUNCE, 6);
  });

  test('weighQuilt(one block of 10 by 10 cm, 150 g/m²) is 1.5 g (arithmetic)', () => {
    expect(weighQuilt({ blocks: 1, cut: 100, gsm: 150 }).dry).toBeCloseTo(1.5, 12);
  });

  test('weighQuilt keeps water of spin class B: 45 to below 54 % of the dry mass (read)', () => {
    const { dry, wet } = weighQuilt({ blocks: 48, cut: 215.9, gsm: 310 });
    expect((wet - dry) / dry).toBeCloseTo(RETAINED_WATER, 12);
    expect(RETAINED_WATER).toBeGreaterThanOrEqual(0.45);
    expect(RETAINED_WATER).toBeLessThan(0.54);
  });

  test('weighQuilt(2.0 kg) asks for 20 L of drum (second hand), and 6.0 kg for 60 L, still a household one', () => {
    expect(weighQuilt({ blocks: 1, cut: 1000, gsm: 2000 }).drumLitres).toBe(20);
    const six = weighQuilt({ blocks: 1, cut: 1000, gsm: 6000 });
    expect(six).toMatchObject({ drumLitres: 60, machine: 'household' });
  });

  test('weighQuilt is more cautious than makers: 6 to 8 kg in 53 to 60 L would be 6.75 to 8.8 L a kg (read)', () => {
    const { dry, drumLitres } = weighQuilt({ blocks: 1, cut: 1000, gsm: 7000 });
    expect(drumLitres / (dry / 1000)).toBeGreaterThan(8.8);
  });
});
