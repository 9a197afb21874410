import { describe, expect, test } from 'vitest';
import { listPassed } from '#core/wish/list-passed.ts';

describe('listPassed', () => {
  test.each([
    ['', []],
    ['a quilt for my ·, please', []],
    ['una manta para mi cama, por favor', []],
    ['eine Decke für mein Bett, bitte', []],
    ['un plaid pour mon lit, s’il vous plaît', []],
    ['scalloped edges and 40 buttons', ['scalloped edges', '40 buttons']],
    ['blue · blue', ['blue']],
    ['“Grandma’s wish: soft.', ['Grandma’s wish', 'soft']],
  ])('listPassed of “%s” is %j', (rest, passed) => {
    expect(listPassed(rest)).toEqual(passed);
  });
});
