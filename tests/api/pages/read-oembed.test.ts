import { describe, expect, test } from 'vitest';
import { readOembed } from '../../../api/pages/read-oembed.ts';

const read = (query: string) => readOembed(new URL(`http://ours.test/oembed?${query}`));
const link = (address: string) => `url=${encodeURIComponent(address)}`;

describe('readOembed', () => {
  test.each([
    ['http://ours.test/', 'plan'],
    ['https://ours.test/?target.size=lap#top', 'plan'],
    ['http://ours.test/wash?unit=cm', 'wash'],
    ['http://ours.test/layout', 'layout'],
    ['http://ours.test/stash', 'stash'],
    ['http://ours.test/kits', 'kits'],
    ['http://ours.test/embed/size?_lang=de', 'size'],
    ['http://ours.test/embed/yardage', 'yardage'],
  ])('readOembed finds at %s the view %s', (address, name) => {
    const ask = read(link(address));
    expect(ask).toMatchObject({ ok: true, value: { format: 'json', view: { name } } });
  });
  test.each([
    ['http://other.test/'],
    ['http://ours.test.other.test/'],
    ['http://ours.test:81/'],
    ['http://ours.test@other.test/'],
    ['http://ours.test/api'],
    ['http://ours.test/v1/plan?target.size=lap'],
    ['http://ours.test/embed/'],
    ['http://ours.test/embed/v1.js'],
    ['http://ours.test/oembed'],
  ])('readOembed finds nothing at %s', (address) => {
    expect(read(link(address))).toMatchObject({
      ok: false,
      faults: [{ code: 'not-found', path: ['url'] }],
    });
  });
  test.each([
    ['', ['missing']],
    ['url=', ['missing']],
    ['url=plan', ['wrong-type']],
    ['url=javascript:alert(1)', ['wrong-type']],
    [`${link('http://ours.test/')}&${link('http://ours.test/')}`, ['repeated-key']],
    [link(`http://ours.test/?${'a'.repeat(9000)}`), ['too-long']],
    [`${link('http://ours.test/')}&maxwidth=0`, ['too-small']],
    [`${link('http://ours.test/')}&maxwidth=-5&maxheight=1e3`, ['not-whole', 'not-whole']],
  ])('readOembed(%.50j) is at fault by %j', (query, codes) => {
    const ask = read(query);
    expect(ask.ok ? [] : ask.faults.map(({ code }) => code)).toEqual(codes);
  });
  test('passes over parameters that are not of the standard, and blank ones', () => {
    const ask = read(`${link('http://ours.test/')}&maxwidth=300&maxheight=&dnt=1&format=xml`);
    expect(ask).toMatchObject({
      ok: true,
      value: { format: 'xml', most: { width: 300, height: Number.POSITIVE_INFINITY } },
    });
  });
});
