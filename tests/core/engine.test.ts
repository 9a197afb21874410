import { describe, expect, test } from 'vitest';
import { ENGINE } from '#core/engine.ts';

describe('ENGINE', () => {
  test('ENGINE is a semantic version: three whole numbers, none with a zero before it', () => {
    expect(ENGINE).toMatch(/^(0|[1-9]\d*)\.(0|[1-9]\d*)\.(0|[1-9]\d*)$/);
  });
});
