import { describe, expect, test } from 'vitest';
import { listFilled, startState } from '../../../client/maker/maker-state.ts';

const paths = (state: Parameters<typeof listFilled>[0]) =>
  listFilled(state).map(({ path }) => path);

describe('startState', () => {
  test('keeps language and look, and no value nor lock of another view', () => {
    const before = {
      ...startState('size'),
      language: 'de',
      locked: ['unit'],
      colors: { ink: '#112233' },
    };
    expect(startState('layout', before)).toMatchObject({
      language: 'de',
      colors: { ink: '#112233' },
      locked: [],
      values: { columns: '4' },
    });
  });
  test('begins somewhere where there is no such view', () => {
    expect(startState('nothing').view.name).toBe('size');
  });
});

describe('listFilled', () => {
  const state = startState('plan');
  test('lets width and height together stand in the place of a named size', () => {
    const values = { 'target.size': 'throw', 'target.width': '40' };
    expect(paths({ ...state, values })).toEqual(['target.size']);
    expect(paths({ ...state, values: { ...values, 'target.height': '50' } })).toEqual([
      'target.width',
      'target.height',
    ]);
  });
  test('passes over blanks', () => {
    expect(paths({ ...state, values: { unit: 'cm', washes: '  ' } })).toEqual(['unit']);
  });
});
