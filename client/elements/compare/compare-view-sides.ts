import { html, type TemplateResult } from 'lit';
import { drawQuilt } from '#core/drawing/draw-quilt.ts';
import { drawingView } from '../../drawing/drawing-view.ts';
import { fieldView } from '../../fields/field-view.ts';
import type { CompareContext } from './compare-context.ts';
import type { Side, SideName } from './compare-state.ts';
import type { Doubling } from './double-plan.ts';
import { frameAlike } from './frame-alike.ts';
import { listFigures } from './list-figures.ts';
import { sayMeasure } from './say-measure.ts';

const DOUBLINGS: readonly Doubling[] = ['long', 'both'];

/** Where one of the two plans is named, and what can be made of it. */
export function askView(context: CompareContext, name: SideName): TemplateResult {
  const { state, words, act, api, tell } = context;
  const { typed, faults, answer } = state[name];
  const { compare } = words;
  const isLocked = context.isLocked(name);
  const [fault] = faults;
  return html`<div class="stack">
    ${fieldView(
      { id: name, label: compare.plans[name], fault: fault && tell(fault) },
      ({ id, invalid, by }) => html`<input
        id=${id}
        type="text"
        inputmode="url"
        autocomplete="off"
        spellcheck="false"
        placeholder=${compare.hint}
        .value=${typed}
        ?readonly=${isLocked}
        aria-invalid=${invalid}
        aria-describedby=${by}
        @input=${({ target }: InputEvent) => act.type(name, (target as HTMLInputElement).value)}
      />`,
    )}
    ${
      answer === undefined
        ? ''
        : html`<div class="chips off" role="group" aria-label="${compare.double}: ${compare.plans[name]}">
            ${DOUBLINGS.map(
              (doubling) =>
                html`<button ?disabled=${!context.canDouble(name)} @click=${() => act.double(name, doubling)}>${compare.doublings[doubling]}</button>`,
            )}
            <a part="link" href=${api + answer.links.page}>${compare.open}</a>
          </div>`
    }
  </div>`;
}

/** Both quilts as they come out of the wash, at one scale and measured in one unit. */
export function drawingsView(context: CompareContext): TemplateResult {
  const { state, words, telling } = context;
  const sides = (['a', 'b'] as const).flatMap((name) => nameSide(name, state[name]));
  const framed = frameAlike(sides.map(({ answer }) => drawQuilt(answer, 'washed', telling.unit)));
  return html`<div class="pair" part="drawing">
      ${sides.map(({ name, answer }, at) => {
        const { width = 0, height = 0 } = listFigures(answer);
        const size = [width, height].map((side) => sayMeasure('length', side, telling));
        const label = words.compare.drawing(words.compare.plans[name], size.join(' × '));
        const drawing = framed[at];
        return html`<figure class=${name}>
          ${drawing && drawingView(drawing, 'picture', label)}
          <figcaption>${words.compare.plans[name]}</figcaption>
        </figure>`;
      })}
    </div>
    ${sides.length > 1 ? html`<p class="soft">${words.compare.scale}</p>` : ''}`;
}

function nameSide(name: SideName, { answer }: Side) {
  return answer === undefined ? [] : [{ name, answer }];
}
