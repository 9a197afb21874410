import { execFile } from 'node:child_process';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { join } from 'node:path';
import { promisify } from 'node:util';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { batch, ENDPOINTS } from '../../../api/app.ts';
import { EXAMPLE } from '../../../api/docs/describe-batch.ts';
import { ENDPOINT_WORDS } from '../../../api/docs/endpoint-words.ts';
import { SAMPLE_ORIGIN, writeSamples } from '../../../api/docs/write-samples.ts';
import { root } from '../../structure/source-tree.ts';
import { useWorker } from '../../support/worker.ts';

const run = promisify(execFile);
const worker = useWorker();
const rows = [
  ...ENDPOINTS.map(({ path }) => ({
    path,
    input: Object.values(ENDPOINT_WORDS[path]?.examples ?? {})[0]?.input ?? {},
  })),
  { path: batch.path, input: EXAMPLE.input },
];
const hasPython = await run('python3', ['--version']).then(
  () => true,
  () => false,
);
let folder = '';
beforeAll(async () => {
  folder = await mkdtemp(join(root, '.build', 'samples-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

/** A sample as it stands in the documents, but that it asks the service that runs here. */
const place = (sample: string) => sample.replaceAll(SAMPLE_ORIGIN, worker.origin());

describe.each(rows)('samples of $path print what the service answers', ({ path, input }) => {
  const samples = writeSamples(path, input);
  const answer = async () => {
    const headers = { 'Content-Type': 'application/json' };
    const told = await worker.fetch(path, { method: 'POST', headers, body: JSON.stringify(input) });
    expect(told.status).toBe(200);
    return (await told.text()).trim();
  };

  test('curl', async () => {
    const { stdout } = await run('bash', ['-c', place(samples.curl)]);
    expect(stdout.trim() === (await answer())).toBe(true);
  });

  test('Python, where there is one', async () => {
    expect(samples.python).toContain(path);
    if (!hasPython) return;
    const { stdout } = await run('python3', ['-c', place(samples.python)]);
    expect(stdout.trim() === (await answer())).toBe(true);
  });

  test('TypeScript', async () => {
    const file = join(folder, `${path.replaceAll(/\W/g, '-')}.ts`);
    // The package itself is tried elsewhere; here its client runs from the source.
    const client = join(root, 'client/api/make-client.ts');
    await writeFile(file, place(samples.typescript).replace("'ragbloom/client'", `'${client}'`));
    const { stdout } = await run(process.execPath, [file]);
    expect(stdout.trim() === (await answer())).toBe(true);
  });
});
