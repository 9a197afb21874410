import { expect, test } from 'vitest';
import { type Sentences, sayFault } from '../../../client/fields/say-fault.ts';

const sentences: Sentences = {
  'too-small': ({ expected }) => `At least ${expected}.`,
  'too-large': ({ expected }) => `At most ${expected}.`,
};
const none = () => 'No.';

test('sayFault tells a bound to the eighth of an inch that is still within it', () => {
  expect(sayFault(sentences, { code: 'too-large', path: [], expected: '196.85 in' }, none)).toBe(
    'At most 196¾ in.',
  );
  expect(sayFault(sentences, { code: 'too-small', path: [], expected: '5.91 in' }, none)).toBe(
    'At least 6 in.',
  );
});

test('sayFault has something to say of a fault that it has no sentence for', () => {
  expect(sayFault(sentences, { code: 'empty', path: [] }, none)).toBe('No.');
});
