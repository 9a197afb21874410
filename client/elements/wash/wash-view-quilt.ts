import { html, type TemplateResult } from 'lit';
import type { FabricName, Role } from '#core/contract.ts';
import { findLayer, ROLES, setFabric } from '../../data/layers.ts';
import { FABRIC_NAMES } from '../../data/names.ts';
import { checkBox } from '../../fields/check-box.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { choiceList } from '../../fields/choice-list.ts';
import { foldView } from '../../fields/fold-view.ts';
import { lockView } from '../../fields/lock-view.ts';
import { numberField } from '../../fields/number-field.ts';
import { sheetView } from '../../fields/sheet-view.ts';
import { sayFaultAt, type WashContext } from './wash-context.ts';
import { findSizeKind, setPlace, USUAL_FABRICS } from './wash-state.ts';

const USUAL_WASHES = '1, 3, 5, 10';
const CONFIDENCES = ['90', '95', '99'] as const;

/** The quilt that is washed: its size, its layers, and how sure one wants to be. */
export function quiltView(context: WashContext): TemplateResult {
  const { words, state, act } = context;
  const kind = findSizeKind(state.draft);
  const lock = (path: string) => context.isLocked(path) && context.light.locked;
  const kinds = choiceChips({
    name: 'kind',
    legend: words.quilt.kind,
    choices: [
      ['wanted', words.quilt.kinds.wanted],
      ['sewn', words.quilt.kinds.sewn],
    ],
    chosen: kind,
    onChoose: act.give,
  });
  const roles = ROLES.filter(
    (role) => state.draft[`layers.${findLayer(state.draft, role)}.role`] === role,
  );
  return sheetView(
    'quilt',
    words.quilt.title,
    html`${lockView(
      lock('wanted') || lock('sewn'),
      html`${kinds}
          <div class="fields">
            ${lengthField(context, `${kind}.width`, words.quilt.width)}
            ${lengthField(context, `${kind}.height`, words.quilt.height)}
          </div>`,
    )}
      ${lockView(
        lock('layers'),
        html`<div class="fields">${ROLES.map((role) => layerView(context, role))}</div>
          <div>${roles.map((role) => prewashedView(context, role))}</div>`,
      )}
      ${surenessView(context)}`,
  );
}

type LengthPath = 'wanted.width' | 'wanted.height' | 'sewn.width' | 'sewn.height' | 'fit';

function lengthField(context: WashContext, path: LengthPath, label: string): TemplateResult {
  const { state, unit, act, text } = context;
  return numberField({
    id: path.replace('.', '-'),
    label,
    value: state.draft[path] ?? '',
    unit,
    fractions: unit === 'in' ? text.fractions : undefined,
    isLocked: context.isLocked(path),
    reason: context.light.locked,
    fault: sayFaultAt(context, path),
    onInput: (typed) => act.edit(path, typed),
  });
}

/** Cloth for the outsides, batting or flannel for the middle, which may be left out. */
function layerView(context: WashContext, role: Role): TemplateResult {
  const { state, text, words, act } = context;
  const path = `layers.${findLayer(state.draft, role)}.fabric` as const;
  const names = FABRIC_NAMES.filter((name) =>
    role === 'middle' ? /batting|flannel/.test(name) : !/batting/.test(name),
  ).map((name) => [name, text.fabric(name)] as const);
  return choiceList<FabricName | ''>({
    id: role,
    label: text.role(role),
    choices: role === 'middle' ? [['', words.quilt.none], ...names] : names,
    chosen: (state.draft[path] as FabricName | undefined) ?? USUAL_FABRICS[role],
    fault: sayFaultAt(context, path),
    onChoose: (fabric) => act.replace(setFabric(state.draft, role, fabric)),
  });
}

function prewashedView({ state, text, words, act }: WashContext, role: Role): TemplateResult {
  const path = `layers.${findLayer(state.draft, role)}.prewashed` as const;
  return checkBox({
    label: words.quilt.prewashed(text.role(role)),
    isOn: state.draft[path] === 'true',
    onChange: (isOn) => act.replace(setPlace(state.draft, path, isOn ? 'true' : undefined)),
  });
}

function surenessView(context: WashContext): TemplateResult {
  const { state, words, act } = context;
  const { draft, faults } = state;
  const isFaulty = faults.some(({ path }) => path[0] === 'washes' || path[0] === 'fit');
  return foldView({
    title: words.quilt.more,
    isOpen: draft.washes !== undefined || draft.fit !== undefined,
    isFaulty,
    body: html`<div class="stack">
      <div class="fields">
        ${numberField({
          id: 'washes',
          label: words.quilt.washes,
          value: draft.washes ?? '',
          placeholder: USUAL_WASHES,
          fault: sayFaultAt(context, 'washes'),
          onInput: (typed) => act.edit('washes', typed === '' ? undefined : typed),
        })}
        ${lengthField(context, 'fit', words.quilt.fit)}
      </div>
      <p class="soft">${words.quilt.washesHint}</p>
      ${choiceChips<(typeof CONFIDENCES)[number]>({
        name: 'confidence',
        legend: words.quilt.confidence,
        choices: CONFIDENCES.map((value) => [value, `${value} %`]),
        chosen: CONFIDENCES.find((value) => value === (draft.confidence ?? '95')),
        onChoose: (value) => act.replace(setPlace(draft, 'confidence', value)),
      })}
      ${checkBox({
        label: words.quilt.turned,
        isOn: draft.grain !== 'aligned',
        onChange: (isOn) => act.replace(setPlace(draft, 'grain', isOn ? undefined : 'aligned')),
      })}
    </div>`,
  });
}
