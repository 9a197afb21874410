import { expect, test } from 'vitest';
import { readScene } from '#core/drawing/steps/read-scene.ts';
import { planFor } from '../../../support/plans.ts';
import { sceneFor } from '../../../support/scene.ts';

test('readScene turns a plan in inches into millimetres', () => {
  expect(sceneFor()).toMatchObject({
    unit: 'in',
    cut: 203.2,
    seam: 25.4,
    snipDepth: 12.7,
    columns: 4,
    rows: 5,
    layers: 2,
    perStrip: 5,
    middle: { from: 2, to: 3 },
  });
});

test('readScene knows the colours of the prints', () => {
  const prints = [{ id: 'Heron dot', color: '#123456' }, { id: 'Rust check' }];
  const layers = [{ role: 'top', prints }, { role: 'backing' }] as const;
  const scene = readScene(planFor({ target: { columns: 2, rows: 2 }, layers }));
  expect([scene.colorOf(0), scene.colorOf(1)]).toEqual(['#123456', undefined]);
});
