import { expect, test } from 'vitest';
import { drawSnipping } from '#core/drawing/steps/draw-snipping.ts';
import { listTexts, sceneFor, tracePart } from '../../../support/scene.ts';

test.each([
  [{}, ['½ in', '½ in']],
  [{ block: { cut: 8, seam: 0.75, snipDepth: 0.5, snipPitch: 0.375 } }, ['½ in', '¼ in']],
  [
    { unit: 'cm', block: { cut: 20, seam: 2, snipDepth: 1.5, snipPitch: 0.5 } },
    ['1.5 cm', '0.5 cm'],
  ],
] as const)('drawSnipping(%o) is true to scale and tells depth and clearance', (request, told) => {
  const scene = sceneFor(request);
  const shapes = drawSnipping(scene);
  expect(listTexts(shapes)).toEqual(told);
  const snips = [...tracePart(shapes, 'snip').matchAll(/M([\d.]+) ([\d.]+)V([\d.]+)/g)];
  const [first, second] = snips.map(([, x, top, deep]) => ({
    x: Number(x),
    top: Number(top),
    depth: Number(deep) - Number(top),
  }));
  const stitching = Number(/M[\d.]+ ([\d.]+)H/.exec(tracePart(shapes, 'quilting'))?.[1]);
  if (first === undefined || second === undefined) throw new Error('no snips');
  expect(first.depth / (stitching - first.top)).toBeCloseTo(scene.snipDepth / scene.seam, 1);
  expect((second.x - first.x) / first.depth).toBeCloseTo(scene.snipPitch / scene.snipDepth, 1);
});
