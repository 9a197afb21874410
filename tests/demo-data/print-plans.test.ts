import { execFile } from 'node:child_process';
import { promisify } from 'node:util';
import { describe, expect, test } from 'vitest';
import { loadScenario } from '../../demo-data/load-scenario.ts';
import { printPlans } from '../../demo-data/print-plans.ts';
import { root } from '../structure/source-tree.ts';

describe('printPlans', () => {
  test('printPlans() prints every wish under its title', () => {
    const text = printPlans();
    for (const { title } of loadScenario().wishes) expect(text).toContain(title.toUpperCase());
  });

  test('printPlans() says that it is invented before anything else', () => {
    expect(printPlans()).toMatch(/^An invented scenario/);
  });

  test('npm run demo prints the same', async () => {
    const run = promisify(execFile)('npm', ['run', '--silent', 'demo'], { cwd: root });
    const { stdout } = await run;
    expect(stdout).toBe(`${printPlans()}\n`);
  });
});
