import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readWishes } from '../../../api/pages/read-wishes.ts';
import { splitQuery } from '../../../api/pages/split-query.ts';
import { startState } from '../../../client/maker/maker-state.ts';
import { writeSnippets } from '../../../client/maker/write-snippets.ts';

const home = 'https://a.test';
const state = { ...startState('size'), values: { 'target.size': 'lap', 'block.cut': '8 1/2' } };

describe('writeSnippets', () => {
  test('writes a script with its tag, its place kept free and a link for where no script runs', () => {
    const styled = {
      ...state,
      locked: ['block.cut'],
      language: 'fr',
      scheme: 'dark',
      colors: { ink: '#112233' },
    };
    expect(writeSnippets(styled, home).script).toBe(
      [
        '<script src="https://a.test/embed/v1.js" async></script>',
        '<style>ragbloom-size { display: block; min-height: 780px; color-scheme: dark; --ragbloom-ink: #112233; }</style>',
        '<ragbloom-size embedded preset="target.size=lap&amp;block.cut=8%201%2F2" locked="block.cut" lang="fr">',
        '  <a href="https://a.test/embed/size?target.size=lap&amp;block.cut=8%201%2F2">The size of a rag quilt</a>',
        '</ragbloom-size>',
      ].join('\n'),
    );
  });
  test('writes a frame, an address and a picture of the same', () => {
    const { frame, address, picture } = writeSnippets(state, home);
    const query = 'target.size=lap&amp;block.cut=8%201%2F2';
    expect(frame).toContain(
      `<iframe src="https://a.test/embed/size?${query}" width="700" height="780"`,
    );
    expect(address).toBe(`https://a.test/embed/size?${query.replace('&amp;', '&')}`);
    expect(picture).toContain(`<img src="https://a.test/v1/plan.svg?${query}"`);
  });
  test('links the whole page where there is one, and the frame where only that can carry what was chosen', () => {
    const plan = startState('plan');
    expect(writeSnippets(plan, home).address).toBe('https://a.test/?target.size=throw');
    expect(writeSnippets({ ...plan, language: 'es' }, home).address).toBe(
      'https://a.test/embed/plan?target.size=throw&_lang=es',
    );
  });
  test('names a currency once all its three letters are typed', () => {
    const written = (currency: string) => {
      const { script, frame, address } = writeSnippets({ ...state, currency }, home);
      return [script, frame, address].map((text) => /currency="?=?(\w*)/.exec(text)?.[1]);
    };
    for (const typed of ['', 'E', 'EU', 'E1R']) {
      expect(written(typed)).toEqual([undefined, undefined, undefined]);
    }
    expect(written('EUR')).toEqual(['EUR', 'EUR', 'EUR']);
  });
  test('has no picture where nothing is to be drawn', () => {
    expect(writeSnippets(startState('wash'), home).picture).toBeUndefined();
    expect(writeSnippets({ ...state, values: {} }, home).picture).toBeUndefined();
  });
  test('whatever is typed, the service reads it out of the frame again, and no markup gets out of the snippets', () => {
    fc.assert(
      fc.property(fc.string({ minLength: 1, maxLength: 30 }), (typed) => {
        fc.pre(typed.trim() !== '' && typed.isWellFormed());
        const wild = { ...state, values: { 'block.cut': typed }, locked: ['block.cut'] };
        const { preview, frame, script } = writeSnippets(wild, home);
        const { query, own } = splitQuery(preview.split('?')[1] ?? '');
        expect(new URLSearchParams(query).get('block.cut')).toBe(typed.trim());
        expect(readWishes(own)).toMatchObject({ locked: 'block.cut', faults: [] });
        expect(frame.match(/</g)?.length).toBe(2);
        expect(script.match(/</g)?.length).toBe(8);
      }),
    );
  });
});
