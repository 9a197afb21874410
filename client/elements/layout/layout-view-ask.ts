import { html, type TemplateResult } from 'lit';
import type { LayoutPattern, Touch } from '#core/contract.ts';
import { findPrintLook } from '#core/drawing/find-print-look.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { SIZE_LIMITS } from '#core/limits.ts';
import { editDraft } from '../../data/draft.ts';
import { changePrints, type LayoutDraft, writePins } from '../../data/layout-draft.ts';
import { readRows } from '../../data/rows.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { numberField } from '../../fields/number-field.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { type LayoutContext, tellAt } from './layout-context.ts';
import { missingView } from './layout-view-missing.ts';
import { nameField } from './name-field.ts';

const PATTERNS = ['scattered', 'checkerboard', 'diagonal', 'rings'] as const;
const TOUCHES = ['sides', 'corners'] as const;

/** Grid, prints and what is wanted of them. */
export function askView(context: LayoutContext): TemplateResult {
  const { status, words, act } = context;
  const { layout } = words;
  const { draft, answer } = status;
  const set = (path: 'pattern' | 'touch', value: string) =>
    act.choose(editDraft(draft, path, value));
  return html`<div class="fields" part="size">
      ${sideField(context, 'columns')}${sideField(context, 'rows')}
    </div>
    ${printsView(context)}
    ${
      context.isLocked('pattern')
        ? ''
        : choiceList<LayoutPattern>({
            id: 'pattern',
            label: layout.pattern,
            choices: PATTERNS.map((name) => [name, layout.patterns[name]] as const),
            chosen: (draft.pattern as LayoutPattern | undefined) ?? 'scattered',
            fault: tellAt(context, 'pattern'),
            onChoose: (value) => set('pattern', value),
          })
    }
    ${
      context.isLocked('touch')
        ? ''
        : choiceChips<Touch>({
            name: 'touch',
            legend: layout.touch,
            choices: TOUCHES.map((name) => [name, layout.touches[name]] as const),
            chosen: (draft.touch as Touch | undefined) ?? answer?.input.touch,
            onChoose: (value) => set('touch', value),
          })
    }`;
}

/** Another grid has no place for what was pinned in this one. */
function sideField(context: LayoutContext, path: 'columns' | 'rows'): TemplateResult {
  const { status, words, act } = context;
  return numberField({
    id: path,
    label: words.layout[path],
    value: status.draft[path] ?? '',
    isLocked: context.isLocked(path),
    reason: words.light.locked,
    fault: tellAt(context, path),
    onInput: (typed) => act.type(path, writePins(editDraft(status.draft, path, typed), [])),
  });
}

function printsView(context: LayoutContext): TemplateResult {
  const { status, words, act } = context;
  const { layout } = words;
  const rows = readRows(status.draft, 'prints');
  const { length } = rows;
  return html`<fieldset class="stack" part="prints">
    <legend>${layout.prints}</legend>
    <p class="print heads soft" aria-hidden="true"><span></span>${layout.heads.map((head) => html`<span>${head}</span>`)}</p>
    <ul class="stack prints">${rows.map((row, at) => printView(context, row, at))}</ul>
    ${missingView(context)}
    ${
      holdsPrint(context, length)
        ? html`<small>${context.isLocked('prints') ? `${words.light.locked}.` : ''}</small>`
        : html`<div class="chips">
            <button
              aria-label=${layout.fewer}
              ?disabled=${length <= SIZE_LIMITS.layoutPrints}
              @click=${() => act.choose(changePrints(status.draft, false))}
            >−</button>
            <b>${length}</b>
            <button
              aria-label=${layout.more}
              ?disabled=${length >= SIZE_LIMITS.prints}
              @click=${() => act.choose(changePrints(status.draft, true))}
            >+</button>
          </div>
          <small>${layout.even}</small>`
    }
  </fieldset>`;
}

/** Whether the page has set something of a print, or of one that would be next: then none comes or goes. */
function holdsPrint({ isLocked }: LayoutContext, prints: number): boolean {
  const names = ['id', 'count', 'color'];
  const places = Array.from({ length: prints + 1 }, (_, at) => `prints.${at}`);
  return places.some((place) => names.some((name) => isLocked(`${place}.${name}`)));
}

function printView(
  context: LayoutContext,
  row: Readonly<Record<string, string>>,
  at: number,
): TemplateResult {
  const { status, words, act } = context;
  const { layout, light } = words;
  const letter = letterOf(at);
  const path = (name: 'id' | 'count') => `prints.${at}.${name}` as const;
  const frame = (name: 'id' | 'count') => ({
    isLocked: context.isLocked(path(name)),
    reason: light.locked,
    fault: tellAt(context, path(name)),
  });
  return html`<li class="print">
    ${colorField(context, row, at)}
    ${nameField({
      ...frame('id'),
      id: `name-${letter}`,
      label: layout.name(letter),
      value: row['id'] ?? '',
      onInput: (typed) => act.name(path('id'), editDraft(status.draft, path('id'), typed)),
    })}
    ${numberField({
      ...frame('count'),
      id: `count-${letter}`,
      label: layout.count(letter),
      value: row['count'] ?? '',
      placeholder: `${status.answer?.input.prints[at]?.count ?? ''}`,
      onInput: (typed) => act.type(path('count'), countPrint(context, at, typed)),
    })}
  </li>`;
}

/** The print as it is drawn; a press on it chooses its colour. */
function colorField(
  { status, words, act, isLocked }: LayoutContext,
  row: Readonly<Record<string, string>>,
  at: number,
): TemplateResult {
  const path = `prints.${at}.color` as const;
  const choose = ({ target }: Event) =>
    act.name(path, editDraft(status.draft, path, (target as HTMLInputElement).value));
  return html`<label class="look">
    ${printSwatch(at, row['color'])}
    <input
      type="color"
      aria-label=${words.layout.color(letterOf(at))}
      ?disabled=${isLocked(path)}
      .value=${row['color'] ?? findPrintLook(at).ground}
      @change=${choose}
    />
  </label>`;
}

/** The first count that is typed makes those of the others counts too; the last one that is emptied none. */
function countPrint({ status }: LayoutContext, at: number, typed: string): LayoutDraft {
  const { draft, answer } = status;
  const rows = readRows(draft, 'prints');
  const filled = rows.map(({ count }, other) =>
    other === at ? typed : (count ?? `${answer?.input.prints[other]?.count ?? ''}`),
  );
  const isNone =
    typed === '' && rows.every(({ count = '' }, other) => other === at || count === '');
  return filled.reduce<LayoutDraft>(
    (next, count, other) => editDraft(next, `prints.${other}.count`, isNone ? undefined : count),
    draft,
  );
}
