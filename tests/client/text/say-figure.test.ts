import { describe, expect, test } from 'vitest';
import { sayFigure } from '../../../client/text/say-figure.ts';

describe('sayFigure', () => {
  test.each([
    ['en', '2.5 cm', '2.5 cm'],
    ['es', '2.5 cm', '2,5 cm'],
    ['de', '2.5 cm', '2,5 cm'],
    ['fr', '2.5 cm', '2,5 cm'],
    ['de', '196¾ in', '196¾ in'],
    ['de', '8 1/2 in', '8 1/2 in'],
    ['fr', 40, '40'],
    ['de', 0.01, '0,01'],
    ['es', '100', '100'],
  ])('sayFigure(%j, %j) is %j', (language, told, said) => {
    expect(sayFigure(language, told)).toBe(said);
  });

  test.each([
    [undefined],
    [''],
    ['24 pieces'],
    ['at least one share above 0'],
    ['4.75 to 19 in'],
    [['a', 'b']],
  ])('sayFigure leaves out %j, which is no figure', (told) => {
    expect(sayFigure('de', told)).toBe('');
  });
});
