import { expect, vi } from 'vitest';
import { find } from './render.ts';
import { ToyElement } from './toy-element.ts';

/** How the service of the toys answers a query. */
export type Answering = (query: URLSearchParams, url: string) => Response | Promise<Response>;

/** Answers as the service would: canonically, one default left out, faults told. */
export const soundly: Answering = (query) => {
  const faults = [...query].filter(([, value]) => value === 'wide' || value === 'furlong');
  if (faults.length > 0) {
    const errors = faults.map(([path]) => ({
      code: 'not-a-length',
      pointer: `/${path.replaceAll('.', '/')}`,
    }));
    return Response.json({ errors }, { status: 422 });
  }
  const said = [...query].filter(([path, value]) => path !== 'unit' || value !== 'in').toSorted();
  const rope = { length: Number(query.get('rope.length')) };
  const search = new URLSearchParams(said);
  return Response.json({ input: { rope }, links: { self: `/v1/toy?${search}` } });
};

/** Lets a service answer the toys of a test, and gives what was asked of it. */
export function serveToys(answering: Answering = soundly): readonly string[] {
  const asked: string[] = [];
  const fetch = async (url: string) => {
    asked.push(url);
    return answering(new URL(url, location.href).searchParams, url);
  };
  vi.stubGlobal('fetch', fetch);
  if (customElements.get('ragbloom-toy') === undefined) {
    customElements.define('ragbloom-toy', ToyElement);
  }
  return asked;
}

/** Puts markup on the page and gives its first toy once nothing is under way. */
export async function openToy(markup = '<ragbloom-toy></ragbloom-toy>'): Promise<ToyElement> {
  document.body.innerHTML = markup;
  const toy = find<ToyElement>(document.body, 'ragbloom-toy');
  await settleToy(toy);
  return toy;
}

/** What a toy shows of itself. */
export interface Shown {
  readonly draft: Readonly<Record<string, string>>;
  readonly faults: readonly { readonly code: string; readonly path: readonly string[] }[];
  readonly hostFaults: readonly { readonly code: string; readonly path: readonly string[] }[];
  readonly trouble?: string;
  readonly from: string;
  readonly isBusy: boolean;
}

/** The inside of a toy. */
export function inside(toy: ToyElement): ShadowRoot {
  if (toy.shadowRoot === null) throw new Error('The toy has no root.');
  return toy.shadowRoot;
}

export function readToy(toy: ToyElement): Shown {
  return JSON.parse(find(inside(toy), 'output').textContent ?? '');
}

/** Waits until a toy has its answer or knows that there is none. */
export async function settleToy(toy: ToyElement): Promise<void> {
  await expect
    .poll(() => inside(toy).querySelector('output')?.textContent)
    .toMatch(/"isBusy":false/);
}
