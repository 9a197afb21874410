import { readFileSync } from 'node:fs';
import { build } from 'esbuild';
import { describe, expect, test } from 'vitest';
import { ELEMENT, INNER_NAMES } from '../../client/make-lighter.ts';

const contract = readFileSync('api/core/contract.ts', 'utf8');

async function make(entry: string): Promise<string> {
  const { outputFiles } = await build({
    ...ELEMENT,
    entryPoints: [entry],
    bundle: true,
    minify: true,
    charset: 'utf8',
    write: false,
    outdir: 'nowhere',
  });
  return outputFiles.find(({ path }) => path.endsWith('.js'))?.text ?? '';
}

describe('INNER_NAMES', () => {
  test.each(INNER_NAMES)('%s is on no wire and no attribute', (name) => {
    expect(contract).not.toMatch(new RegExp(`\\b${name}\\b`));
    const elements = ['plan', 'wash', 'stash', 'kits'].map((element) =>
      readFileSync(`client/elements/${element}/${element}-element.ts`, 'utf8'),
    );
    const properties = elements.map((text) =>
      /static override properties = (.*?\n {2}};)/s.exec(text),
    );
    for (const found of properties) {
      expect(found?.[1]).toMatch(/\w/);
      expect(found?.[1]).not.toMatch(new RegExp(`\\b${name}:`));
    }
  });
});

describe('ELEMENT', () => {
  test('ELEMENT takes the indentation out of templates, and keeps the space between words', async () => {
    const script = await make('client/elements/plan/plan-view-quilt.ts');
    expect(script).not.toMatch(/`[^`]*<\w[^`]*\n/);
    expect(script).toMatch(/<\/b> <small>/);
  });

  test('ELEMENT shortens names that only our own code says', async () => {
    const script = await make('client/elements/plan/plan-element.ts');
    for (const name of INNER_NAMES) expect(script).not.toMatch(new RegExp(`\\w\\.${name}\\b`));
    expect(script).toContain('.fabrics');
  });

  test('ELEMENT leaves Lit the one way of styles that our browsers use', async () => {
    const script = await make('client/elements/plan/plan-element.ts');
    expect(script).toContain('adoptedStyleSheets');
    expect(script).not.toContain('litNonce');
  });
});
