import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { useWorker } from '../support/worker.ts';
import { holdsExcerpt } from './holds-excerpt.ts';
import { readCurl, splitCommands } from './read-curl.ts';
import { nameSpan, readDocument } from './read-document.ts';
import { type Ask, type Before, hasScript, runFence } from './run-fence.ts';
import { listFiles, readText, root } from './source-tree.ts';

const worker = useWorker();
const ask: Ask = (url, init) =>
  worker.fetch(url.replace('http://localhost:8787', worker.origin()), init);
const documents = ['README.md', 'DEVELOPERS.md'].map((name) => ({
  name,
  ...readDocument(readText(name)),
}));

type Packages = { readonly dependencies: object; readonly devDependencies: object };

/** What a document names that is not there. */
function findMissing(spans: readonly string[]): readonly string[] {
  return spans.filter((span) => {
    const named = nameSpan(span);
    if (named.kind === 'script') return !hasScript(named.name);
    if (named.kind !== 'path') return false;
    return !existsSync(join(root, named.path)) && listFiles(named.path).length === 0;
  });
}

describe.each(documents)('$name', ({ fences, spans, links }) => {
  test('every path and every command that it names is there', () => {
    expect(findMissing(spans)).toEqual([]);
    expect(links.filter((link) => !existsSync(join(root, link)))).toEqual([]);
  });

  test('every address that it names is answered', async () => {
    const paths = spans.flatMap((span) => {
      const named = nameSpan(span);
      return named.kind === 'address' ? [named.path] : [];
    });
    const answers = await Promise.all(
      [...new Set(paths)].map(async (path) => [path, (await worker.fetch(path)).status] as const),
    );
    expect(answers.filter(([, status]) => status === 404 || status >= 500)).toEqual([]);
  });

  test('every block that it shows holds', async () => {
    let before: Before = {};
    for (const fence of fences.filter(({ language }) => language !== 'html')) {
      before = await runFence(fence, before, ask);
    }
    expect(fences.length).toBeGreaterThan(0);
  });
});

describe('the packages that DEVELOPERS.md gives reasons for', () => {
  const text = readText('DEVELOPERS.md');
  const table = text.slice(text.indexOf('| Package |')).split('\n\n')[0] ?? '';
  const named = table
    .split('\n')
    .slice(2)
    .flatMap((row) => row.split('|')[1]?.trim().split(', ') ?? []);

  test('are those of package.json, every one and no other', () => {
    const { dependencies, devDependencies } = JSON.parse(readText('package.json')) as Packages;
    const used = Object.keys({ ...dependencies, ...devDependencies });
    expect(named.toSorted()).toEqual(used.toSorted());
  });
});

describe('findMissing', () => {
  test.each(['api/core/nowhere.ts', 'appi/core/plan.ts', '#core/nowhere.ts', 'npm run nothing'])(
    'findMissing([%j]) refuses',
    (span) => {
      expect(findMissing([span])).toEqual([span]);
    },
  );

  test.each(['api/core/plan.ts', 'api/core/', '#core/plan.ts', 'npm run demo', 'npm ci', '8 1/2'])(
    'findMissing([%j]) lets pass',
    (span) => {
      expect(findMissing([span])).toEqual([]);
    },
  );
});

describe('runFence', () => {
  const run = (language: string, text: string, before: Before = {}) =>
    runFence({ language, text, line: 1 }, before, ask);

  test.each([
    ['json', '{ "a": 2 }', { output: '{"a":1}' }],
    ['json', '{ "a": 1 }', {}],
    ['json', '{ a: 1 }', { output: '{"a":1}' }],
    [
      'ts',
      "import { findFabric } from '#core/tables/fabrics.ts';\nfindFabric('flannel').gsm // => 1",
      {},
    ],
    ['ts', 'const a = 1;', {}],
    ['bash', 'npm run nothing', {}],
    ['bash', 'rm README.md', {}],
    ['bash', 'curl --silent http://localhost:8787/health', {}],
    ['text', 'three lines that nobody printed', { output: 'one line' }],
    ['text', 'api/nowhere/', {}],
    ['python', 'print(1)', {}],
  ])('runFence refuses %s of %j', async (language, text, before) => {
    await expect(run(language, text, before)).rejects.toThrow();
  });

  test('runFence asks the worker what curl would ask', async () => {
    const { output } = await run('bash', 'curl -s http://localhost:8787/health');
    expect(JSON.parse(output ?? '')).toMatchObject({ ok: true });
  });
});

describe('readCurl', () => {
  test('readCurl reads options over several lines', () => {
    const [command = ''] = splitCommands(
      "# ask\ncurl -s http://a.test/b \\\n  -H 'A: b: c' -d '{\"x\":\n1}'",
    );
    expect(readCurl(command)).toEqual({
      url: 'http://a.test/b',
      method: 'POST',
      headers: { 'content-type': 'application/x-www-form-urlencoded', a: 'b: c' },
      body: '{"x":\n1}',
    });
  });

  test('readCurl refuses what a shell would make something else of', () => {
    expect(() => readCurl('curl -s http://a.test/?a=$B')).toThrow('Too clever');
    expect(() => readCurl('curl -s http://a.test/ | sh')).toThrow('Too clever');
  });
});

describe('holdsExcerpt', () => {
  test.each([
    [{ a: 1, b: { c: [1, 2, 3] } }, { b: { c: [1, 3] } }, true],
    [{ a: 1 }, { a: 1, b: 2 }, false],
    [[1, 2], [2, 1], false],
    [{ a: 1 }, { a: '1' }, false],
    [{ a: [] }, { a: {} }, false],
  ])('holdsExcerpt(%j, %j) is %j', (answer, excerpt, expected) => {
    expect(holdsExcerpt(answer, excerpt)).toBe(expected);
  });
});

describe('readDocument', () => {
  test('readDocument keeps code in sentences apart from blocks', () => {
    const text = 'See `a/b.ts` and [c](d.md).\n```ts\n`e`\n```\n';
    expect(readDocument(text)).toEqual({
      fences: [{ language: 'ts', text: '`e`', line: 2 }],
      spans: ['a/b.ts'],
      links: ['d.md'],
    });
  });

  test('readDocument refuses a block that is never closed', () => {
    expect(() => readDocument('```ts\n')).toThrow('never closed');
  });
});
