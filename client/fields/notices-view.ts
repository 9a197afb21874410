import { html, type TemplateResult } from 'lit';
import type { LightWords } from '../text/light/source.ts';

/** What may stand between a question and its answer. */
export interface Notices {
  readonly words: LightWords;
  /** What the page asked for and cannot be had, by place. */
  readonly odd: readonly string[];
  readonly trouble: keyof LightWords['trouble'] | undefined;
  /** The figures shown are not those of what was typed last. */
  readonly isOld: boolean;
  /** Who worked the answer out, where there is one. */
  readonly from: 'service' | 'device' | undefined;
  readonly retry: () => void;
}

/** Says it in a region that is there before anything is said in it, so that it is heard. */
export function noticesView({ words, odd, trouble, ...rest }: Notices): TemplateResult {
  const notice = (isSaid: boolean, said: unknown) =>
    isSaid ? html`<div class="notice">${said}</div>` : '';
  return html`<div part="notices" role="alert">
    ${notice(odd.length > 0, html`<p>${words.host} ${odd.join(', ')}</p>`)}
    ${notice(
      trouble !== undefined,
      html`<p>${trouble && words.trouble[trouble]} ${rest.isOld ? words.stale : ''}</p>
        <button @click=${rest.retry}>${words.retry}</button>`,
    )}
    ${notice(trouble === undefined && rest.isOld, html`<p>${words.stale}</p>`)}
    ${notice(rest.from === 'device' && trouble === undefined, html`<p>${words.device}</p>`)}
  </div>`;
}
