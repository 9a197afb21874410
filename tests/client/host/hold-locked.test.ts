import { describe, expect, test } from 'vitest';
import type { AnyDraft } from '../../../client/data/draft.ts';
import { holdLocked } from '../../../client/host/hold-locked.ts';

describe('holdLocked', () => {
  test('holdLocked takes out what the host has nothing at', () => {
    expect(holdLocked({ 'block.cut': '9', unit: 'in' } as AnyDraft, {}, ['block'])).toEqual({
      unit: 'in',
    });
  });

  test('holdLocked leaves a draft without locks alone', () => {
    expect(holdLocked({ 'block.cut': '9' }, { 'block.cut': '8' }, [])).toEqual({
      'block.cut': '9',
    });
  });
});
