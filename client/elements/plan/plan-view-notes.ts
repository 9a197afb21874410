import { html, type TemplateResult } from 'lit';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { foldView } from '../../fields/fold-view.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { LENGTHS } from '../../fields/switch-unit.ts';
import { writeEntry } from '../../fields/write-figures.ts';
import { cautionsList } from './cautions-list.ts';
import type { MakingContext } from './plan-context.ts';
import { sayCaution } from './say-caution.ts';

type Step = NonNullable<ShownPlan['why']>[number];

/** What wants care; what is merely good to know is folded away. */
export function cautionsView(context: MakingContext, answer: ShownPlan): TemplateResult {
  const { text } = context;
  const list = (severity: 'care' | 'note') =>
    cautionsList(context, answer, { severity, say: sayCaution });
  return sheetView(
    'cautions',
    text.making.notes.cautions,
    html`${list('care')}
      ${foldView({ title: text.severities.note, body: list('note') })}`,
  );
}

/** What was taken for granted, and how each figure is reckoned. */
export function groundsView(context: MakingContext, answer: ShownPlan): TemplateResult {
  const { text, state, act } = context;
  const { assumptions, why } = answer;
  const explain = (isOpen: boolean) => {
    if (isOpen && state.draft.explain !== 'true') act.set('explain', 'true');
  };
  return html`<section part="grounds">
    ${foldView({
      title: text.making.notes.assumptions,
      body: html`<ul class="lines" lang="en">
        ${assumptions.map((assumption) => assumptionView(context, assumption))}
      </ul>`,
    })}
    ${foldView({
      title: text.making.notes.why,
      isOpen: why !== undefined,
      onToggle: explain,
      body:
        why &&
        Object.entries(Object.groupBy(why, ({ path }) => path.split('.')[0] ?? '')).map(
          ([name, steps = []]) => sectionView(text.making.section(name), steps),
        ),
    })}
  </section>`;
}

/** A reason, and the figure or the word where there is one: what is merely so or not, the reason has said. */
function assumptionView(
  { said: unit }: MakingContext,
  { path, value, why, source }: ShownPlan['assumptions'][number],
): TemplateResult {
  // Of minutes, grams and millimetres the reason says so.
  const measure = /shrink\.|^spare/.test(path) ? '%' : LENGTHS.test(path) ? unit : '';
  const figure =
    typeof value === 'number'
      ? `${writeEntry(value, measure === 'in' ? 'in' : 'cm')} ${measure}`.trim()
      : typeof value === 'string' && typesetFractions(value);
  return html`<li>
    ${typesetFractions(why)}${figure && html`: <b>${figure}</b>`}<small>${source}</small>
  </li>`;
}

/** The steps that lead to the figures of one section of the plan. */
function sectionView(title: string, steps: readonly Step[]): TemplateResult {
  return foldView({
    title,
    body: html`<ul class="lines" lang="en" tabindex="0" aria-label=${title}>
      ${steps.map(
        ({ path, formula, numbers, value, source }) => html`<li>
          <b>${path} = ${value}</b>
          <span>${formula}</span>
          <span>${Object.entries(numbers)
            .map(([name, number]) => `${name} ${number}`)
            .join(', ')}</span>
          <small>${source}</small>
        </li>`,
      )}
    </ul>`,
  });
}
