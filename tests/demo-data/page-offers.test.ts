import { describe, expect, test } from 'vitest';
import { answerWish, loadScenario } from '../../demo-data/load-scenario.ts';
import { readText } from '../structure/source-tree.ts';

/** Links of a page: their text, and where they lead. */
function readLinks(html: string): ReadonlyMap<string, string> {
  const found = html.matchAll(/<a href="([^"]+)">([^<]+)<\/a>/g);
  return new Map(
    [...found].map(([, href = '', text = '']) => [text, href.replaceAll('&amp;', '&')]),
  );
}

const links = readLinks(readText('client/pages/index.html'));

describe('the first page', () => {
  test.each(loadScenario().wishes)('offers $file at its canonical address', ({ file, title }) => {
    expect(links.get(title)).toBe(answerWish(file).links.page);
  });
});

describe('readLinks', () => {
  test('readLinks reads where a text leads', () => {
    expect([...readLinks('<li><a href="/?a=1&amp;b=2">C</a></li>')]).toEqual([['C', '/?a=1&b=2']]);
  });
});
