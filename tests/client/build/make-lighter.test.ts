import { describe, expect, test } from 'vitest';
import { bundleScripts } from '../../../client/build/bundle-scripts.ts';
import { makeLighter } from '../../../client/build/make-lighter.ts';

async function make(entry: string): Promise<string> {
  const [script] = await bundleScripts({ entryPoints: [entry], plugins: [makeLighter] });
  return new TextDecoder().decode(script?.contents);
}

describe('makeLighter', () => {
  test('makeLighter takes the indentation out of templates, and keeps the space between words', async () => {
    const script = await make('client/elements/plan/plan-view-quilt.ts');
    expect(script).not.toMatch(/`[^`]*<\w[^`]*\n/);
    expect(script).toMatch(/<\/b> <small>/);
  });

  test('makeLighter leaves Lit the one way of styles that our browsers use', async () => {
    const script = await make('client/elements/plan/plan-element.ts');
    expect(script).toContain('adoptedStyleSheets');
    expect(script).not.toContain('litNonce');
  });
});
