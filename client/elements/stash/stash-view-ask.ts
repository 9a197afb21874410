import { html, nothing, type TemplateResult } from 'lit';
import { ROLES } from '../../data/layers.ts';
import { type Row, readRows } from '../../data/rows.ts';
import { checkBox } from '../../fields/check-box.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { type ClothColumn, clothTable } from '../../fields/cloth-table.ts';
import { numberField } from '../../fields/number-field.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { holdsExample } from './example-stash.ts';
import { type StashContext, sayCellFault, sayFaultAt } from './stash-context.ts';
import { COLUMNS, LIST, MOST_ROWS, type StashDraft } from './stash-state.ts';

/** What there is: the table, and what can be done with all of it. */
export function tableView(context: StashContext): TemplateResult {
  const { state, text, cloth, words, unit, act } = context;
  const rows = readRows(state.draft, LIST);
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
  const invented = html`<div class="invented">
    <p>${cloth.invented}</p>
    <button @click=${act.clear}>${cloth.clearInvented}</button>
  </div>`;
  const body = html`${holdsExample(rows) ? invented : nothing}
    ${doneView(context)}
    ${clothTable({
      caption: words.table,
      columns: listColumns(context),
      rows,
      most: MOST_ROWS,
      swatch: (row) => swatchView(rows, row),
      faultAt: (cell) => sayCellFault(context, cell),
      words: cloth,
      onType: act.typeCell,
      onDrop: act.dropRow,
      onPaste: act.paste,
    })}
    ${toolsView(context, rows)}`;
  return sheetView('pieces', words.table, body, units);
}

function listColumns({ state, cloth, unit }: StashContext): readonly ClothColumn[] {
  const column = (name: string, rest: Partial<ClothColumn> = {}): ClothColumn => ({
    name,
    label: cloth.columns[name] ?? name,
    ...rest,
  });
  return [
    column('id', { isText: true }),
    column('role', { choices: ROLES.map((role) => [role, cloth.roles[role]] as const) }),
    ...(state.hasPrints ? [column('print', { isText: true })] : []),
    column('width', { unit }),
    column('length', { unit }),
    column('count', { usual: '1' }),
  ];
}

/** The look that the print of a row has in the quilt. */
function swatchView(rows: readonly Row[], at: number) {
  const nameOf = ({ role = 'top', id = '', print = '' }: (typeof rows)[number]) =>
    role === 'top' ? print || id : '';
  const row = rows[at];
  const name = row === undefined ? '' : nameOf(row);
  const prints = [...new Set(rows.map(nameOf))].filter((one) => one !== '');
  return name === ''
    ? html`<svg aria-hidden="true"></svg>`
    : printSwatch(prints.indexOf(name) % 26);
}

/** What was last done to the whole table and how to put back what was there, or why a file was refused. */
function doneView({ state, cloth, act }: StashContext): TemplateResult {
  const { done, fileFault } = state;
  const said = done && (done.kind === 'cleared' ? cloth.cleared : cloth[done.kind](done.rows));
  return html`<div role="status" class="told">
      ${done && html`<div class="notice quiet">${said} <button @click=${act.undo}>${cloth.undo}</button></div>`}
    </div>
    <div role="alert">
      ${fileFault && html`<div class="notice">${cloth.file[fileFault.code](fileFault)} ${cloth.kept}</div>`}
    </div>`;
}

function toolsView({ state, cloth, act }: StashContext, rows: readonly Row[]): TemplateResult {
  const isEmpty = rows.length === 0;
  const open = ({ target }: Event) => {
    const input = target as HTMLInputElement;
    const file = input.files?.[0];
    if (file !== undefined) act.open(file);
    input.value = '';
  };
  return html`<div class="tools">
      <label class="chip">
        <input type="file" accept=".csv,text/csv,text/plain" @change=${open} />${cloth.open}
      </label>
      <button ?disabled=${isEmpty} @click=${act.save}>${cloth.save}</button>
      ${isEmpty || holdsExample(rows) ? nothing : html`<button @click=${act.clear}>${cloth.clear}</button>`}
    </div>
    <small>${cloth.paste} ${COLUMNS.map(({ head }) => head).join(', ')}.</small>
    ${checkBox({ label: cloth.prints, isOn: state.hasPrints, onChange: act.showPrints })}
    ${state.hasPrints ? html`<small>${cloth.printsHint}</small>` : nothing}`;
}

/** Widths for heights, as the request has them. */
const SHAPES = { throw: undefined, square: '1', tall: '0.66', wide: '1.25' } as const;
type Shape = keyof typeof SHAPES | 'own';

function findShape(draft: StashDraft): Shape {
  const given = Object.entries(draft).filter(([path]) => path.startsWith('shape.'));
  const names = Object.keys(SHAPES) as (keyof typeof SHAPES)[];
  const [only] = given;
  if (only === undefined) return 'throw';
  return names.find((name) => given.length === 1 && SHAPES[name] === only[1]) ?? 'own';
}

function chooseShape(draft: StashDraft, shape: Shape): StashDraft {
  if (shape === 'own') return draft;
  const kept = Object.entries(draft).filter(([path]) => !path.startsWith('shape.'));
  const ratio = SHAPES[shape];
  return { ...Object.fromEntries(kept), ...(ratio !== undefined && { 'shape.ratio': ratio }) };
}

/** What the quilt may be like. */
export function wishView(context: StashContext): TemplateResult {
  const { state, text, words, unit, act } = context;
  const { draft } = state;
  const shape = findShape(draft);
  const names = [...(Object.keys(SHAPES) as Shape[]), ...(shape === 'own' ? [shape] : [])];
  const field = (path: 'block.cut' | 'block.seam' | 'squaring', label: string, usual: string) =>
    numberField({
      id: path.replace('.', '-'),
      label,
      unit,
      value: draft[path] ?? '',
      placeholder: usual,
      fault: sayFaultAt(context, path),
      fractions: unit === 'in' ? `${text.fractions}: ${label}` : undefined,
      onInput: (typed) => act.edit(path, typed),
    });
  const { touch: _touch, ...others } = draft;
  const usualSeam = unit === 'in' ? '1' : '2.5';
  const body = html`<div class="fields">
      ${field('block.cut', words.cut, words.anyCut)}
      ${choiceList<Shape>({
        id: 'shape',
        label: words.shape,
        choices: names.map((name) => [name, words.shapes[name]]),
        chosen: shape,
        onChoose: (name) => act.replace(chooseShape(draft, name)),
      })}
    </div>
    <small>${words.cutHint}</small>
    ${choiceChips<'' | 'sides' | 'corners'>({
      name: 'touch',
      legend: words.touch,
      choices: [
        ['', words.touches['']],
        ['sides', words.touches.sides],
        ['corners', words.touches.corners],
      ],
      chosen: (draft.touch as 'sides' | 'corners' | undefined) ?? '',
      onChoose: (touch) => act.replace(touch === '' ? others : { ...draft, touch }),
    })}
    <details>
      <summary>${words.more}</summary>
      <div class="fields">
        ${field('block.seam', words.seam, usualSeam)}${field('squaring', words.squaring, '0')}
      </div>
    </details>`;
  return sheetView('wish', words.wish, body);
}
