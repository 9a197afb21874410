import type { ElementScripts } from './bundle-elements.ts';

/** The tag before which a page's own are put. */
const SCRIPT = /^( *)<script src="\/embed\/v\d+\.js" async><\/script>\n/m;

/**
 * Has a page fetch beforehand what its elements load, so that it need not find that out step by step.
 *
 * @param folder where the scripts lie, with a slash at its end.
 */
export function fillPage(
  html: string,
  elements: readonly ElementScripts[],
  folder: string,
): string {
  const held = elements.filter(({ name }) => new RegExp(`<ragbloom-${name}[\\s>]`).test(html));
  const files = [...new Set(held.flatMap(({ first }) => first))];
  const links = files.map((file) => `<link rel="modulepreload" href="${folder}${file}">`);
  return html.replace(SCRIPT, (tag, indent: string) =>
    [tag, ...links.map((link) => `${indent}${link}\n`)].join(''),
  );
}
