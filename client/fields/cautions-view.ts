import { html, type TemplateResult } from 'lit';
import type { SaidCaution } from '../text/cautions/en.ts';
import type { LightWords } from '../text/light/source.ts';

/**
 * Cautions, what is dangerous framed.
 *
 * @param say the words of one in the reader's language.
 */
export function cautionsView(
  words: LightWords,
  cautions: readonly SaidCaution[],
  say: (caution: SaidCaution) => string,
): TemplateResult {
  return html`<ul part="cautions">
    ${cautions.map(
      (caution) => html`<li class=${caution.severity === 'danger' ? 'notice' : 'soft'}>
        <strong>${words.severities[caution.severity]}.</strong> ${say(caution)}
      </li>`,
    )}
  </ul>`;
}
