import { html, type TemplateResult } from 'lit';
import { type DraftPath, editDraft } from '../../data/draft.ts';
import { SIZE_NAMES, UNKNOWN_SIZES } from '../../data/names.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { numberField } from '../../fields/number-field.ts';
import { turnUnit } from '../../fields/turn-unit.ts';
import { unitChips } from '../../fields/unit-chips.ts';
import { writeEntry } from '../../fields/write-figures.ts';
import { chooseKind, findKind, type Sized, type TargetKind } from '../../host/size-kind.ts';
import type { SizeContext } from './size-context.ts';

/** How large the quilt shall be; what the page has set is read, not asked. */
export function askView(context: SizeContext): TemplateResult {
  const { words, unit, act } = context;
  const isSet = ['target', ...TARGETS].some(context.isLocked);
  return html`${isSet ? lockedView(context) : fieldsView(context)}
    ${context.isLocked('unit') ? '' : unitChips(words.light.unitQuestion, unit, act.measureIn)}`;
}

function lockedView(context: SizeContext): TemplateResult {
  const { status, words } = context;
  const kind = findKind(status.draft);
  const name =
    kind === 'own' || kind === 'bed' || kind === 'grid' ? '' : `${words.size.size(kind)}, `;
  const { wish } = status.answer ?? {};
  return html`<p part="size">
    <small>${words.size.kind}. ${words.light.locked}.</small>
    <b>${name}${wish && context.sayLength(wish.width, wish.height)}</b>
  </p>`;
}

function fieldsView(context: SizeContext): TemplateResult {
  const { status, words, unit, act } = context;
  const { draft } = status;
  const kind = findKind(draft);
  const region = draft['target.region'] ?? (unit === 'cm' ? 'eu' : 'us');
  const unknown = UNKNOWN_SIZES[region] ?? [];
  const names = SIZE_NAMES.filter((name) => name === kind || !unknown.includes(name));
  const choose = (value: TargetKind) => {
    const next = chooseKind(draft, value, readSized(context));
    const isNamed = next['target.size'] !== undefined && draft['target.region'] !== undefined;
    act.choose(isNamed ? { ...next, 'target.region': region } : next);
  };
  return html`<div class="fields" part="size">
    ${choiceList<TargetKind>({
      id: 'kind',
      label: words.size.kind,
      choices: [
        ['own', words.size.kinds.own],
        ...names.map((name) => [name, words.size.size(name)] as const),
        ['bed', words.size.kinds.bed],
        ['grid', words.size.kinds.grid],
      ],
      chosen: kind,
      fault: sayFaultAt(context, 'target.size'),
      onChoose: choose,
    })}
    ${PLACES[kind === 'bed' || kind === 'grid' ? kind : 'own'].map((place) => entryField(context, place))}
  </div>`;
}

const PLACES = {
  own: ['width', 'height'],
  bed: ['bed.width', 'bed.length'],
  grid: ['columns', 'rows'],
} as const;

/** A size of which one figure is set cannot be given in another way. */
const TARGETS = ['size', ...Object.values(PLACES).flat()].map((place) => `target.${place}`);

type Place = (typeof PLACES)[keyof typeof PLACES][number];

/** A field of the size; to type over a named one makes it one's own. */
function entryField(context: SizeContext, place: Place): TemplateResult {
  const { status, words, unit, act } = context;
  const { draft } = status;
  const sized = readSized(context);
  const path: DraftPath = `target.${place}`;
  const isCount = place === 'columns' || place === 'rows';
  const isSide = place === 'width' || place === 'height';
  const shown = isSide ? sized?.wish[place] : undefined;
  return numberField({
    id: place.replace('.', '-'),
    label: words.size.entries[place],
    value: draft[path] ?? writeEntry(shown ?? '', unit),
    unit: isCount ? undefined : unit,
    fractions: unit === 'in' && !isCount ? words.light.fractions : undefined,
    fault: sayFaultAt(context, path),
    onInput: (typed) => {
      const own = isSide && findKind(draft) !== 'own' ? chooseKind(draft, 'own', sized) : draft;
      act.type(path, editDraft(own, path, typed));
    },
  });
}

/** The size on the table in the unit of the fields, which may be another until there is an answer in it. */
function readSized({ status, unit }: SizeContext): Sized | undefined {
  const { answer } = status;
  if (answer === undefined || answer.input.unit === unit) return answer;
  const { width, height } = answer.wish;
  const say = (value: number) => turnUnit(value, unit);
  return { grid: answer.grid, wish: { width: say(width), height: say(height) } };
}

function sayFaultAt({ status, tell }: SizeContext, place: DraftPath): string | undefined {
  const fault = status.faults.find(({ path }) => path.join('.') === place);
  return fault && tell(fault);
}
