import { describe, expect, test } from 'vitest';
import { type Asked, chooseRoad } from '../../../client/offline/choose-road.ts';

const origin = 'https://quilts.example';
const site = {
  origin,
  pages: ['/', '/counter', '/wash'],
  kept: ['/counter', '/look/page.css', '/embed/v1.js', '/embed/counter-ABCDEF12.js'],
};

const road = (path: string, change: Partial<Asked> = {}) =>
  chooseRoad(
    { method: 'GET', url: new URL(path, origin).href, isPage: false, referrer: '', ...change },
    site,
  );

describe('chooseRoad', () => {
  test.each([
    ['/counter', 'cache'],
    ['/counter?target.size=lap', 'cache'],
    ['/', 'network'],
    ['/?target.size=lap', 'network'],
    ['/v1/plan?target.size=lap', 'none'],
    ['/health', 'none'],
    ['/embed/plan', 'none'],
  ])('chooseRoad of the page %s is %s', (path, expected) => {
    expect(road(path, { isPage: true })).toBe(expected);
  });

  test.each([
    ['/embed/counter-ABCDEF12.js', 'cache'],
    ['/embed/other-12345678.js', 'cache'],
    ['/look/page.css', 'network'],
    ['/v1/plan.svg?target.size=lap', 'none'],
    ['/v1/plan?target.size=lap', 'none'],
    ['https://elsewhere.example/look/page.css', 'none'],
    ['/openapi.json', 'none'],
  ])('chooseRoad of the file %s is %s', (path, expected) => {
    expect(road(path)).toBe(expected);
  });

  test('chooseRoad gives a kept page its files from what is kept, and other pages from the network', () => {
    const style = (page: string) => road('/look/page.css', { referrer: origin + page });
    expect(style('/counter?a=1')).toBe('cache');
    expect(style('/wash')).toBe('network');
  });

  test('chooseRoad leaves what is sent alone', () => {
    expect(road('/counter', { method: 'POST', isPage: true })).toBe('none');
  });
});
