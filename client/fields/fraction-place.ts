import { html, type TemplateResult } from 'lit';

/**
 * Where the eighths show below an entry while a finger is at it.
 *
 * @param id of the entry.
 * @param label names the entry that they act on.
 */
export function fractionPlace(id: string, label: string): TemplateResult {
  return html`<div class="fractions" role="group" aria-label=${label} id="${id}-fractions"></div>`;
}

/** Fetches the eighths for an entry that a finger has come to, and again the next time where they cannot be had. */
export function offerFractions({ currentTarget }: Event): void {
  const input = currentTarget as HTMLInputElement;
  const place = (input.getRootNode() as ShadowRoot).getElementById(`${input.id}-fractions`);
  if (place === null || !matchMedia('(pointer:coarse)').matches) return;
  import('./draw-fractions.ts').then(
    ({ drawFractions }) => drawFractions(place, input),
    () => {},
  );
}
