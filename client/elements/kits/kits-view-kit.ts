import { html, nothing, type TemplateResult } from 'lit';
import { SIZE_NAMES } from '../../data/names.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { numberField } from '../../fields/number-field.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { type KitsContext, sayFaultAt } from './kits-context.ts';
import {
  chooseKind,
  chooseWay,
  currencyOf,
  findKind,
  findWay,
  type KitsDraft,
  type PriceWay,
  type SizeKind,
} from './kits-state.ts';

/** A field that types into one place of the draft. */
interface Entry {
  readonly path: keyof KitsDraft & string;
  readonly label: string;
  readonly unit?: string;
  readonly usual?: string;
  readonly isLength?: boolean;
}

function entryView(context: KitsContext, entry: Entry): TemplateResult {
  const { state, text, unit, act } = context;
  const { path, label, usual, isLength = false } = entry;
  return numberField({
    id: path.replaceAll('.', '-'),
    label,
    unit: isLength ? unit : entry.unit,
    value: state.draft[path] ?? '',
    placeholder: usual,
    fault: sayFaultAt(context, path),
    fractions: isLength && unit === 'in' ? `${text.fractions}: ${label}` : undefined,
    onInput: (typed) => act.edit(path, typed),
  });
}

/** What the kit is for, and what is in each. */
export function kitView(context: KitsContext): TemplateResult {
  const { state, text, words, act } = context;
  const { kit } = words;
  const kind = findKind(state.draft);
  const sides: readonly Entry[] =
    kind === 'grid'
      ? [
          { path: 'plan.target.columns', label: kit.columns },
          { path: 'plan.target.rows', label: kit.rows },
        ]
      : [
          { path: 'plan.target.width', label: kit.width, isLength: true },
          { path: 'plan.target.height', label: kit.height, isLength: true },
        ];
  const size = choiceList<SizeKind>({
    id: 'size',
    label: kit.size,
    choices: [
      ['grid', kit.grid],
      ['own', kit.own],
      ...SIZE_NAMES.map((name) => [name, text.size(name)] as const),
    ],
    chosen: kind,
    fault: sayFaultAt(context, 'plan.target.size'),
    onChoose: (chosen) => act.replace(chooseKind(state.draft, chosen, state.answer)),
  });
  const rest: readonly Entry[] = [
    { path: 'kits', label: kit.wanted, usual: kit.all },
    { path: 'perKit.distinctPrints', label: kit.distinctPrints, usual: kit.any },
    { path: 'perKit.mostOfOne', label: kit.mostOfOne, usual: kit.any },
    { path: 'perKit.spare', label: kit.spare, usual: '0' },
  ];
  const isNamed = kind !== 'grid' && kind !== 'own';
  const body = html`<div class="fields">
      ${size}
      ${entryView(context, { path: 'plan.block.cut', label: kit.cut, usual: kit.best, isLength: true })}
    </div>
    ${isNamed ? nothing : html`<div class="fields">${sides.map((entry) => entryView(context, entry))}</div>`}
    <div class="fields">${rest.map((entry) => entryView(context, entry))}</div>`;
  return sheetView('kit', kit.title, body);
}

/** What a kit costs beside its cloth, and how its price comes about. */
export function moneyView(context: KitsContext): TemplateResult {
  const { state, words, act } = context;
  const { money } = words;
  const currency = currencyOf(state.draft);
  const way = findWay(state.draft);
  const costs: readonly Entry[] = (['packaging', 'labour', 'overhead'] as const).map((name) => ({
    path: `costs.${name}`,
    label: money[name],
    unit: currency,
    usual: '0',
  }));
  const ways = choiceChips<PriceWay>({
    name: 'way',
    legend: money.asked,
    choices: (['none', 'margin', 'markup', 'price'] as const).map((one) => [one, money.ways[one]]),
    chosen: way,
    onChoose: (chosen) => act.replace(chooseWay(state.draft, chosen)),
  });
  const asked =
    way === 'none'
      ? nothing
      : entryView(context, {
          path: `costs.${way}`,
          label: money[way],
          unit: way === 'price' ? currency : '%',
        });
  const body = html`<div class="fields">
      ${choiceList({
        id: 'currency',
        label: money.currency,
        choices: listCurrencies(context, currency),
        chosen: currency,
        fault: sayFaultAt(context, 'currency'),
        onChoose: act.payIn,
      })}
      ${costs.map((entry) => entryView(context, entry))}
    </div>
    ${ways} ${asked}`;
  return sheetView('money', money.title, body);
}

/** Every currency that the browser knows, by its letters and its name. */
function listCurrencies({ text }: KitsContext, chosen: string) {
  const names = new Intl.DisplayNames(text.language, { type: 'currency' });
  const known = Intl.supportedValuesOf('currency');
  const all = known.includes(chosen) ? known : [chosen, ...known];
  return all.map((code) => {
    const isCode = /^[A-Z]{3}$/.test(code);
    return [code, isCode ? `${code} ${names.of(code)}` : code] as const;
  });
}
