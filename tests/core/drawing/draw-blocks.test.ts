import { describe, expect, test } from 'vitest';
import { drawBlocks } from '#core/drawing/draw-blocks.ts';

const FRAME = {
  cells: ['AB', 'BA', 'AB'],
  x: 10,
  y: 20,
  faceWidth: 100,
  faceHeight: 90,
  colorOf: () => undefined,
  repeats: 3,
  hasLetters: true,
  alternating: true,
};

describe('drawBlocks', () => {
  test('drawBlocks gives each print one shape with a face for each of its blocks', () => {
    const faces = drawBlocks(FRAME).filter(({ part }) => part === 'face');
    expect(faces.map(({ print }) => print)).toEqual([0, 1]);
    for (const face of faces) expect(face.kind === 'path' && face.d.match(/z/g)?.length).toBe(3);
  });

  test('drawBlocks lays the faces side by side from the given corner', () => {
    const [first] = drawBlocks(FRAME);
    expect(first?.kind === 'path' && first.d).toBe(
      'M10 20h100v90h-100zM110 110h100v90h-100zM10 200h100v90h-100z',
    );
  });

  test('drawBlocks quilts an X on every block', () => {
    const quilting = drawBlocks(FRAME).find(({ part }) => part === 'quilting');
    expect(quilting?.kind === 'path' && quilting.d.match(/M/g)?.length).toBe(6);
    expect(quilting?.kind === 'path' && quilting.d.startsWith('M10 20l100 90m0 -90l-100 90')).toBe(
      true,
    );
  });

  test('drawBlocks letters every block, or none', () => {
    const letters = (hasLetters: boolean) =>
      drawBlocks({ ...FRAME, hasLetters }).flatMap((shape) =>
        shape.kind === 'text' ? [shape.text] : [],
      );
    expect(letters(true).join('')).toBe('ABBAAB');
    expect(letters(false)).toEqual([]);
  });

  test('drawBlocks turns every other block only where the grain alternates', () => {
    const stripes = (alternating: boolean) =>
      drawBlocks({ ...FRAME, cells: ['BB'], repeats: 1, alternating })
        .flatMap((shape) => (shape.part === 'motif' && shape.kind === 'path' ? [shape.d] : []))
        .join();
    expect(stripes(false)).toBe('M60 20L60 110M160 20L160 110');
    expect(stripes(true)).toBe('M60 20L60 110M110 65L210 65');
  });

  test('drawBlocks takes the color that a print has of its own', () => {
    const [face] = drawBlocks({ ...FRAME, colorOf: () => '#123456' });
    expect(face).toMatchObject({ fill: '#123456' });
  });
});
