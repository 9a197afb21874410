import { html, nothing, type TemplateResult } from 'lit';
import { ROLES } from '../../data/layers.ts';
import { type Row, readRows } from '../../data/rows.ts';
import { checkBox } from '../../fields/check-box.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { type ClothColumn, clothTable } from '../../fields/cloth-table.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { holdsExample } from './example-bolts.ts';
import { type KitsContext, sayCellFault } from './kits-context.ts';
import { COLUMNS, currencyOf, LIST, MOST_ROWS } from './kits-state.ts';

/** What there is: the table, and what can be done with all of it. */
export function tableView(context: KitsContext): TemplateResult {
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
  return sheetView('bolts', words.table, body, units);
}

function listColumns({ state, cloth, words, unit }: KitsContext): readonly ClothColumn[] {
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
    column('cost', { label: words.costs[unit], unit: currencyOf(state.draft) }),
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
function doneView({ state, cloth, act }: KitsContext): TemplateResult {
  const { done, fileFault } = state;
  const said = done && (done.kind === 'cleared' ? cloth.cleared : cloth[done.kind](done.rows));
  return html`<div role="status" class="told">
      ${done && html`<div class="notice quiet">${said} <button @click=${act.undo}>${cloth.undo}</button></div>`}
    </div>
    <div role="alert">
      ${fileFault && html`<div class="notice">${cloth.file[fileFault.code](fileFault)} ${cloth.kept}</div>`}
    </div>`;
}

function toolsView({ state, cloth, act }: KitsContext, rows: readonly Row[]): TemplateResult {
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
