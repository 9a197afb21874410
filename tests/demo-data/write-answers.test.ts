import { describe, expect, test } from 'vitest';
import { app } from '../../api/app.ts';
import { loadScenario } from '../../demo-data/load-scenario.ts';
import { writeAnswer } from '../../demo-data/write-answers.ts';
import { readText } from '../structure/source-tree.ts';

const files = loadScenario().wishes.map(({ file }) => file);

describe('writeAnswer', () => {
  test.each(files)('writeAnswer(%j) is what stands under answers/, byte for byte', (file) => {
    const why = 'Was it meant? Then raise ENGINE and run node demo-data/write-answers.ts.';
    expect(writeAnswer(file), why).toBe(readText(`demo-data/answers/${file}`));
  });

  test.each(files)('POST of %j gives what stands under answers/, byte for byte', async (file) => {
    const response = await app.request('/v1/plan', {
      method: 'POST',
      headers: { 'Content-Type': 'application/json' },
      body: readText(`demo-data/wishes/${file}`),
    });
    expect(response.status).toBe(200);
    const known: unknown = JSON.parse(readText(`demo-data/answers/${file}`));
    expect(await response.text()).toBe(JSON.stringify(known));
  });
});
