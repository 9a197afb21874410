import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';

const ask = (query: string) => app.request(`/v1/yardage.svg?${query}`);
const bolt = (id: string) =>
  `fabrics.0.id=${encodeURIComponent(id)}&fabrics.0.width=42&fabrics.0.pieces.0.id=backing` +
  '&fabrics.0.pieces.0.width=8.5&fabrics.0.pieces.0.length=8.5&fabrics.0.pieces.0.count=42';

describe('/v1/yardage.svg', () => {
  test('draws the cuts of the same query, named and described', async () => {
    const answer = await ask(bolt('Fog flannel'));
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('image/svg+xml');
    const svg = await answer.text();
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="[^"]+" role="img"/);
    expect(svg).toContain('<title id="title">How to cut Fog flannel</title>');
    expect(svg).toContain(
      'Fog flannel, 2 5/8 yd, 41 in across: 10 strips of 8 1/2 in, each 4 backing; ' +
        '1 strip of 8 1/2 in, each 2 backing.',
    );
  });

  test('says which flat pieces are cut', async () => {
    const offer =
      '&fabrics.0.offers.0.kind=pieces&fabrics.0.offers.0.id=quarter&fabrics.0.offers.0.width=21' +
      '&fabrics.0.offers.0.length=18&fabrics.0.offers.0.count=1';
    expect(await (await ask(bolt('Fog') + offer)).text()).toMatch(/from each of \d+ quarter: /);
  });

  test('has no script and no handler, whatever a fabric is called', async () => {
    const answer = await ask(bolt('"><script>alert(1)</script>&lt;'));
    const svg = await answer.text();
    expect(answer.status).toBe(200);
    expect(svg).not.toMatch(/<script|<style|<foreignObject|\son\w+=|javascript:|href=/i);
    expect(svg).toContain('&quot;&gt;&lt;script&gt;alert(1)&lt;/script&gt;&amp;lt;');
  });

  test('tells faults as /v1/yardage does', async () => {
    const query = bolt('Fog').replace('width=42', 'width=5');
    const [picture, figures] = await Promise.all([ask(query), app.request(`/v1/yardage?${query}`)]);
    expect(picture.status).toBe(422);
    expect(await picture.text()).toBe(await figures.text());
  });
});
