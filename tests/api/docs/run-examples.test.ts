import { expect, test } from 'vitest';
import { runExamples } from '../../../api/docs/run-examples.ts';
import { makeToyApp } from '../../support/toy-endpoint.ts';

const toy = makeToyApp();
const run = (input: object) =>
  runExamples({ path: '/toy' }, { examples: { one: { summary: 'One.', input } } }, (path, init) =>
    toy.request(path, init),
  );

test('runExamples gives what was answered', async () => {
  expect(await run({ id: 'a' })).toEqual({
    one: { input: { id: 'a', count: 1, list: [], crash: false } },
  });
});

test('runExamples lets no example pass that is refused', async () => {
  await expect(run({ id: '' })).rejects.toThrow('Example one of /toy');
});
