/** Pixels that a blog makes a frame at least and at most, as it clamps what it is told. */
const KEPT = { least: 200, most: 1000 } as const;

/**
 * Tells the page around a frame how high the frame should be, whenever that changes, and what the element in it
 * answered. Nothing in a message is secret, and any page may frame this one, so it goes to whoever is around.
 *
 * - `{ type: 'ragbloom-height', view, height }`: pixels that all of it needs.
 * - `{ type: 'ragbloom-answer', view, query, answer, from }`: the event of the element, and the canonical query.
 * - `{ secret, message: 'height', value }`: the same height as blogs of one wide-spread kind ask for it, by a secret
 *   behind the address (`#?secret=…`) or in a message `{ message: 'ready', secret }`; from 200 to 1000.
 *
 * @param around the window of the page around.
 */
export function tellHeight(around: Window): void {
  const { documentElement: root } = document;
  const view = document.body.querySelector('[embedded]')?.localName.replace('ragbloom-', '') ?? '';
  let secret = readSecret(location.hash);
  const tell = () => {
    const height = Math.ceil(root.getBoundingClientRect().height);
    around.postMessage({ type: 'ragbloom-height', view, height }, '*');
    const value = Math.min(KEPT.most, Math.max(KEPT.least, height));
    if (secret !== '') around.postMessage({ secret, message: 'height', value }, '*');
  };
  addEventListener('message', ({ source, data }: MessageEvent<unknown>) => {
    if (source !== around || !isReady(data)) return;
    secret = readSecret(`#?secret=${data.secret}`) || secret;
    tell();
  });
  addEventListener('hashchange', () => {
    secret = readSecret(location.hash);
    tell();
  });
  document.addEventListener(`ragbloom-${view}`, (event) => {
    const { answer, from } = (event as CustomEvent<Detail>).detail;
    const query = answer.links.self.split('?')[1] ?? '';
    around.postMessage({ type: 'ragbloom-answer', view, query, answer, from }, '*');
  });
  new ResizeObserver(tell).observe(root);
}

interface Detail {
  readonly answer: { readonly links: { readonly self: string } };
  readonly from: string;
}

/** Blogs make secrets of letters and digits, and take no other back. */
function readSecret(hash: string): string {
  return /^#\?secret=([A-Za-z0-9]{1,64})$/.exec(hash)?.[1] ?? '';
}

function isReady(data: unknown): data is { readonly secret: unknown } {
  return (
    typeof data === 'object' &&
    data !== null &&
    'message' in data &&
    data.message === 'ready' &&
    'secret' in data
  );
}
