import { expect, test } from 'vitest';
import { drawMeasures } from '#core/drawing/draw-measures.ts';

const BOX = { x: 10, y: 20, width: 900, height: 1200 };

test('drawMeasures(box, texts, lines) sets each measure at the middle of its side, the upright one turned', () => {
  const [path, across, down] = drawMeasures(
    BOX,
    { width: '36 in', height: '48 in' },
    { size: 40, under: 1260, beside: -30 },
  );
  expect(path).toMatchObject({ kind: 'path', part: 'measure' });
  expect(across).toMatchObject({ x: 460, y: 1260, text: '36 in' });
  expect(down).toMatchObject({ x: -30, y: 620, text: '48 in', turn: -90 });
});

test('drawMeasures ends its lines at the edges of the box', () => {
  const [path] = drawMeasures(
    BOX,
    { width: '', height: '' },
    { size: 40, under: 1260, beside: -30 },
  );
  const d = path?.kind === 'path' ? path.d : '';
  expect(d).toContain('M10 1248');
  expect(d).toContain('H910');
  expect(d).toContain('M-42 20');
  expect(d).toContain('V1220');
});
