import { expect, test } from 'vitest';
import { bundleLoaders } from '../../../client/build/bundle-loaders.ts';
import { signFile } from '../../../client/build/sign-files.ts';

const contents = new TextEncoder().encode('1');
const script = (name: string) => ({
  ...{ name, contents, gzip: 1, entry: undefined, imports: [], inputs: [] },
});
const bundle = {
  scripts: [script('plan-A.js'), script('base-B.js'), script('later-C.js')],
  elements: [{ name: 'plan', first: ['plan-A.js', 'base-B.js'], soon: [] }],
};

test('bundleLoaders(bundle, version) makes one that brings a version, and one that lets only its files run', async () => {
  const { stable, pinned } = await bundleLoaders(bundle, '9.8.7');
  const [text, checked] = [stable, pinned].map((one) => new TextDecoder().decode(one.contents));
  expect(text).toContain('"ragbloom-plan":["plan-A","base-B"]');
  expect(text).toContain('9.8.7/');
  expect(text).not.toContain('sha384');
  expect(checked).toContain(`"plan-A":"${signFile(contents)}"`);
  expect(checked).not.toContain('later-C');
});
