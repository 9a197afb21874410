import { describe, expect, test } from 'vitest';
import { readFigures } from '../../../../client/text/steps/read-figures.ts';

const manner = {
  measure: (length: number) => `${length} cm`,
  gap: (length: number) => `<${length} cm`,
  above: (length: number) => `>${length} cm`,
  fabric: (name: string) => name.toUpperCase(),
  role: (name: string) => `the ${name}`,
};
const step = {
  id: 'cut',
  do: '',
  detail: '',
  minutes: 25.6,
  figures: {
    cut: 30,
    pieces: 65,
    wet: 1.296,
    damp: 0.947,
    needle: '90/14',
    fabrics: ['a', 'b'],
    roles: ['top'],
  },
};

describe('readFigures', () => {
  test('readFigures gives each figure in its manner', () => {
    const figures = readFigures(step, manner);
    expect(figures.number('pieces')).toBe(65);
    expect(figures.text('needle')).toBe('90/14');
    expect([figures.length('cut'), figures.gap('cut'), figures.above('cut')]).toEqual([
      '30 cm',
      '<30 cm',
      '>30 cm',
    ]);
    expect(figures.fabrics('fabrics')).toEqual(['A', 'B']);
    expect(figures.roles('roles')).toEqual(['the top']);
    expect(figures.minutes).toBe(25.6);
    expect([figures.mass('wet'), figures.mass('damp')]).toEqual([1.3, 0.95]);
  });

  test('readFigures has nothing where a figure is missing', () => {
    const figures = readFigures(step, manner);
    expect([figures.number('x'), figures.text('x'), figures.fabrics('x')]).toEqual([0, '', []]);
  });
});
