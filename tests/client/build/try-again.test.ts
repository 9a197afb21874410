import { describe, expect, test } from 'vitest';
import { tryAgain } from '../../../client/build/try-again.ts';

describe('tryAgain', () => {
  test('tryAgain(script) leaves alone what is loaded at once, and what is no script of ours', () => {
    for (const script of ['import{a}from"./base-A1.js";', 'import(x)', 'import("lit")', '']) {
      expect(tryAgain(script)).toBe(script);
    }
  });

  test('tryAgain(script) has each script that may come later fetched under a second address', () => {
    const tried = tryAgain('a(import("./one-A1.js"));b(import("./two-B2.js"))');
    expect(tried).toContain('a($again("./one-A1.js"));b($again("./two-B2.js"))');
    expect(tried.match(/function/g)).toHaveLength(1);
  });

  test('tryAgain(script) asks once for what is there, and twice for what is not', async () => {
    const run = async (file: string) => {
      const asked: string[] = [];
      const fetchIt = (address: string) => {
        asked.push(address.replace(/\d{10,}/, 'now'));
        return asked.length === 1 && file.includes('gone')
          ? Promise.reject(new Error('no'))
          : Promise.resolve(1);
      };
      const script = tryAgain(`return import("./${file}")`).replaceAll('import(', 'fetchIt(');
      return [await new Function('fetchIt', script)(fetchIt), ...asked];
    };
    expect(await run('there-A1.js')).toEqual([1, './there-A1.js']);
    expect(await run('gone-A1.js')).toEqual([1, './gone-A1.js', './gone-A1.js?now']);
  });
});
