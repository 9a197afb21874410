import { html, nothing, type TemplateResult } from 'lit';
import { SIZE_LIMITS } from '#core/limits.ts';
import { FABRIC_NAMES } from '../../data/names.ts';
import { cellField } from '../../fields/cell-field.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { fieldView } from '../../fields/field-view.ts';
import { lockView } from '../../fields/lock-view.ts';
import { numberField } from '../../fields/number-field.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { unitChips } from '../../fields/unit-chips.ts';
import { holdsExample } from './example-swatches.ts';
import {
  BLANK_ROW,
  CELLS,
  type CellName,
  type Cloth,
  type Direction,
  findCell,
  hasHalfPair,
  listPlaces,
} from './swatch-table.ts';
import { isFabric, sayCloth, sayFault, type WashContext } from './wash-context.ts';
import { rulersView } from './wash-view-rulers.ts';

const OWN = 'own';

/** The swatches of each cloth: what was measured, and at once what it says. */
export function swatchesView(context: WashContext): TemplateResult {
  const { state, text, words, unit, act } = context;
  const units = context.isLocked('unit')
    ? undefined
    : unitChips(text.unitQuestion, unit, act.measureIn);
  const set = context.isLocked('swatches') && context.light.locked;
  const isExample = holdsExample(state.cloths, unit);
  return sheetView(
    'swatches',
    words.swatches.title,
    lockView(
      set,
      html`${
        isExample
          ? html`<div class="invented">
            <p>${words.swatches.example}</p>
            <button @click=${act.clear}>${words.swatches.clear}</button>
          </div>`
          : nothing
      }
      ${state.cloths.map((cloth, index) => clothView(context, cloth, index))}
      ${hasHalfPair(state.cloths) ? html`<p class="soft">${words.swatches.waits}</p>` : nothing}
      <button class="off" @click=${act.addCloth}>${words.swatches.add}</button>`,
    ),
    units,
  );
}

function clothView(context: WashContext, cloth: Cloth, index: number): TemplateResult {
  const { words, act, state } = context;
  const name = sayCloth(context, cloth.fabric.trim() || words.swatches.cloth);
  return html`<section class="cloth stack" aria-label=${name}>
    ${headView(context, cloth, index)}
    ${tableView(context, cloth, index)}
    ${rulersView(context, cloth)}
    <div class="off">
      ${diagonalsView(context, cloth, index)}
      ${
        state.cloths.length > 1
          ? html`<button class="plain" @click=${() => act.removeCloth(index)}>
              ${words.swatches.remove(name)}
            </button>`
          : nothing
      }
    </div>
  </section>`;
}

function headView(context: WashContext, cloth: Cloth, index: number): TemplateResult {
  const { words, text, act } = context;
  const isKnown = isFabric(cloth.fabric) || cloth.fabric === 'sandwich';
  const names = [...FABRIC_NAMES.map((name) => [name, text.fabric(name)] as const)];
  const fault = sayFieldFault(context, index, 'washes');
  return html`<div class="fields cloth-head">
    ${choiceList<string>({
      id: `cloth-${index}`,
      label: words.swatches.cloth,
      choices: [...names, ['sandwich', words.swatches.sandwich], [OWN, words.swatches.own]],
      chosen: isKnown ? cloth.fabric : OWN,
      onChoose: (value) => act.name(index, { fabric: value === OWN ? '' : value }),
    })}
    ${isKnown ? nothing : ownNameView(context, cloth, index)}
    ${numberField({
      id: `washes-${index}`,
      label: words.swatches.washed,
      value: cloth.washes,
      placeholder: '1',
      fault,
      onInput: (washes) => act.name(index, { washes }),
    })}
  </div>`;
}

function ownNameView(context: WashContext, cloth: Cloth, index: number): TemplateResult {
  const { words, act } = context;
  const label = words.swatches.ownName;
  return fieldView(
    { id: `name-${index}`, label, fault: sayFieldFault(context, index, 'fabric') },
    ({ id, invalid, by }) => html`<input
      id=${id}
      type="text"
      autocomplete="off"
      maxlength=${SIZE_LIMITS.name}
      .value=${cloth.fabric}
      aria-invalid=${invalid}
      aria-describedby=${by}
      @input=${({ target }: InputEvent) =>
        act.name(index, { fabric: (target as HTMLInputElement).value })}
    />`,
  );
}

/** What is wrong with something that all swatches of a cloth share. */
function sayFieldFault(context: WashContext, cloth: number, name: string): string | undefined {
  const { faults, places } = context.state;
  const found = faults.find(({ path }) => {
    const cell = findCell(path, places);
    return cell?.cloth === cloth && cell.name === name;
  });
  return sayFault(context, found);
}

