import { escapeText } from '#core/drawing/escape-text.ts';
import type { FrameWishes } from './read-wishes.ts';
import type { View } from './views.ts';
import { writeDiscovery } from './write-discovery.ts';

/** What a frame is made of. */
export interface Frame {
  /** Its own whole address. */
  readonly address: string;
  readonly title: string;
  /** Whether there is an answer in it, so that it can be embedded elsewhere too. */
  readonly isWhole: boolean;
  /** Absent where the address names no view, so that there is no element. */
  readonly view?: View;
  readonly query: string;
  readonly wishes: Pick<FrameWishes, 'lang' | 'locked' | 'currency'>;
  /** A style sheet, or nothing. */
  readonly style: string;
  /** HTML that stands inside the element until it runs. */
  readonly result: string;
}

/** A small page for a frame of somebody else’s: the element, with the result in it for where nothing runs. */
export function writeFrame(frame: Frame): string {
  const { address, title, view, isWhole, wishes, style, result } = frame;
  const named = escapeText(title);
  const links = isWhole ? writeDiscovery(address, title) : '';
  const scripts = view === undefined ? '' : '<script src="/embed/v1.js" async></script>';
  return (
    `<!doctype html><html lang="${wishes.lang ?? 'en'}"><head><meta charset="utf-8">` +
    '<meta name="viewport" content="width=device-width,initial-scale=1">' +
    `<meta name="robots" content="noindex"><title>${named}</title>` +
    `<link rel="stylesheet" href="/look/page.css">${style === '' ? '' : `<style>${style}</style>`}${links}` +
    `${scripts}<script src="/frame.js" async></script></head>` +
    `<body class="frame"><main><h1 class="unseen" lang="en">${named}</h1>` +
    `${view === undefined ? result : writeElement(frame, view)}</main></body></html>\n`
  );
}

function writeElement({ query, wishes, result }: Frame, view: View): string {
  const { locked, currency, lang } = wishes;
  const attributes = Object.entries({ preset: query || undefined, locked, currency, lang })
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${escapeText(value ?? '')}"`)
    .join('');
  const tag = `ragbloom-${view.name}`;
  return `<${tag} embedded${attributes}>${result}</${tag}>`;
}
