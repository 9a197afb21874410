import { describe, expect, test } from 'vitest';
import { de } from '../../../../client/text/wash/de.ts';
import { en } from '../../../../client/text/wash/en.ts';

/** Every text of a table, functions called with stand-ins. */
function listTexts(value: unknown): readonly string[] {
  if (typeof value === 'string') return [value];
  if (typeof value === 'function') return listTexts(value('length', 'width', '12', '3'));
  if (typeof value !== 'object' || value === null) return [];
  return Object.values(value).flatMap(listTexts);
}

describe('the words of wash in English', () => {
  test('en exclaims nothing and says nothing twice over', () => {
    const texts = listTexts(en);
    expect(texts.length).toBeGreaterThan(80);
    for (const text of texts) {
      expect(text).not.toMatch(/!/);
      expect(text.length).toBeGreaterThan(0);
    }
  });

  test('en counts washes', () => {
    expect([1, 2, 7].map(en.times)).toEqual(['one wash', 'two washes', '7 washes']);
  });

  test('en says which face will pucker and which pulls', () => {
    expect(en.advice.pull('top', 'puckers')).toMatch(/^The top will pucker/);
    expect(en.advice.pull('backing', 'tight')).toMatch(/^The backing pulls tight/);
  });

  test('en calls a cell by its swatch, its way and its end', () => {
    expect(en.swatches.cell(2, 'width', 'After')).toBe('Swatch 2, across the roll, after');
  });

  test('the words of the wash in German bend one wash as the sentence wants it', () => {
    expect([de.times(1), de.result.after(1), de.result.after(3)]).toEqual([
      'eine Wäsche',
      'Nach einer Wäsche',
      'Nach 3 Wäschen',
    ]);
  });

  test.each([
    [[], undefined, /Sie setzen sich zusammen\.$/],
    [['pull'], 'backing', /wasch den Stoff der Rückseite vor/],
    [['pull'], 'middle', /wasche einen Probeblock/],
    [['doubt'], 'top', /^Die gewaschene Größe ist weniger sicher/],
    [['pull', 'doubt'], 'top', /Oberseite vor.*weniger sicher/],
  ] as const)(
    'the words of the wash in German give the reasons %j, %s pulling most',
    (reasons, tight, said) => {
      expect(de.advice.why({ why: '', reasons }, tight)).toMatch(said);
    },
  );
});
