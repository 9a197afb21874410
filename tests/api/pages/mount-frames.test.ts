import { Hono } from 'hono';
import { describe, expect, test, vi } from 'vitest';
import { answerRequest, app } from '../../../api/app.ts';
import { RATE_LIMIT_POLICY, type Surroundings } from '../../../api/http/limit-rate.ts';
import { mountFrames } from '../../../api/pages/mount-frames.ts';
import { VIEWS } from '../../../api/pages/views.ts';

const ask = (path: string, init?: RequestInit, surroundings?: Surroundings['Bindings']) =>
  app.request(`http://ours.test/embed/${path}`, init, surroundings);

/** What keeps a page out of a frame: a header of old, or a directive that names who may. */
function isFramable({ headers }: Response): boolean {
  const policy = headers.get('content-security-policy') ?? '';
  return !headers.has('x-frame-options') && policy.includes('frame-ancestors *');
}

describe('/embed/<view>', () => {
  test.each(VIEWS)(
    '$name may be framed by anybody, and has its element with a result in it',
    async ({ name }) => {
      const answer = await ask(name);
      expect([answer.status, isFramable(answer)]).toEqual([200, true]);
      expect(answer.headers.get('content-security-policy')).not.toContain('unsafe');
      expect(answer.headers.get('cache-control')).toContain('max-age=3600');
      const html = await answer.text();
      expect(html).toMatch(
        new RegExp(`<ragbloom-${name} embedded><div class="told".*<table>.*</form>`),
      );
      expect(html).toContain('application/json+oembed');
      expect(html).toContain('text/xml+oembed');
    },
  );
  test('names its own origin beside self, for a sandbox in which self is nobody', async () => {
    const policy = (await ask('plan')).headers.get('content-security-policy') ?? '';
    for (const directive of ['script-src', 'style-src', 'img-src', 'connect-src', 'form-action']) {
      expect(policy).toContain(`${directive} 'self' http://ours.test`);
    }
  });
  test('lets one style pass by its digest where a look is asked for', async () => {
    const answer = await ask('plan?_ink=112233');
    expect(answer.headers.get('content-security-policy')).toMatch(
      /style-src [^;]*'sha256-[\w+/=]{44}'/,
    );
    expect(await answer.text()).toContain('<style>:root{--ragbloom-ink:#112233}</style>');
    expect((await ask('plan')).headers.get('content-security-policy')).not.toContain('sha256');
  });
  test('hands its query to the element as it was asked, without what is for the frame', async () => {
    const html = await (await ask('plan?target.size=lap&_locked=block&_lang=fr')).text();
    expect(html).toContain('preset="target.size=lap" locked="block" lang="fr"');
  });
  test.each([
    ['plan?target.width=x&target.height=50', 422, 'which is no length'],
    ['plan?target.size=lap&target.size=cot', 400, 'given more than once'],
    ['plan?target.size=lap&_lang=it', 422, 'give one of en, es, de or fr'],
    ['wash?nonsense=1', 422, 'not known here'],
    [`plan?${'a'.repeat(9000)}`, 400, 'cannot be read'],
    ['nothing', 404, 'no such view'],
  ])('%.40s says what is wrong in words that can be framed', async (path, status, words) => {
    const answer = await ask(path);
    expect([answer.status, isFramable(answer)]).toEqual([status, true]);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('cache-control')).toBe('no-store');
    const html = await answer.text();
    expect(html).toContain(words);
    expect(html).not.toContain('+oembed');
  });
  test('says so in a frame where there were too many requests', async () => {
    const RATE_LIMIT = { limit: async () => ({ success: false }) };
    const answer = await ask('plan', {}, { RATE_LIMIT });
    expect([answer.status, isFramable(answer)]).toEqual([429, true]);
    expect(answer.headers.get('retry-after')).toBe('60');
    expect(await answer.text()).toContain('wait 60 seconds');
  });
  test('tells the policy on every answer that counts, and counts what is held again', async () => {
    const keys: string[] = [];
    const RATE_LIMIT = { limit: async () => ({ success: keys.push('') <= 3 }) };
    for (const path of ['plan?target.size=cot', 'plan?target.size=x', 'plan?target.size=cot']) {
      const answer = await answerRequest(new Request(`http://held.test/embed/${path}`), {
        RATE_LIMIT,
      });
      expect(answer.headers.get('ratelimit-policy')).toBe(RATE_LIMIT_POLICY);
    }
    expect(keys.length).toBe(3);
    const request = new Request('http://held.test/embed/plan?target.size=cot');
    const refused = await answerRequest(request, { RATE_LIMIT });
    expect([refused.status, isFramable(refused), keys.length]).toEqual([429, true, 4]);
    expect(await refused.text()).toContain('wait 60 seconds');
  });
  test('says so in a frame where the service fails, and tells nothing of the inside', async () => {
    const log = vi.spyOn(console, 'error').mockImplementation(() => undefined);
    const broken = new Hono<Surroundings>();
    mountFrames(broken, []);
    const answer = await broken.request('http://ours.test/embed/plan');
    expect([answer.status, isFramable(answer)]).toEqual([500, true]);
    const html = await answer.text();
    expect(html).toContain('urn:uuid:');
    expect(html).not.toContain('No endpoint');
    log.mockRestore();
  });
  test('lets no markup of an address through', async () => {
    const bad = encodeURIComponent('"><img src=x onerror=alert(1)>');
    for (const path of [
      `plan?target.width=${bad}`,
      `plan?${bad}=1`,
      `plan?_lang=${bad}`,
      `plan?target.size=lap&layers.0.role=top&layers.0.prints.0.id=${bad}&layers.1.role=backing`,
    ]) {
      expect(await (await ask(path)).text()).not.toContain('<img src=x');
    }
  });
  test('is answered 304, HEAD, OPTIONS and 405 as other addresses are', async () => {
    const tag = (await ask('plan')).headers.get('etag') ?? '';
    expect((await ask('plan', { headers: { 'If-None-Match': tag } })).status).toBe(304);
    const head = await ask('plan', { method: 'HEAD' });
    expect([head.status, await head.text()]).toEqual([200, '']);
    expect((await ask('plan', { method: 'OPTIONS' })).headers.get('allow')).toBe(
      'GET, HEAD, OPTIONS',
    );
    expect((await ask('plan', { method: 'POST' })).status).toBe(405);
  });
  test('leaves files of the same folder to whoever serves them', async () => {
    for (const path of ['v1.js', 'manifest.json', '1.0.0/embed.js']) {
      expect(await (await ask(path)).text()).not.toContain('no such view');
    }
  });
});
