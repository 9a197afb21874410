import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { answerNotFound } from '../../../api/pages/answer-not-found.ts';

const BROWSER = 'text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8';

function ask(path: string, accept = '*/*'): Response {
  return answerNotFound(new Request(`http://ours.test${path}`, { headers: { Accept: accept } }));
}

describe('answerNotFound', () => {
  test.each(['*/*', 'application/json', ''])(
    'tells a program that takes “%s” by a problem',
    async (accept) => {
      const answer = ask('/nope', accept);
      expect(answer.status).toBe(404);
      expect(answer.headers.get('content-type')).toBe('application/problem+json');
      expect(answer.headers.get('vary')).toBe('Accept');
      expect(await answer.json()).toMatchObject({ type: '/problems/not-found', status: 404 });
    },
  );

  test('shows a browser a page without scripts, which nobody keeps or frames', async () => {
    const answer = ask('/nope', BROWSER);
    expect(answer.status).toBe(404);
    expect(answer.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(answer.headers.get('vary')).toBe('Accept');
    expect(answer.headers.get('cache-control')).toBe('no-store');
    expect(answer.headers.get('access-control-allow-origin')).toBe('*');
    expect(answer.headers.get('content-security-policy')).toContain("frame-ancestors 'none'");
    expect(await answer.text()).not.toContain('nope');
  });

  test('leads on to every page that there is', async () => {
    const html = await ask('/nope', BROWSER).text();
    const links = [...html.matchAll(/<a href="\/([a-z]*)">/g)].map(([, name]) => name || 'index');
    const pages = readdirSync('client/pages').filter((name) => name.endsWith('.html'));
    expect(links.map((name) => `${name}.html`).sort()).toEqual(pages.sort());
  });

  test('tells a browser too by a problem where only calculations are', () => {
    expect(ask('/v1/nope', BROWSER).headers.get('content-type')).toBe('application/problem+json');
    expect(ask('/v1x', BROWSER).headers.get('content-type')).toBe('text/html; charset=utf-8');
  });
});
