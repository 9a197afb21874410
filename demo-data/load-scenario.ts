import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { FabricName, PlanAnswer, PlanRequest } from '#core/contract.ts';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';

/** A bolt on the shelf of the invented shop, as bolts.json has it. */
export type Bolt = {
  readonly id: string;
  readonly fabric: FabricName;
  readonly width: { readonly in: number; readonly cm: number };
  readonly gsm: number;
  readonly directional?: boolean;
  /** In the invented money, for a yard and for a metre. */
  readonly price: { readonly yd: number; readonly m: number };
  readonly color: string;
  /** Centimetres, after one wash and dry: one specimen an entry. */
  readonly swatches: {
    readonly before: number;
    readonly length: readonly number[];
    readonly width: readonly number[];
  };
};

/** Who wishes for what; `file` is the request under wishes/ and its answer under answers/. */
export type Wish = {
  readonly file: string;
  readonly title: string;
  readonly who: string;
  readonly says: string;
};

export type Scenario = {
  readonly about: string;
  readonly shop: string;
  readonly currency: string;
  readonly bolts: readonly Bolt[];
  readonly wishes: readonly Wish[];
};

const folder = fileURLToPath(new URL('.', import.meta.url));

/** The invented scenario: shop, bolts, people. */
export function loadScenario(): Scenario {
  return readJson('bolts.json') as Scenario;
}

/** The request of one wish, as it may be sent to `/v1/plan`. */
export function loadWish(file: string): PlanRequest {
  return readJson(`wishes/${file}`) as PlanRequest;
}

/** What the core answers to one wish. */
export function answerWish(file: string): PlanAnswer {
  const resolved = resolvePlan(loadWish(file));
  if (!resolved.ok) throw new Error(`${file}: ${JSON.stringify(resolved.faults)}`);
  return planQuilt(resolved.value);
}

function readJson(path: string): unknown {
  return JSON.parse(readFileSync(folder + path, 'utf8'));
}
