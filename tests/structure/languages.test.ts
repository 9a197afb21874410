import { describe, expect, test } from 'vitest';
import type { TextSource } from '../../client/text/languages.ts';
import { compareShapes, findEnglish, judgeTexts, listTexts } from './language-rules.ts';
import { listFiles, readText, root } from './source-tree.ts';

const LANGUAGES = ['es', 'de', 'fr'] as const;
const GROUPS = listFiles('client/text/*/source.ts').map((file) => file.split('/')[2] ?? '');
const CASES = GROUPS.flatMap((group) => LANGUAGES.map((language) => [group, language] as const));

async function loadSource(group: string): Promise<TextSource<object>> {
  const module: object = await import(/* @vite-ignore */ `${root}client/text/${group}/source.ts`);
  const [source] = Object.values(module).filter((value) => Object.hasOwn(value, 'load'));
  return source;
}

const read = (group: string, language: string) => readText(`client/text/${group}/${language}.ts`);

describe('every group of words', () => {
  test('is there', () => {
    expect(GROUPS).toEqual(expect.arrayContaining(['shared', 'plan', 'wash', 'stash', 'kits']));
  });

  test.each(CASES)('%s in %s has what English has', async (group, language) => {
    const source = await loadSource(group);
    const words = await source.load[language]();
    expect(compareShapes(source.en, words)).toEqual([]);
  });

  test.each(CASES)('%s in %s has no English left in it', (group, language) => {
    expect(findEnglish(read(group, language), read(group, 'en'))).toEqual([]);
  });

  test.each(GROUPS)(
    '%s counts by the plural rules, and raises its voice in no language',
    (group) => {
      for (const language of ['en', ...LANGUAGES]) {
        expect(judgeTexts(read(group, language)), language).toEqual([]);
      }
    },
  );
});

describe('compareShapes', () => {
  const say = (_: string) => 'a';
  test.each([
    [{ a: 'x' }, {}, 'text.a is undefined, in English string.'],
    [{ a: 'x' }, { a: 'y', b: 'z' }, 'text.b is string, in English undefined.'],
    [{ a: 'x' }, { a: ' ' }, 'text.a is empty.'],
    [{ a: ['x', 'y'] }, { a: ['x'] }, 'text.a.1 is undefined, in English string.'],
    [{ a: say }, { a: () => 'b' }, 'text.a takes 0 parts, in English 1.'],
    [{ a: { b: 'x' } }, { a: 'x' }, 'text.a is string, in English object.'],
  ])('compareShapes(%j, %j) tells that %s', (english, other, told) => {
    expect(compareShapes(english, other)).toEqual([told]);
  });
});

describe('findEnglish', () => {
  const english = "export const en = { a: 'Cut the bolts', b: 'Kits' };";
  test.each([
    ["export const de = { a: 'Cut the bolts' };", 1],
    ["export const de = { a: 'Schneide the Ballen' };", 1],
    ["export const de = { a: 'Ballen zuschneiden' };", 0],
    ["export const de = { a: 'cut' };", 0],
  ])('findEnglish finds in %j so many: %d', (source, count) => {
    expect(findEnglish(source, english)).toHaveLength(count);
  });
});

describe('judgeTexts', () => {
  test.each([
    ["export const a = 'Halt!';"],
    ['export const a = "l\'eau";'],
    ['export const a = (n: number) => (n === 1 ? `x` : `y`);'],
  ])('judgeTexts refuses %s', (source) => {
    expect(judgeTexts(source)).toHaveLength(1);
  });

  test('listTexts gives the texts and the pieces around gaps, without keys', () => {
    const source = ["import a from 'lit'; const c = { 'd-e': 'f', g: `h $", '{a}` };'].join('');
    expect(listTexts(source)).toEqual(['lit', 'f', 'h ', '']);
  });
});
