import { html, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownPlan } from '../../data/plan-answer-schema.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import type { PlanContext } from './plan-context.ts';

type Caution = ShownPlan['cautions'][number];

/** What is dangerous, where nobody passes it by. */
export function dangersView(context: PlanContext, answer: ShownPlan): TemplateResult {
  return listView(context, answer, 'danger');
}

/** What wants care; what is merely good to know is folded away. */
export function cautionsView(context: PlanContext, answer: ShownPlan): TemplateResult {
  const { text } = context;
  return sheetView(
    'cautions',
    text.notes.cautions,
    html`${listView(context, answer, 'care')}
      <details>
        <summary>${text.severities.note}</summary>
        ${listView(context, answer, 'note')}
      </details>`,
  );
}

function listView(
  { text }: PlanContext,
  { cautions }: ShownPlan,
  severity: Caution['severity'],
): TemplateResult {
  return html`<ul class="lines">
    ${cautions
      .filter((caution) => caution.severity === severity)
      .map((caution) => cautionView(text.severities[severity], caution))}
  </ul>`;
}

function cautionView(word: string, { severity, text, source }: Caution): TemplateResult {
  return html`<li class=${severity}>
    ${severity === 'note' ? '' : html`<strong>${word}.</strong>`} ${typesetFractions(text)}
    <small>${source}</small>
  </li>`;
}

/** What was taken for granted, and how each figure is reckoned. */
export function groundsView(context: PlanContext, answer: ShownPlan): TemplateResult {
  const { text, state, act } = context;
  const explain = ({ target }: Event) => {
    const isNew = (target as HTMLDetailsElement).open && state.draft.explain !== 'true';
    if (isNew) act.set('explain', 'true');
  };
  return html`<section part="grounds">
    <details>
      <summary>${text.notes.assumptions}</summary>
      <ul class="lines">
        ${answer.assumptions.map(
          ({ value, why, source }) =>
            html`<li>${typesetFractions(why)}: <b>${String(value)}</b><small>${source}</small></li>`,
        )}
      </ul>
    </details>
    <details ?open=${answer.why !== undefined} @toggle=${explain}>
      <summary>${text.notes.why}</summary>
      <ul class="lines">
        ${answer.why?.map(
          ({ path, formula, numbers, value, source }) => html`<li>
            <b>${path} = ${value}</b>
            <span>${formula}</span>
            <span>${Object.entries(numbers)
              .map(([name, number]) => `${name} ${number}`)
              .join(', ')}</span>
            <small>${source}</small>
          </li>`,
        )}
      </ul>
    </details>
  </section>`;
}
