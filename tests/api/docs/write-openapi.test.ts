import { execFile } from 'node:child_process';
import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { promisify } from 'node:util';
import { expect, test } from 'vitest';
import { OPENAPI_FILE, writeOpenapi } from '../../../api/docs/write-openapi.ts';

test('writeOpenapi gives the file that is served, byte for byte; `npm run openapi` writes it', async () => {
  const [served, written] = await Promise.all([readFile(OPENAPI_FILE, 'utf8'), writeOpenapi()]);
  // Not shown side by side: they are long.
  expect(served === written, 'Run npm run openapi.').toBe(true);
});

test('the file that is served has no error by the rules of a linter', async () => {
  const linter = fileURLToPath(import.meta.resolve('@redocly/cli/bin/cli.js'));
  const { stdout } = await promisify(execFile)(
    process.execPath,
    [linter, 'lint', fileURLToPath(OPENAPI_FILE), '--format=json'],
    { env: { ...process.env, REDOCLY_TELEMETRY: 'off', REDOCLY_SUPPRESS_UPDATE_NOTICE: 'true' } },
  );
  const { totals } = JSON.parse(stdout) as { totals: object };
  expect(totals).toMatchObject({ errors: 0, warnings: 0 });
}, 60_000);
