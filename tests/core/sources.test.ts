import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { SOURCES } from '#core/sources.ts';
import { root } from '../structure/source-tree.ts';

const core = readdirSync(join(root, 'api/core'), { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.ts'))
  .map((path) => readFileSync(join(root, 'api/core', path), 'utf8'))
  .join('\n');

describe('SOURCES', () => {
  test('SOURCES are written once each', () => {
    const texts = Object.values(SOURCES);
    expect(new Set<string>(texts).size).toBe(texts.length);
  });

  test.each(Object.keys(SOURCES))('SOURCES.%s is cited somewhere in the core', (name) => {
    expect(core).toMatch(new RegExp(`SOURCES\\.${name}\\b`));
  });
});
