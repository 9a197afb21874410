import { describe, expect, test } from 'vitest';
import { makeLength, NUMBER, nameUnit, START, UNIT, writeSaid } from '#core/wish/said-length.ts';

const LENGTH = new RegExp(`${START}(${NUMBER})[\\s-]*(${UNIT})`, 'i');
const find = (words: string) =>
  LENGTH.exec(words)
    ?.slice(1)
    .map((part) => part.trim());

describe('NUMBER and UNIT', () => {
  test.each([
    ['8 1/2 inches', ['8 1/2', 'inches']],
    ['8½"', ['8½', '"']],
    ['21,5cm', ['21,5', 'cm']],
    ['6-foot', ['6', 'foot']],
    ['1.5 metres', ['1.5', 'metres']],
  ])('NUMBER and UNIT find “%s”', (words, found) => {
    expect(find(words)).toEqual(found);
  });

  test.each(['8 inner', '40 mine', '3 footers', 'in'])('UNIT finds none in “%s”', (words) => {
    expect(find(words)).toBeUndefined();
  });
});

describe('makeLength', () => {
  test('makeLength calls one unit by one name, however it was written', () => {
    const called = (word: string) => makeLength(['1', word]).terms[0]?.[1];
    expect(['in', 'Inches', '"', '”', "''"].map(called)).toEqual(Array(5).fill('in'));
    expect(['ft', 'feet', "'", 'yards', 'mm', 'Metre', 'centimeters'].map(called)).toEqual(
      'ft ft ft yd mm m cm'.split(' '),
    );
  });

  test('makeLength keeps a smaller number after the first', () => {
    expect(makeLength(['5', "'", '6', '"']).terms).toEqual([
      ['5', 'ft'],
      ['6', 'in'],
    ]);
  });
});

describe('writeSaid', () => {
  test('writeSaid gives a number in the unit of the request, and else text as it was written', () => {
    expect(writeSaid(makeLength(['8,5', 'cm']), 'cm')).toBe(8.5);
    expect(writeSaid(makeLength(['8']), 'cm')).toBe(8);
    expect(writeSaid(makeLength(['8', 'cm']), 'in')).toBe('8 cm');
    expect(writeSaid(makeLength(['5', "'", '6', '"']), 'in')).toBe('5 ft 6 in');
    expect(writeSaid(makeLength(['2,000']), 'in')).toBe('2,000');
  });
});

describe('nameUnit', () => {
  test('nameUnit puts yards and feet to inches, and all that is metric to centimetres', () => {
    expect(['in', 'ft', 'yd', 'mm', 'cm', 'm'].map(nameUnit)).toEqual(
      'in in in cm cm cm'.split(' '),
    );
    expect(nameUnit(undefined)).toBeUndefined();
  });
});
