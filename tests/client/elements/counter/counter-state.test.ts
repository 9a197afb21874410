import { describe, expect, test } from 'vitest';
import {
  askInstead,
  inHand,
  putInShop,
  readAsked,
} from '../../../../client/elements/counter/counter-state.ts';

describe('inHand', () => {
  test('inHand is the first cloth unless told, and never past the last', () => {
    expect(inHand({ question: '', shop: {} }, 5)).toBe(0);
    expect(inHand({ question: '', shop: { at: '7' } }, 5)).toBe(4);
    expect(inHand({ question: '', shop: { at: '7' } }, 0)).toBe(0);
    expect(inHand({ question: '', shop: { at: 'x' } }, 5)).toBe(0);
  });
});

describe('putInShop', () => {
  test('putInShop changes one place and takes out what is empty', () => {
    const place = putInShop({ question: 'a=1', shop: { '0.width': '44' } }, '0.price', '9');
    expect(place).toEqual({ question: 'a=1', shop: { '0.width': '44', '0.price': '9' } });
    expect(putInShop(place, '0.width', '').shop).toEqual({ '0.price': '9' });
  });
});

describe('askInstead', () => {
  test('askInstead keeps bolts, prices and ticks, and no length that was left', () => {
    const shop = { at: '4', '0.width': '44', '0.price': '9', '1.got': '1', '4.left': '2' };
    expect(askInstead({ question: 'a=1', shop }, 'a=2')).toEqual({
      question: 'a=2',
      shop: { at: '4', '0.width': '44', '0.price': '9', '1.got': '1' },
    });
  });
});

describe('readAsked', () => {
  test('readAsked of a plan is its cloths, under its canonical query', () => {
    const { place, counter } = readAsked({
      question: 'target.size=lap&unit=in',
      shop: { at: '1' },
    });
    expect(place).toEqual({ question: 'target.size=lap', shop: { at: '1' } });
    expect(counter?.needs.length).toBeGreaterThan(1);
  });

  test('readAsked puts what cannot be read back to where it is typed', () => {
    const squares = readAsked({ question: 'cut=wide&count=%20', shop: {} });
    expect(squares.place).toEqual({ question: '', shop: { cut: 'wide' } });
    expect(squares.faults.map(({ code }) => code)).toEqual(['not-a-length', 'empty']);
    const plan = readAsked({ question: 'target.size=palace', shop: { at: '1' } });
    expect(plan.place).toEqual({ question: '', shop: { address: 'target.size=palace' } });
  });

  test('readAsked of nothing has nothing wrong', () => {
    expect(readAsked({ question: '', shop: {} })).toMatchObject({ faults: [] });
  });
});
