/** What of a frame the strictest blogs keep: these attributes of a frame, and no other tag at all. */
const KEPT = [
  ...['src', 'width', 'height', 'frameborder', 'marginwidth', 'marginheight', 'scrolling', 'title'],
];

/**
 * Does to the HTML of an oEmbed answer what the filter of a wide-spread blog software does to that of an unknown
 * provider: a bare frame survives with few of its attributes, gets a class and a sandbox in which scripts may run and
 * nothing else may, and a secret behind its address. Written from the published description of
 * `wp_filter_oembed_result` and of the script `wp-embed` (developer.wordpress.org), none of whose code is used.
 *
 * @returns nothing where no frame survives
 */
export function filterEmbed(html: string, secret: string): string | undefined {
  const [frame, ...more] = html.match(/<iframe[^>]*>\s*<\/iframe>/g) ?? [];
  if (frame === undefined || more.length > 0) return undefined;
  const attributes = [...frame.matchAll(/ ([a-z]+)="([^"]*)"/g)]
    .filter(([, name]) => KEPT.includes(name ?? ''))
    .map(([, name, value]) =>
      name === 'src' ? `src="${value}#?secret=${secret}"` : `${name}="${value}"`,
    );
  return `<iframe class="wp-embedded-content" sandbox="allow-scripts" security="restricted" data-secret="${secret}" ${attributes.join(' ')}></iframe>`;
}
