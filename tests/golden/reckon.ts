import type {
  KitsRequest,
  LayoutRequest,
  PlanRequest,
  StashRequest,
  WashRequest,
  YardageRequest,
} from '#core/contract.ts';
import { planKits } from '#core/kits.ts';
import { planLayout } from '#core/layout.ts';
import type { Outcome } from '#core/outcome.ts';
import { planQuilt } from '#core/plan.ts';
import { planStash } from '#core/stash.ts';
import { predictWash } from '#core/wash.ts';
import { resolveKits } from '#core/wish/resolve-kits.ts';
import { resolveLayout } from '#core/wish/resolve-layout.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { resolveWash } from '#core/wish/resolve-wash.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';
import type { GoldenPath } from './vectors.ts';

/** The answers of the core alone, with no service around it: the same wherever it runs. */
const RECKONINGS: Readonly<Record<GoldenPath, (input: object) => Outcome<object>>> = {
  '/v1/plan': (input) => then(resolvePlan(input as PlanRequest), planQuilt),
  '/v1/yardage': (input) => then(resolveYardage(input as YardageRequest), planYardage),
  '/v1/wash-shrinkage': (input) => then(resolveWash(input as WashRequest), predictWash),
  '/v1/layout': (input) => then(resolveLayout(input as LayoutRequest), planLayout),
  '/v1/stash': (input) => then(resolveStash(input as StashRequest), planStash),
  '/v1/kits': (input) => then(resolveKits(input as KitsRequest), planKits),
};

/** The bytes of one answer, as text. */
export function reckon(path: GoldenPath, input: object): string {
  const answer = RECKONINGS[path](input);
  return answer.ok ? JSON.stringify(answer.value) : JSON.stringify(answer.faults);
}

function then<One>(outcome: Outcome<One>, next: (value: One) => object): Outcome<object> {
  return outcome.ok ? { ok: true, value: next(outcome.value) } : outcome;
}
