import { describe, expect, test } from 'vitest';
import { app } from '../../../api/app.ts';
import { VIEWS } from '../../../api/pages/views.ts';

const home = 'http://ours.test';
const ask = (address: string, more = '') =>
  app.request(`${home}/oembed?url=${encodeURIComponent(address)}${more}`);
const read = async (address: string, more = '') =>
  (await (await ask(address, more)).json()) as Record<string, string | number>;

describe('/oembed', () => {
  test('describes a plan as https://oembed.com, section 2.3.4.4, has it of rich', async () => {
    const answer = await ask(`${home}/?target.height=50&target.width=40`);
    expect(answer.status).toBe(200);
    expect(answer.headers.get('content-type')).toBe('application/json');
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(answer.headers.get('cache-control')).toContain('max-age=86400');
    expect(await answer.json()).toEqual({
      version: '1.0',
      type: 'rich',
      title: 'Rag quilt of 4 by 5 blocks, about 40 1/2 in by 50 1/8 in',
      provider_name: 'Ragbloom',
      provider_url: home,
      cache_age: 86_400,
      width: 700,
      height: 1000,
      html:
        '<iframe src="http://ours.test/embed/plan?target.width=40&amp;target.height=50" width="700" height="1000" ' +
        'frameborder="0" title="Rag quilt of 4 by 5 blocks, about 40 1/2 in by 50 1/8 in"></iframe>',
    });
  });
  test.each([
    [200, 200],
    [320, 5000],
    [2000, 480],
    [1, 1],
  ])('is at most %d wide and %d high where that is asked', async (width, height) => {
    const fields = await read(`${home}/`, `&maxwidth=${width}&maxheight=${height}`);
    expect(fields['width']).toBeLessThanOrEqual(width);
    expect(fields['height']).toBeLessThanOrEqual(height);
    expect(fields['html']).toContain(`width="${fields['width']}" height="${fields['height']}"`);
  });
  test.each(VIEWS)(
    'frames $name by its page and by its frame, with what the frame was asked',
    async ({ name, page }) => {
      const frame = `${home}/embed/${name}`;
      const source = (await read(`${frame}?_lang=de&_locked=unit`))['html'];
      expect(source).toContain(`src="${frame}?_lang=de&amp;_locked=unit"`);
      if (page !== undefined)
        expect((await read(`${home}${page}`))['html']).toContain(`src="${frame}"`);
    },
  );
  test('passes over what other sites append to the address of a page', async () => {
    expect((await read(`${home}/?target.size=lap&fbclid=a`))['html']).toContain(
      'src="http://ours.test/embed/plan?target.size=lap"',
    );
  });
  test('frames what is appended and nothing else as what it is, the example', async () => {
    expect((await read(`${home}/?fbclid=a`))['html']).toContain(
      'src="http://ours.test/embed/plan"',
    );
  });
  test.each([
    ['https', 'http'],
    ['http', 'https'],
    ['https', 'https'],
  ])('asked over %s for an address of %s, frames over https', async (by, of) => {
    const url = encodeURIComponent(`${of}://ours.test/`);
    const fields = (await (await app.request(`${by}://ours.test/oembed?url=${url}`)).json()) as {
      readonly html: string;
      readonly provider_url: string;
    };
    expect(fields.provider_url).toBe('https://ours.test');
    expect(fields.html).toContain('src="https://ours.test/embed/plan"');
  });
  test.each([
    ['of another host', 'http://other.test/', '', 404, 'not-found'],
    ['of no page to share', `${home}/api`, '', 404, 'not-found'],
    ['in another format', `${home}/`, '&format=yaml', 501, 'unknown-format'],
    ['of a plan that cannot be', `${home}/?target.width=40`, '', 422, 'missing'],
    ['of a frame with a wish unknown', `${home}/embed/plan?_lang=it`, '', 422, 'not-one-of'],
    ['of nothing', '', '', 422, 'missing'],
  ])('refuses an address %s', async (_, address, more, status, kind) => {
    const answer = await ask(address, more);
    expect(answer.status).toBe(status);
    expect(answer.headers.get('content-type')).toBe('application/problem+json');
    expect(await answer.json()).toMatchObject({ type: `/problems/${kind}`, status });
  });
  test('has no markup of an address in its HTML but the frame', async () => {
    const bad = encodeURIComponent('"><script>alert(1)</script>');
    const fields = await read(
      `${home}/embed/yardage?fabrics.0.id=${bad}&fabrics.0.width=42&fabrics.0.pieces.0.id=a&fabrics.0.pieces.0.width=8&fabrics.0.pieces.0.length=8&fabrics.0.pieces.0.count=4`,
    );
    expect(fields['title']).toContain('"><script>');
    expect(`${fields['html']}`.match(/</g)?.length).toBe(2);
  });
  test('counts towards the limit of rate, and answers 304 and 405', async () => {
    const path = `${home}/oembed?url=${encodeURIComponent(`${home}/`)}`;
    const RATE_LIMIT = { limit: async () => ({ success: false }) };
    expect((await app.request(path, {}, { RATE_LIMIT })).status).toBe(429);
    const tag = (await app.request(path)).headers.get('etag') ?? '';
    expect((await app.request(path, { headers: { 'If-None-Match': tag } })).status).toBe(304);
    expect((await app.request(path, { method: 'POST' })).status).toBe(405);
  });
});
