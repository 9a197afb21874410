import { html, type TemplateResult } from 'lit';
import { SIZE_LIMITS } from '#core/limits.ts';
import { editDraft } from '../../data/draft.ts';
import {
  addPiece,
  editPiece,
  type PieceRow,
  readPieces,
  writePieces,
} from '../../data/piece-rows.ts';
import { numberField } from '../../fields/number-field.ts';
import { unitChips } from '../../fields/unit-chips.ts';
import type { YardageContext } from './yardage-context.ts';

/** The cloth and what is cut from it; what the page has set is read, not asked. */
export function askView(context: YardageContext): TemplateResult {
  const { words, unit, act, isLocked } = context;
  const { yardage } = words;
  return html`<div class="fields" part="cloth">
      ${fieldView(context, { path: 'fabrics.0.width', label: yardage.width })}
      ${fieldView(context, { path: 'fabrics.0.selvage', label: yardage.selvage, usual: '½', usualCm: '1.25' })}
      ${fieldView(context, { path: 'fabrics.0.lengthLeft', label: yardage.left, usual: yardage.unknown, usualCm: yardage.unknown })}
    </div>
    <div part="pieces">
      <h3>${yardage.pieces}</h3>
      ${isLocked('fabrics.0.pieces') ? setPiecesView(context) : piecesView(context)}
    </div>
    ${isLocked('unit') ? '' : unitChips(words.light.unitQuestion, unit, act.measureIn)}`;
}

interface Field {
  readonly path: 'fabrics.0.width' | 'fabrics.0.selvage' | 'fabrics.0.lengthLeft';
  readonly label: string;
  /** What stands where it is left empty; without it that may not be. */
  readonly usual?: string;
  readonly usualCm?: string;
}

function fieldView(context: YardageContext, { path, label, ...rest }: Field): TemplateResult {
  const { status, words, unit, act } = context;
  const value = status.draft[path] ?? '';
  const usual = unit === 'in' ? rest.usual : rest.usualCm;
  if (context.isLocked(path)) {
    return html`<p><small>${label}. ${words.light.locked}.</small> <b>${value || usual} ${unit}</b></p>`;
  }
  return numberField({
    id: path.slice('fabrics.0.'.length),
    label,
    value,
    unit,
    placeholder: usual,
    fractions: unit === 'in' ? words.light.fractions : undefined,
    fault: sayFaultAt(context, path),
    onInput: (typed) => {
      const given = typed === '' && usual !== undefined ? undefined : typed;
      act.type(path, editDraft(status.draft, path, given));
    },
  });
}

function setPiecesView({ status, words, unit }: YardageContext): TemplateResult {
  const { light, yardage } = words;
  const rows = readPieces(status.draft);
  return html`<small>${light.locked}.</small>
    <ul>${rows.map(
      ({ id = '', width, length, count = '' }) =>
        html`<li>${yardage.size(id, `${width} × ${length}\u00a0${unit}`, count)}</li>`,
    )}</ul>`;
}

function piecesView(context: YardageContext): TemplateResult {
  const { status, words, act } = context;
  const rows = readPieces(status.draft);
  return html`<ul>${rows.map((row, at) => rowView(context, rows, [row, at]))}</ul>
    ${
      rows.length < SIZE_LIMITS.pieceKinds && !holdsPiece(context, rows)
        ? html`<button @click=${() => act.choose(addPiece(status.draft))}>${words.yardage.add}</button>`
        : ''
    }`;
}

/** Whether the page has set something of a piece, or of one that would be next: then none comes or goes. */
function holdsPiece({ isLocked }: YardageContext, rows: readonly PieceRow[]): boolean {
  return [...rows, {}].some((row, at) =>
    ['id', 'width', 'length', 'count', ...Object.keys(row)].some((name) =>
      isLocked(`fabrics.0.pieces.${at}.${name}`),
    ),
  );
}

function rowView(
  context: YardageContext,
  rows: readonly PieceRow[],
  [row, at]: readonly [PieceRow, number],
): TemplateResult {
  const { status, words, unit, act } = context;
  const { yardage, light } = words;
  const name = row['id'] ?? '';
  const cell = (part: 'width' | 'length' | 'count', label: string) => {
    const path = `fabrics.0.pieces.${at}.${part}`;
    return numberField({
      id: `${part}-${at}`,
      label,
      value: row[part] ?? '',
      unit: part === 'count' ? undefined : unit,
      fractions: unit === 'in' && part !== 'count' ? light.fractions : undefined,
      isLocked: context.isLocked(path),
      reason: light.locked,
      fault: sayFaultAt(context, path),
      onInput: (typed) => act.type(path, editPiece(status.draft, at, [part, typed])),
    });
  };
  const leaveOut = () =>
    act.choose(
      writePieces(
        status.draft,
        rows.filter((other) => other !== row),
      ),
    );
  return html`<li class="piece fields">
    ${cell('width', yardage.across(name))}${cell('length', yardage.along(name))}
    ${cell('count', yardage.count(name))}
    ${
      rows.length > 1 && !holdsPiece(context, rows)
        ? html`<button aria-label=${yardage.remove(name)} @click=${leaveOut}>✕</button>`
        : ''
    }
  </li>`;
}

function sayFaultAt({ status, tell }: YardageContext, place: string): string | undefined {
  const fault = status.faults.find(({ path }) => path.join('.') === place);
  return fault && tell(fault);
}
