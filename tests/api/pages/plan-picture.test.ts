import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';

const ask = (query: string) => app.request(`/v1/plan.svg?${query}`);

describe('/v1/plan.svg', () => {
  test('draws the plan of the same query, named and described', async () => {
    const answer = await ask('target.columns=4&target.rows=5');
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('image/svg+xml');
    const svg = await answer.text();
    expect(svg).toMatch(/^<svg xmlns="http:\/\/www.w3.org\/2000\/svg" viewBox="[^"]+" role="img"/);
    expect(svg).toMatch(/<title[^>]*>Rag quilt of 4 by 5 blocks, .* in by .* in<\/title>/);
    expect(svg).toContain('20 blocks cut');
  });
  test('says centimetres to who asks in centimetres', async () => {
    expect(await (await ask('unit=cm&target.width=100&target.height=120')).text()).toMatch(
      /<title[^>]*>[^<]* cm by [^<]* cm<\/title>/,
    );
  });
  test('has no script and no handler, whatever a print is called', async () => {
    const id = encodeURIComponent('"><script>alert(1)</script>');
    const answer = await ask(
      `target.columns=2&target.rows=2&layers.0.role=top&layers.0.prints.0.id=${id}&layers.1.role=backing`,
    );
    const svg = await answer.text();
    expect(answer.status).toBe(200);
    expect(svg).not.toMatch(/<script|<style|<foreignObject|\son\w+=|javascript:|href=/i);
  });
  test('tells faults as /v1/plan does', async () => {
    const query = 'target.width=40&target.height=50&block.cut=4&block.seam=2';
    const [picture, plan] = await Promise.all([ask(query), app.request(`/v1/plan?${query}`)]);
    expect(picture.status).toBe(422);
    expect(await picture.text()).toBe(await plan.text());
  });
});
