import type { ElementScripts } from './bundle-elements.ts';

/** The tag before which a page's own are put. */
const SCRIPT = /^( *)<script src="\/embed\/v\d+\.js" async><\/script>\n/m;

/**
 * Has a page fetch beforehand what its elements load, so that it need not find that out step by step; last what they
 * fetch right after they show.
 *
 * @param folder where the scripts lie, with a slash at its end.
 */
export function fillPage(
  html: string,
  elements: readonly ElementScripts[],
  folder: string,
): string {
  const held = elements.filter(({ name }) => new RegExp(`<ragbloom-${name}[\\s>]`).test(html));
  const link = (how: string) => (file: string) =>
    `<link rel="modulepreload"${how} href="${folder}${file}">`;
  const first = new Set(held.flatMap((element) => element.first));
  const soon = new Set(held.flatMap((element) => element.soon));
  const links = [...[...first].map(link('')), ...[...soon].map(link(' fetchpriority="low"'))];
  return html.replace(SCRIPT, (tag, indent: string) =>
    [tag, ...links.map((link) => `${indent}${link}\n`)].join(''),
  );
}
