import { html, type TemplateResult } from 'lit';
import { writeCompared } from '../../data/compared-plans.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { writeLayoutAddress } from '../../data/layout-address.ts';
import { wearStyles } from '../../look/wear-styles.ts';
import { type Language, loadText } from '../../text/languages.ts';
import { makingText } from '../../text/making-text.ts';
import { BELOW_STYLES } from './below-styles.ts';
import type { SayCaution } from './cautions-list.ts';
import type { MakingContext, PlanContext } from './plan-context.ts';
import { blocksView, clothView } from './plan-view-make.ts';
import { cautionsView, groundsView } from './plan-view-notes.ts';
import { factsView, shoppingView } from './plan-view-sheets.ts';
import { workView } from './plan-view-work.ts';
import { sayCaution } from './say-caution.ts';

/** What comes after the first screen. */
export interface Below {
  /** What lies below it: what the quilt is made of, then the sheets; on a page of ours the ways on with this plan. */
  readonly view: (context: PlanContext, hasWays: boolean) => TemplateResult;
  /** Says cautions with the figures that they name. */
  readonly sayCaution: SayCaution;
}

/**
 * Makes ready what lies below the first screen, in a language and dressed. It comes after the first screen, so that
 * this shows early.
 */
export async function startBelow(root: ShadowRoot, language: Language): Promise<Below> {
  const words = await loadText(makingText, language);
  wearStyles(root, BELOW_STYLES);
  const view: Below['view'] = (context, hasWays) =>
    belowView({ ...context, text: { ...context.text, ...words } }, hasWays);
  return { view, sayCaution };
}

function belowView(context: MakingContext, hasWays: boolean): TemplateResult {
  const { answer, aside } = context.state;
  return html`<div class="part make">${blocksView(context)}${clothView(context)}</div>
    ${answer && sheetsView(context, answer, hasWays)} ${answer && aside?.(context, answer)}`;
}

function sheetsView(context: MakingContext, answer: ShownPlan, hasWays: boolean): TemplateResult {
  const { text, act } = context;
  return html`<div class="part sheets">
    <div class="part">
      ${shoppingView(context, answer)}${factsView(context, answer)}${cautionsView(context, answer)}
    </div>
    <div class="part">
      ${workView(context, answer)}${groundsView(context, answer)}
      <button @click=${act.print}>${text.print}</button>
      ${hasWays ? waysView(context, answer) : ''}
    </div>
  </div>`;
}

/** Where else this very plan can be taken: to the counter, beside another one, and its blocks to the floor. */
function waysView({ text }: MakingContext, answer: ShownPlan): TemplateResult {
  const query = answer.links.page.slice(answer.links.page.indexOf('?') + 1);
  const ways = [
    [text.making.ways.counter, `/counter?${query}`],
    [text.making.ways.compare, `/compare?${writeCompared({ a: query, b: '' })}`],
    [text.making.ways.layout, writeLayoutAddress(answer)],
  ] as const;
  return html`<nav class="ways off" aria-label=${text.making.ways.title}>
    ${ways.map(([name, href]) => (href === undefined ? '' : html`<a href=${href}>${name}</a>`))}
  </nav>`;
}
