import { html, type TemplateResult } from 'lit';
import type { Region } from '#core/contract.ts';
import { editDraft } from '../../data/draft.ts';
import { SIZE_NAMES } from '../../data/names.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { fieldView } from '../../fields/field-view.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { type PlanContext, sayFault, sayFaultAt } from './plan-context.ts';
import { type Entry, entryField } from './plan-fields.ts';
import { chooseKind, findKind, type TargetKind } from './plan-state.ts';

const REGIONS: readonly Region[] = ['us', 'uk', 'eu'];

/** What is wished for: in words, and as it was understood in figures. */
export function wishView(context: PlanContext): TemplateResult {
  const { text, unit, act } = context;
  const units = choiceChips({
    name: 'unit',
    legend: text.unitQuestion,
    quiet: true,
    choices: [
      ['in', 'in'],
      ['cm', 'cm'],
    ],
    chosen: unit,
    onChoose: act.measureIn,
  });
  return sheetView('wish', text.wish.title, html`${wordsView(context)}${sizeView(context)}`, units);
}

function wordsView(context: PlanContext): TemplateResult {
  const { state, text, act } = context;
  return fieldView(
    { id: 'words', label: text.wish.label, fault: sayFault(context, state.wishFault) },
    ({ id, invalid, by }) => html`<span class="say">
      <input
        id=${id}
        type="text"
        enterkeyhint="go"
        maxlength="300"
        autocomplete="off"
        placeholder=${text.wish.example}
        .value=${state.wishText}
        aria-invalid=${invalid}
        aria-describedby=${by}
        @input=${({ target }: InputEvent) => act.say((target as HTMLInputElement).value)}
        @keydown=${({ key }: KeyboardEvent) => key === 'Enter' && act.understand()}
      />
      <button class="go" @click=${act.understand}>${text.wish.go}</button>
    </span>`,
  );
}

function sizeView(context: PlanContext): TemplateResult {
  const { state, text, act } = context;
  const kind = findKind(state.draft);
  const entries = listEntries(context, kind);
  const list = choiceList<TargetKind>({
    id: 'kind',
    label: text.wish.kind,
    choices: [
      ['own', text.kinds.own],
      ...SIZE_NAMES.map((name) => [name, text.size(name)] as const),
      ['bed', text.kinds.bed],
      ['grid', text.kinds.grid],
    ],
    chosen: kind,
    fault: sayFaultAt(context, 'target.size'),
    onChoose: (value) => act.replace(chooseKind(state.draft, value, state.answer)),
  });
  return html`<div class="fields">${list}${regionView(context)}</div>
    <div class="fields">${entries.map((entry) => entryField(context, entry))}</div>`;
}

function regionView({ state, text, act, unit }: PlanContext): TemplateResult | undefined {
  const { draft } = state;
  if (draft['target.size'] === undefined) return undefined;
  return choiceList({
    id: 'region',
    label: text.wish.region,
    choices: REGIONS.map((value) => [value, value.toUpperCase()]),
    chosen: (draft['target.region'] as Region | undefined) ?? (unit === 'cm' ? 'eu' : 'us'),
    onChoose: (value) => act.set('target.region', value),
  });
}

type TargetPath =
  | 'width'
  | 'height'
  | 'columns'
  | 'rows'
  | 'bed.width'
  | 'bed.length'
  | 'bed.drop'
  | 'bed.footDrop';

/** The fields of each way to give a size; to type over a named size makes it one's own. */
function listEntries(context: PlanContext, kind: TargetKind): readonly Entry[] {
  const { text, state, act, unit } = context;
  const entry = (path: TargetPath, rest?: Partial<Entry>): Entry => ({
    path: `target.${path}`,
    label: text.entries[path],
    ...rest,
  });
  if (kind === 'grid') {
    return [entry('columns', { isCount: true }), entry('rows', { isCount: true })];
  }
  if (kind === 'bed') {
    const usual = unit === 'in' ? 10 : 25;
    const drops = [entry('bed.drop', { usual }), entry('bed.footDrop', { usual })];
    return [entry('bed.width'), entry('bed.length'), ...drops];
  }
  return (['width', 'height'] as const).map((name) =>
    entry(name, {
      shown: kind === 'own' ? undefined : state.answer?.wish[name],
      onInput: (typed) => {
        const own = chooseKind(state.draft, 'own', state.answer);
        if (kind === 'own') act.edit(`target.${name}`, typed);
        else act.replace(editDraft(own, `target.${name}`, typed));
      },
    }),
  );
}
