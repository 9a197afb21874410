import { describe, expect, test } from 'vitest';
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
