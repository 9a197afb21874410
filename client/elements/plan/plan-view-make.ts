import { html, type TemplateResult } from 'lit';
import type { FabricName, Role } from '#core/contract.ts';
import { USUAL_FABRICS } from '#core/tables/usual-fabrics.ts';
import { findLayer, ROLES, setFabric } from '../../data/layers.ts';
import { FABRIC_NAMES } from '../../data/names.ts';
import { checkBox } from '../../fields/check-box.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { foldView } from '../../fields/fold-view.ts';
import { lockView } from '../../fields/lock-view.ts';
import { printSwatch } from '../../fields/print-swatch.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { type MakingContext, sayInFields } from './plan-context.ts';
import { type Entry, entryField } from './plan-fields.ts';
import { listIdle } from './plan-state.ts';

/** Cut sizes that rulers are sold for: common practice. */
const CUTS = { in: [6, 7, 8, 9, 10, 11, 12], cm: [15, 18, 20, 22, 25, 28, 30] };
const MOST_PRINTS = 26;

/** The block: its cut, its seam, its snips. */
export function blocksView(context: MakingContext): TemplateResult {
  const { state, text, unit, act } = context;
  const [own, ...edges] = (['cut', 'seam', 'snipDepth', 'snipPitch'] as const).map(
    (name): Entry => ({
      path: `block.${name}`,
      label: text.making.edges[name],
      usual: state.answer && sayInFields(context, state.answer.block[name]),
    }),
  );
  if (own === undefined) return html``;
  const chips = choiceChips({
    name: 'cut',
    legend: text.making.blocks.cut,
    choices: [
      ['', text.making.blocks.choose],
      ...CUTS[unit].map((size) => [`${size}`, `${size}`] as const),
    ],
    chosen: state.draft['block.cut'] ?? '',
    onChoose: (value) => act.set('block.cut', value || undefined),
  });
  const isFaulty = state.faults.some(({ path }) => path[0] === 'block' && path[1] !== 'cut');
  return sheetView(
    'blocks',
    text.making.blocks.title,
    lockView(
      context.isLocked('block') && context.text.light.locked,
      html`${lockView(context.isLocked('block.cut') && context.text.light.locked, chips)}
      <div class="fields">${entryField(context, own)}</div>
      ${foldView({
        title: text.making.blocks.more,
        isFaulty,
        body: html`<div class="stack">
          <p class="soft">${text.making.blocks.explain}</p>
          <div class="fields">${edges.map((entry) => entryField(context, entry))}</div>
        </div>`,
      })}`,
    ),
  );
}

/** The layers, the prints and the bolts they come from. */
export function clothView(context: MakingContext): TemplateResult {
  const { text, state, act } = context;
  const { draft } = state;
  const roles = ROLES.filter((role) => draft[`layers.${findLayer(draft, role)}.role`] === role);
  const isFaulty = state.faults.some(({ path }) => path[0] === 'layers');
  return sheetView(
    'cloth',
    text.making.cloth.title,
    lockView(
      context.isLocked('layers') && context.text.light.locked,
      html`<div class="fields">${ROLES.map((role) => layerView(context, role))}</div>
      ${printsView(context)}
      ${foldView({
        title: text.making.cloth.bolts,
        isFaulty,
        body: html`<div class="fields">${roles.map((role) => boltView(context, role))}</div>
        ${roles.map((role) => {
          const path = `layers.${findLayer(draft, role)}.prewashed` as const;
          return checkBox({
            label: text.making.cloth.prewashed(text.role(role)),
            isOn: draft[path] === 'true',
            onChange: (isOn) => act.set(path, isOn ? 'true' : undefined),
          });
        })}
        ${lockView(
          context.isLocked('grain') && context.text.light.locked,
          checkBox({
            label: text.making.cloth.turned,
            isOn: draft.grain !== 'aligned',
            onChange: (isOn) => act.set('grain', isOn ? undefined : 'aligned'),
          }),
        )}`,
      })}`,
    ),
  );
}

/** Cloth for the outsides, batting or flannel for the middle, which may be left out. */
function layerView({ state, text, act }: MakingContext, role: Role): TemplateResult {
  const index = findLayer(state.draft, role);
  const usual = state.draft[`layers.${index}.role`] === undefined ? '' : USUAL_FABRICS[role];
  const fabric = state.draft[`layers.${index}.fabric`];
  const names = FABRIC_NAMES.filter((name) =>
    role === 'middle' ? /batting|flannel/.test(name) : !/batting/.test(name),
  ).map((name) => [name, text.fabric(name)] as const);
  return choiceList<FabricName | ''>({
    id: role,
    label: text.role(role),
    choices: role === 'middle' ? [['', text.making.cloth.none], ...names] : names,
    chosen: (fabric as FabricName | undefined) ?? usual,
    onChoose: (other) => act.replace(setFabric(state.draft, role, other)),
  });
}

function printsView({ state, text, act }: MakingContext): TemplateResult {
  const shown = state.answer?.input.layers.find(({ role }) => role === 'top')?.prints ?? [];
  const idle = listIdle(state.answer);
  const path = `layers.${findLayer(state.draft, 'top')}.prints` as const;
  const count = Number(state.draft[path] ?? shown.length);
  const step = (by: number, label: string, sign: string) => html`<button
    aria-label=${label}
    ?disabled=${count + by < 1 || count + by > MOST_PRINTS}
    @click=${() => act.set(path, `${count + by}`)}
  >${sign}</button>`;
  return html`<div class="stack">
    <div class="chips" role="group" aria-label=${text.making.cloth.prints}>
      <span class="soft">${text.making.cloth.prints}</span>
      ${step(-1, text.making.cloth.fewer, '−')}<output><b>${count}</b></output>${step(1, text.making.cloth.more, '+')}
    </div>
    <div class="chips swatches">${shown.map(({ id, color }, index) => (idle.includes(id) ? '' : printSwatch(index, color)))}</div>
  </div>`;
}

function boltView(context: MakingContext, role: Role): TemplateResult {
  const { state, text } = context;
  const width = state.answer?.input.layers.find((layer) => layer.role === role)?.width;
  return entryField(context, {
    path: `layers.${findLayer(state.draft, role)}.width`,
    label: text.making.cloth.width(text.role(role)),
    usual: width && sayInFields(context, width),
  });
}
