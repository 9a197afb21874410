import { describe, expect, test } from 'vitest';
import { drawFloor } from '../../../../client/elements/layout/draw-floor.ts';
import { splitSheets } from '../../../../client/elements/layout/split-sheets.ts';

const cells = Array.from({ length: 30 }, () => 'ABCD'.repeat(9).slice(0, 34));
const pages = splitSheets(cells).map((page) => drawFloor(page, () => undefined));
const readLabels = (page: (typeof pages)[number] | undefined) =>
  page?.shapes.flatMap((shape) =>
    shape.part === 'measure-text' && 'text' in shape ? [shape.text] : [],
  ) ?? [];
const countMarks = (page: (typeof pages)[number] | undefined) =>
  page?.shapes.filter(({ part }) => part === 'cut').length;

describe('drawFloor', () => {
  test('drawFloor numbers columns and letters rows as in the whole quilt, on every page', () => {
    expect(readLabels(pages[0]).slice(0, 17)).toEqual(
      Array.from({ length: 17 }, (_, at) => `${at + 1}`),
    );
    expect(readLabels(pages[0])).toContain('A');
    expect(readLabels(pages[3])).toContain('34');
    expect(readLabels(pages[3]).slice(-3)).toEqual(['AB', 'AC', 'AD']);
  });

  test('drawFloor marks the top left of the quilt on the page that has it, and on no other', () => {
    expect(pages.map(countMarks)).toEqual([1, 0, 0, 0]);
  });

  test('drawFloor has a letter for each of its blocks, and all text within its box', () => {
    for (const { box, shapes } of pages) {
      const texts = shapes.filter((shape) => shape.kind === 'text');
      expect(texts.filter(({ part }) => part === 'letter')).toHaveLength(15 * 17);
      for (const { x, y, size } of texts) {
        expect(Math.min(x - size / 2 - box.x, y - size / 2 - box.y)).toBeGreaterThanOrEqual(0);
        expect(x + size / 2).toBeLessThanOrEqual(box.x + box.width);
        expect(y + size / 2).toBeLessThanOrEqual(box.y + box.height);
      }
    }
  });
});
