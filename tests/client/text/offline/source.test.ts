import { describe, expect, test } from 'vitest';
import { en } from '../../../../client/text/offline/en.ts';

describe('what pages say of the network in English', () => {
  test('en has a sentence for every state that there is something to say of', () => {
    for (const state of ['kept', 'refused', 'silent', 'newer'] as const) {
      expect(en[state]).toMatch(/^[A-Z].*\.$/);
    }
  });
});
