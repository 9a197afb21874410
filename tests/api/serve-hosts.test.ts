import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type Hosts, serveHosts } from '../../api/serve-hosts.ts';

let hosts: Hosts;
beforeAll(async () => {
  hosts = await serveHosts('http://ours.test', 0);
});
afterAll(() => hosts.stop());
const ask = (path: string, init?: RequestInit) => fetch(`${hosts.origin}${path}`, init);

describe('serveHosts', () => {
  test.each(['/', '/shop', '/tutorial', '/cart'])(
    'serves %s with the service where it is',
    async (path) => {
      const answer = await ask(path);
      expect(answer.status).toBe(200);
      expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
      const html = await answer.text();
      expect(html).toContain('invented');
      expect(html).not.toContain('localhost');
      expect(html).not.toContain('hostile.css');
    },
  );
  test('keeps a policy under which nothing inline runs', async () => {
    const policy = (await ask('/shop')).headers.get('content-security-policy') ?? '';
    expect(policy).toContain("script-src 'self' http://ours.test; style-src 'self';");
    expect(policy).toContain("require-trusted-types-for 'script'");
    expect(policy).not.toContain('unsafe');
  });
  test('puts hostile styles behind its own where that is asked for', async () => {
    const html = await (await ask('/tutorial?css=hostile')).text();
    expect(html.indexOf('hostile.css')).toBeGreaterThan(html.indexOf('host.css'));
    expect((await ask('/hostile.css')).headers.get('content-type')).toBe('text/css; charset=utf-8');
  });
  test('shows in the cart what a form sent, as text', async () => {
    const body = new URLSearchParams({ plan: 'target.size=lap&unit=cm', count: '<b>2' });
    const html = await (await ask('/cart', { method: 'POST', body })).text();
    expect(html).toContain('plan: target.size=lap&amp;unit=cm\ncount: &lt;b>2');
  });
  test('has nothing else', async () => {
    expect((await ask('/../shop.js/x')).status).toBe(404);
    expect((await ask('/bolts.json')).status).toBe(404);
  });
});