/** The table grows: below the last row that was typed into there is an empty one, while more may be asked. */
function tableView(context: WashContext, cloth: Cloth, index: number): TemplateResult {
  const { words, state, unit } = context;
  const hasRoom = listPlaces(state.cloths).length + 2 <= SIZE_LIMITS.swatches;
  const rows = hasRoom ? [...cloth.rows, BLANK_ROW] : cloth.rows;
  const ways: readonly Direction[] = ['length', 'width'];
  return html`<div class="grid" role="group" aria-label=${words.swatches.title}>
    <div class="grid-row heads" aria-hidden="true">
      <span></span>
      ${ways.map((way) => html`<span class="way">${words.along[way]}, ${unit}</span>`)}
    </div>
    <div class="grid-row heads" aria-hidden="true">
      <span></span>
      ${ways.map(() => html`<small>${words.swatches.before}</small><small>${words.swatches.after}</small>`)}
    </div>
    ${rows.map((_, row) => rowView(context, cloth, { cloth: index, row }))}
  </div>`;
}

interface RowPlace {
  readonly cloth: number;
  readonly row: number;
}

function rowView(context: WashContext, cloth: Cloth, place: RowPlace): TemplateResult {
  const { words } = context;
  const said = listCellFaults(context, place);
  return html`<div class="grid-row fields">
      <small aria-hidden="true">${place.row + 1}</small>
      ${CELLS.map((name) => {
        const [way, end] = name.split('.') as [Direction, 'before' | 'after'];
        const label = words.swatches.cell(place.row + 1, way, words.swatches[end]);
        return cellView(context, cloth, { ...place, name, label, said });
      })}
    </div>
    ${faultsView(context, place, said)}`;
}

type Said = readonly (readonly [name: string, sentence: string])[];

/** The faults of a row by the cell at which each stands. */
function listCellFaults(context: WashContext, { cloth, row }: RowPlace): Said {
  const { faults, places } = context.state;
  return faults.flatMap((fault) => {
    const cell = findCell(fault.path, places);
    if (cell?.cloth !== cloth || cell.row !== row) return [];
    return [[cell.name, sayFault(context, fault) ?? ''] as const];
  });
}

interface CellPlace extends RowPlace {
  readonly name: CellName;
  readonly label: string;
  readonly said: Said;
}

function cellView(context: WashContext, { rows }: Cloth, place: CellPlace): TemplateResult {
  const { cloth, row, name, label, said } = place;
  const id = `c${cloth}-${row}-${name.replace('.', '-')}`;
  return html`<span class="cell">
    ${cellField({
      id,
      label,
      value: rows[row]?.[name] ?? '',
      faultId: said.some(([at]) => at === name) ? `${id}-fault` : undefined,
      fractions: context.unit === 'in' ? context.text.fractions : undefined,
      onInput: (typed) => context.act.typeCell(cloth, row, name, typed),
    })}
  </span>`;
}

/** Under the row, since a cell is too narrow for a sentence. */
function faultsView({ words }: WashContext, { cloth, row }: RowPlace, said: Said) {
  return said
    .filter(([name]) => /\.|^(ac|bd)$/.test(name))
    .map(([name, sentence]) => {
      const [way, end] = name.split('.') as [Direction, 'before' | 'after' | undefined];
      const where =
        end === undefined ? name.toUpperCase() : words.swatches.fault(way, words.swatches[end]);
      return html`<p class="fault" id="c${cloth}-${row}-${name.replace('.', '-')}-fault">
        <b>${where}:</b> ${sentence}
      </p>`;
    });
}

function diagonalsView(context: WashContext, cloth: Cloth, index: number): TemplateResult {
  const { words } = context;
  const isOpen = cloth.rows.some(({ ac, bd }) => ac !== '' || bd !== '');
  return html`<details ?open=${isOpen}>
    <summary>${words.swatches.diagonals}</summary>
    <p class="soft">${words.swatches.explainDiagonals}</p>
    ${cloth.rows.map(
      (_, row) => html`<div class="grid-row diagonals fields">
        <small aria-hidden="true">${row + 1}</small>
        ${(['ac', 'bd'] as const).map((name) => {
          const label = words.swatches.diagonal(row + 1, name.toUpperCase());
          const said = listCellFaults(context, { cloth: index, row });
          return cellView(context, cloth, { cloth: index, row, name, label, said });
        })}
      </div>`,
    )}
  </details>`;
}
