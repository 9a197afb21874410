import { describe, expect, test } from 'vitest';
import { drawLayout } from '#core/drawing/draw-layout.ts';

const draw = (columns: number, rows: number) =>
  drawLayout({
    cells: Array.from({ length: rows }, () => 'AB'.repeat(columns).slice(0, columns)),
    input: { prints: [{ color: '#123456' }, {}] },
  });

describe('drawLayout', () => {
  test('drawLayout has a letter for each block and row and a number for each column', () => {
    const texts = draw(4, 3).shapes.filter((shape) => shape.kind === 'text');
    expect(texts.filter(({ part }) => part === 'letter')).toHaveLength(12);
    const numbers = texts.filter(({ part }) => part === 'measure-text').map(({ text }) => text);
    expect(numbers).toEqual(['1', '2', '3', '4', 'A', 'B', 'C']);
  });

  test('drawLayout of many rows and columns names the first and every fifth, and drops the letters', () => {
    const texts = draw(40, 25).shapes.filter((shape) => shape.kind === 'text');
    expect(texts.some(({ part }) => part === 'letter')).toBe(false);
    const named = texts.map(({ text }) => text);
    const [columns, rows] = [named.slice(0, 9), named.slice(9)];
    expect(columns).toEqual(['1', '5', '10', '15', '20', '25', '30', '35', '40']);
    expect(rows).toEqual(['A', 'E', 'J', 'O', 'T', 'Y']);
  });

  test('drawLayout takes a print’s own colour, and keeps all text inside its box', () => {
    const { box, shapes } = draw(5, 4);
    expect(shapes.some((shape) => 'fill' in shape && shape.fill === '#123456')).toBe(true);
    for (const shape of shapes) {
      if (shape.kind !== 'text') continue;
      expect(shape.x - shape.size / 2).toBeGreaterThanOrEqual(box.x);
      expect(shape.y - shape.size / 2).toBeGreaterThanOrEqual(box.y);
      expect(shape.x + shape.size / 2).toBeLessThanOrEqual(box.x + box.width);
      expect(shape.y + shape.size / 2).toBeLessThanOrEqual(box.y + box.height);
    }
  });
});
