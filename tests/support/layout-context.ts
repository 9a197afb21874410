import { vi } from 'vitest';
import { writeQuery } from '../../client/data/draft.ts';
import { completeLayout, type LayoutDraft } from '../../client/data/layout-draft.ts';
import { computeLayout } from '../../client/data/layout-on-device.ts';
import type {
  LayoutActions,
  LayoutContext,
  ShownGrid,
} from '../../client/elements/layout/layout-context.ts';
import { FIRST_BOARD } from '../../client/elements/layout/layout-state.ts';
import { readGrid } from '../../client/elements/layout/read-grid.ts';
import { sayLayoutFault } from '../../client/elements/layout/say-layout-fault.ts';
import { en as layout } from '../../client/text/layout/en.ts';
import { en as light } from '../../client/text/light/en.ts';
import { en as shared } from '../../client/text/shared/en.ts';

/** A quilt of three by two with three named prints. */
export const SMALL: LayoutDraft = {
  ...{ columns: '3', rows: '2', touch: 'sides' },
  ...{ 'prints.0.id': 'Moss', 'prints.1.id': 'Rust', 'prints.2.id': 'C' },
};

/** The answer of the core to a draft. */
export function answerLayout(draft: LayoutDraft) {
  const outcome = computeLayout(writeQuery(completeLayout(draft)));
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
}

/** Everything that the views are given, with actions that only remember that they were asked for. */
export function layoutContext(
  draft: LayoutDraft = SMALL,
  { hand, ...change }: Partial<LayoutContext> & { readonly hand?: readonly string[] } = {},
): LayoutContext & { readonly grid: ShownGrid } {
  const answer = answerLayout(draft);
  const names = ['type', 'name', 'choose', 'another', 'tap', 'pin', 'go', 'letGo', 'fit'] as const;
  const others = ['turnTo', 'showLarge', 'undo', 'redo', 'retry', 'print'] as const;
  const act = Object.fromEntries([...names, ...others].map((name) => [name, vi.fn()]));
  return {
    status: { draft, answer, faults: [], hostFaults: [], from: 'service', isBusy: false },
    words: { light, layout },
    board: { ...FIRST_BOARD, hand },
    grid: readGrid({ answer, draft, hand }, undefined),
    ...{ address: '/v1/layout?columns=3', room: 600, isPrinting: false, isLocked: () => false },
    memo: new Map(),
    tell: (fault) => sayLayoutFault(layout, fault) ?? shared.faults[fault.code](fault),
    act: act as unknown as LayoutActions,
    ...change,
  } as LayoutContext & { readonly grid: ShownGrid };
}
