import { gunzipSync, gzipSync } from 'node:zlib';
import { expect, test } from 'vitest';
import { bundleScripts } from '../../../client/build/bundle-scripts.ts';

test('bundleScripts(options) tells of a script its name with a digest, its size and what is in it', async () => {
  const stdin = { contents: 'export const a = 1;' };
  const [script] = await bundleScripts({ stdin, entryNames: 'a-[hash]' });
  expect(script?.name).toMatch(/^a-[A-Z0-9]{8}\.js$/);
  const zipped = gzipSync(script?.contents ?? '', { level: 9 });
  expect(script?.gzip).toBe(zipped.length);
  expect(`${gunzipSync(zipped)}`).toContain('export{');
});

test('bundleScripts(options) tells what a script loads at once, and not what it loads later', async () => {
  const stdin = { contents: "import './now.js'; import('./later.js');" };
  const [script] = await bundleScripts({ stdin, external: ['./now.js', './later.js'] });
  expect(script?.imports).toEqual(['now.js']);
});

test('bundleScripts(options) gives another name to other contents', async () => {
  const make = (contents: string) => bundleScripts({ stdin: { contents }, entryNames: 'a-[hash]' });
  const [[one], [two]] = await Promise.all([make('alert(1)'), make('alert(2)')]);
  expect(one?.name).not.toBe(two?.name);
});
