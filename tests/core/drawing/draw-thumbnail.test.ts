import { describe, expect, test } from 'vitest';
import { drawThumbnail } from '#core/drawing/draw-thumbnail.ts';
import { planThrow } from '../../support/plan-throw.ts';

describe('drawThumbnail', () => {
  const plan = planThrow();

  test('drawThumbnail draws faces and seams of another plan and nothing else', () => {
    for (const option of plan.options) {
      const parts = drawThumbnail(option, plan).shapes.map(({ part }) => part);
      expect(new Set(parts)).toEqual(new Set(['face', 'snip']));
    }
  });

  test('drawThumbnail has a face for each block', () => {
    for (const option of plan.options) {
      const faces = drawThumbnail(option, plan).shapes.flatMap((shape) =>
        shape.part === 'face' && shape.kind === 'path' ? (shape.d.match(/z/g) ?? []) : [],
      );
      expect(faces).toHaveLength(option.columns * option.rows);
    }
  });

  test('drawThumbnail is as wide and high as the plan is washed', () => {
    for (const option of plan.options) {
      const { box } = drawThumbnail(option, plan);
      expect(box.width / box.height).toBeGreaterThan(
        option.washed.width / option.washed.height - 0.1,
      );
      expect(box.width).toBeGreaterThan(option.washed.width * 25.4);
    }
  });
});
