import { afterEach, expect, test } from 'vitest';
import { loadFile } from '../../../client/embed/load-file.ts';

const links = () => document.head.querySelectorAll<HTMLLinkElement>('link[integrity]');
afterEach(() => {
  for (const link of links()) link.remove();
});

/** A script made on the spot. */
const make = (code: string) => URL.createObjectURL(new Blob([code], { type: 'text/javascript' }));
async function sign(code: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-384', new TextEncoder().encode(code));
  return `sha384-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}

test('loadFile(address) runs a script and gives what it exports', async () => {
  expect(await loadFile(make('export const a = 1;'))).toMatchObject({ a: 1 });
  expect(links()).toHaveLength(0);
});

test('loadFile(address, integrity) runs a script whose bytes are right', async () => {
  const code = 'export const a = 2;';
  expect(await loadFile(make(code), await sign(code))).toMatchObject({ a: 2 });
});

test('loadFile(address, integrity) runs no script whose bytes are others', async () => {
  const address = make('globalThis.ragbloomRan = true;');
  await expect(loadFile(address, await sign('something else'))).rejects.toThrow();
  expect(globalThis).not.toHaveProperty('ragbloomRan');
});
