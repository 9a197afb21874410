import { expect, test } from 'vitest';
import { VERSION } from '../../../client/embed/version.ts';

test('VERSION is three numbers, so that it can name a folder', () => {
  expect(VERSION).toMatch(/^\d+\.\d+\.\d+$/);
});
