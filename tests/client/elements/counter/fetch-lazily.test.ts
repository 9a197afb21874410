import { afterEach, describe, expect, test, vi } from 'vitest';
import { drawAddress, seekNearest } from '../../../../client/elements/counter/fetch-lazily.ts';
import { setCounter } from '../../../support/counter-scene.ts';

describe('seekNearest', () => {
  const seek = (left: string) => {
    const { state, rows } = setCounter({ shop: { '4.left': left } }).context;
    return seekNearest(state.counter, rows, 4);
  };

  test('seekNearest looks only where what is left is not enough', async () => {
    expect(await seek('3')).toBeUndefined();
    expect(await seek('2')).toMatchObject({ columns: 4, rows: 6, cut: 10 });
    expect(await seek('0.05')).toBe('none');
    expect(await seekNearest(undefined, [], 0)).toBeUndefined();
  });
});

describe('drawAddress', () => {
  test('drawAddress draws what fits into a code, and says so of what does not', async () => {
    expect(await drawAddress('https://quilts.example/counter?target.size=lap')).toMatchObject({
      path: expect.stringMatching(/^M/),
    });
    expect(await drawAddress(`https://quilts.example/counter?${'a'.repeat(3000)}`)).toBe('long');
  });
});

describe('without a signal', () => {
  const fail = () => {
    throw new TypeError('Failed to fetch dynamically imported module');
  };
  afterEach(() => {
    vi.doUnmock('../../../../client/data/counter-nearest.ts');
    vi.doUnmock('../../../../client/drawing/draw-code.ts');
  });

  test('seekNearest and drawAddress say that what they need could not be fetched', async () => {
    vi.doMock('../../../../client/data/counter-nearest.ts', fail);
    vi.doMock('../../../../client/drawing/draw-code.ts', fail);
    const { state, rows } = setCounter({ shop: { '4.left': '2' } }).context;
    expect(await seekNearest(state.counter, rows, 4)).toBe('unfetched');
    expect(await drawAddress('https://quilts.example/counter')).toBe('unfetched');
  });
});
