import { html, type TemplateResult } from 'lit';
import type { Region, Unit } from '#core/contract.ts';
import type { ReadWish } from '#core/wish/read-wish.ts';
import { type Draft, editDraft } from '../../data/draft.ts';
import { SIZE_NAMES, UNKNOWN_SIZES } from '../../data/names.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { fieldView } from '../../fields/field-view.ts';
import { lockView } from '../../fields/lock-view.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { unitChips } from '../../fields/unit-chips.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { chooseKind, findKind, type Sized, type TargetKind } from '../../host/size-kind.ts';
import { type PlanContext, sayFault, sayFaultAt, sayInFields } from './plan-context.ts';
import { type Entry, entryField, stateChips } from './plan-fields.ts';

const REGIONS: readonly Region[] = ['us', 'uk', 'eu'];

/** What is wished for: in words, and as it was understood in figures. */
export function wishView(context: PlanContext): TemplateResult {
  const { text, unit, act } = context;
  const units = context.isLocked('unit')
    ? undefined
    : unitChips(text.unitQuestion, unit, act.measureIn);
  return sheetView(
    'wish',
    text.wish.title,
    lockView(
      context.isLocked('target') && context.text.light.locked,
      html`${wordsView(context)}${sizeView(context)}`,
    ),
    units,
  );
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
    </span>
    ${state.wishRead && html`<p class="soft" id="${id}-unit">${sayRead(context, state.wishRead)}</p>`}`,
  );
}

/** What was understood of the words: the size; and what was not. */
function sayRead({ text }: PlanContext, { unit, target, passed }: ReadWish): string {
  const said =
    'size' in target
      ? text.size(target.size)
      : 'columns' in target
        ? text.wish.blocks(target.columns, target.rows)
        : 'bed' in target
          ? `${text.kinds.bed}: ${saySides(text.language, unit, [target.bed.width, target.bed.length])}`
          : saySides(text.language, unit, [target.width, target.height]);
  const read = text.wish.read(said);
  return passed === undefined ? read : `${read} ${text.wish.passed(passed.join(', '))}`;
}

/** Two lengths; with a unit of their own, as they were said. */
function saySides(language: string, unit: Unit, sides: readonly (string | number)[]): string {
  const figures = sides.map(Number);
  return figures.some(Number.isNaN) ? sides.join(' × ') : writeMeasure(language, unit, ...figures);
}

function sizeView(context: PlanContext): TemplateResult {
  const { state, text, act } = context;
  const kind = findKind(state.draft);
  const entries = listEntries(context, kind);
  const unknown = UNKNOWN_SIZES[findRegion(context)] ?? [];
  const list = choiceList<TargetKind>({
    id: 'kind',
    label: text.wish.kind,
    choices: [
      ['own', text.kinds.own],
      ...SIZE_NAMES.filter((name) => name === kind || !unknown.includes(name)).map(
        (name) => [name, text.size(name)] as const,
      ),
      ['bed', text.kinds.bed],
      ['grid', text.kinds.grid],
    ],
    chosen: kind,
    fault: sayFaultAt(context, 'target.size'),
    onChoose: (value) => act.replace(chooseKind(state.draft, value, readSized(context))),
  });
  return html`<div class="fields">${list}${regionView(context)}</div>
    <div class="fields">${entries.map((entry) => entryField(context, entry))}</div>
    ${kind === 'bed' || kind === 'grid' ? '' : atView(context)}`;
}

/** Whether the size is meant before or after the wash; a name always means after. */
function atView(context: PlanContext): TemplateResult {
  const { text, act } = context;
  const { draft } = context.state;
  return stateChips(context, {
    name: 'at',
    legend: text.wish.at,
    chosen: findAt(draft),
    onChoose: (at) => {
      const own = findKind(draft) === 'own' ? draft : chooseKind(draft, 'own', readSized(context));
      act.replace(editDraft(own, 'target.at', at === 'sewn' ? at : undefined));
    },
  });
}

function findAt(draft: Draft): 'washed' | 'sewn' {
  return draft['target.at'] === 'sewn' ? 'sewn' : 'washed';
}

function findRegion({ state, unit }: PlanContext): Region {
  return (state.draft['target.region'] as Region | undefined) ?? (unit === 'cm' ? 'eu' : 'us');
}

function regionView(context: PlanContext): TemplateResult | undefined {
  const { state, text, act } = context;
  if (state.draft['target.size'] === undefined) return undefined;
  return choiceList({
    id: 'region',
    label: text.wish.region,
    choices: REGIONS.map((value) => [value, value.toUpperCase()]),
    chosen: findRegion(context),
    onChoose: (value) => act.set('target.region', value),
  });
}

/** The size on the table in the unit of the fields. */
function readSized(context: PlanContext): Sized | undefined {
  const { answer } = context.state;
  if (answer === undefined) return undefined;
  const { width, height } = answer.wish;
  const wish = { width: sayInFields(context, width), height: sayInFields(context, height) };
  return { grid: answer.grid, wish };
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
    const foot = state.draft['target.bed.drop'] || usual;
    const drops = [entry('bed.drop', { usual }), entry('bed.footDrop', { usual: foot })];
    return [entry('bed.width'), entry('bed.length'), ...drops];
  }
  return (['width', 'height'] as const).map((name) =>
    entry(name, {
      label: text.side(text.entries[name], text.states[findAt(state.draft)]),
      shown: kind === 'own' ? undefined : readSized(context)?.wish[name],
      onInput: (typed) => {
        const own = chooseKind(state.draft, 'own', readSized(context));
        if (kind === 'own') act.edit(`target.${name}`, typed);
        else act.replace(editDraft(own, `target.${name}`, typed));
      },
    }),
  );
}
