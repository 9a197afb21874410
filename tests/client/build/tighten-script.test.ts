import { gzipSync } from 'node:zlib';
import { describe, expect, test } from 'vitest';
import { bundleScripts, type Script } from '../../../client/build/bundle-scripts.ts';
import { TIGHTENED, tightenScript } from '../../../client/build/tighten-script.ts';

async function bundle(contents: string): Promise<Script> {
  const [script] = await bundleScripts({ stdin: { contents }, footer: TIGHTENED });
  if (script === undefined) throw new Error('The bundler gave nothing.');
  return script;
}

const SOURCE = `
const double = (value) => { const twice = value * 2; return twice; };
const never = false;
if (never) console.log('never');
globalThis.tight = double(globalThis.start);
export const kept = { unit: 'in', ["other"]: double(3) };`;

describe('tightenScript', () => {
  test('a script says the same in fewer bytes, and its weight is that of what it has become', async () => {
    const before = await bundle(SOURCE);
    const after = await tightenScript(before);
    expect(after.contents.length).toBeLessThan(before.contents.length);
    expect(after.gzip).toBe(gzipSync(after.contents, { level: 9 }).length);
    expect({ ...after, contents: 0, gzip: 0 }).toEqual({ ...before, contents: 0, gzip: 0 });
    const run = async ({ contents }: Script) => {
      const module = await import(
        `data:text/javascript,${encodeURIComponent(new TextDecoder().decode(contents))}`
      );
      return module.kept;
    };
    expect(await run(after)).toEqual({ unit: 'in', other: 6 });
    expect(await run(before)).toEqual({ unit: 'in', other: 6 });
  });

  test('what names the tool changes the name of a script and is gone from it', async () => {
    const [plain] = await bundleScripts({ stdin: { contents: SOURCE } });
    const told = await bundle(SOURCE);
    expect(told.name).not.toBe(plain?.name);
    const { contents } = await tightenScript(told);
    expect(new TextDecoder().decode(told.contents)).toContain('terser');
    expect(new TextDecoder().decode(contents)).not.toContain('terser');
  });
});
