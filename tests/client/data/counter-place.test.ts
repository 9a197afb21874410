import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readPlace, writePlace } from '../../../client/data/counter-place.ts';

describe('readPlace', () => {
  test.each([
    ['https://quilts.example/?target.size=lap&unit=cm', 'target.size=lap&unit=cm'],
    ['https://quilts.example/counter?cut=8.5&count=40#0.left=2', 'cut=8.5&count=40'],
    [
      '/v1/plan?target.width=40&target.height=50&utm_source=mail',
      'target.width=40&target.height=50',
    ],
    ['  target.size=lap  ', 'target.size=lap'],
    ['?layers.0.prints.0.id=Oat%20sprig', 'layers.0.prints.0.id=Oat%20sprig'],
    ['https://quilts.example/', ''],
    ['', ''],
    ['?target.width=', ''],
    ['hello', ''],
  ])('readPlace(%j) asks %j', (address, question) => {
    expect(readPlace(address).question).toBe(question);
  });

  test('readPlace takes of the rest what has a place in the shop', () => {
    const { shop } = readPlace('#at=2&0.width=44&1.got=1&2.colour=red&x=1&0.price=12.99');
    expect(shop).toEqual({ at: '2', '0.width': '44', '1.got': '1', '0.price': '12.99' });
    expect(readPlace(`#0.width=${'4'.repeat(40)}`).shop).toEqual({});
  });
});

describe('writePlace', () => {
  test('writePlace leaves out what there is none of', () => {
    expect(writePlace({ question: '', shop: {} })).toBe('');
    expect(writePlace({ question: 'a=1', shop: {} })).toBe('?a=1');
  });

  test('what was typed comes back letter by letter, whatever it is', () => {
    const typed = fc.string({ minLength: 1, maxLength: 32, unit: 'grapheme' });
    const short = typed.filter((text) => text.length <= 32);
    fc.assert(
      fc.property(fc.dictionary(fc.constantFrom('0.width', '1.left', '2.price'), short), (shop) => {
        const place = { question: 'target.size=lap', shop };
        expect(readPlace(writePlace(place))).toEqual({ ...place, shop: { ...shop } });
      }),
    );
  });
});
