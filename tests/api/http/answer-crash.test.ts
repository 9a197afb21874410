import { expect, test, vi } from 'vitest';
import { answerCrash } from '../../../api/http/answer-crash.ts';

test('answerCrash tells an id and nothing of the inside, and logs both', async () => {
  const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const error = new Error('secret of the inside');
  const answer = answerCrash(error);
  const text = await answer.text();
  expect(answer.status).toBe(500);
  expect(text).not.toContain('secret');
  const { instance } = JSON.parse(text) as { instance: string };
  expect(instance).toMatch(/^urn:uuid:[0-9a-f-]{36}$/);
  expect(log).toHaveBeenCalledWith(instance.slice('urn:uuid:'.length), error);
  log.mockRestore();
});

test('answerCrash has an id of its own for each', async () => {
  const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
  const bodies = await Promise.all([1, 2].map((error) => answerCrash(error).text()));
  expect(new Set(bodies).size).toBe(2);
  log.mockRestore();
});
