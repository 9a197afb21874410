import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';

const ask = (query: string) => app.request(`/v1/layout.svg?${query}`);
const two = 'prints.0.id=Blue%20sprig&prints.1.id=Dots';

describe('/v1/layout.svg', () => {
  test('draws the layout of the same query, named and described', async () => {
    const answer = await ask(`columns=4&rows=3&${two}`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('image/svg+xml');
    const svg = await answer.text();
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="[^"]+" role="img"/);
    expect(svg).toContain('Layout of 4 by 3 blocks in 2 prints</title>');
    expect(svg).toContain('A Blue sprig (6), B Dots (6).');
    expect(svg).toMatch(/From the top row: (ABAB, BABA, ABAB|BABA, ABAB, BABA)\./);
  });

  test('has no script and no handler, whatever a print is called', async () => {
    const id = encodeURIComponent('"><script>alert(1)</script>');
    const svg = await (await ask(`columns=2&rows=2&prints.0.id=${id}&prints.1.id=b`)).text();
    expect(svg).not.toMatch(/<script|<style|<foreignObject|\son\w+=|javascript:|href=/i);
  });

  test('tells faults as /v1/layout does', async () => {
    const query = `columns=4&rows=3&${two}&fixed.0=A`;
    const [picture, layout] = await Promise.all([ask(query), app.request(`/v1/layout?${query}`)]);
    expect(picture.status).toBe(422);
    expect(await picture.text()).toBe(await layout.text());
  });
});
