import type { FrameWishes } from './read-wishes.ts';

/**
 * The style sheet of a frame that has a look of its own, or nothing.
 *
 * @param wishes colours as {@link readWishes} lets them pass, so that nothing else gets into the sheet
 * @example
 * writeStyle({ scheme: 'dark', colors: [['ink', '#ffffff']] }) // => ':root{color-scheme:dark;--ragbloom-ink:#ffffff}'
 * writeStyle({ colors: [] }) // => ''
 */
export function writeStyle({ scheme, colors }: Pick<FrameWishes, 'scheme' | 'colors'>): string {
  const rules = [
    ...(scheme === undefined ? [] : [`color-scheme:${scheme}`]),
    ...colors.map(([name, color]) => `--ragbloom-${name}:${color}`),
  ];
  return rules.length === 0 ? '' : `:root{${rules.join(';')}}`;
}

/** What a Content Security Policy calls a style by: the SHA-256 of its text. */
export async function hashStyle(style: string): Promise<string> {
  const digest = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(style));
  return `sha256-${btoa(String.fromCharCode(...new Uint8Array(digest)))}`;
}
