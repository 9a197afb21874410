import { choosePlan, type PlanChoice } from '#core/block/choose-plan.ts';
import type { PlanRequest, Unit } from '#core/contract.ts';
import type { CounterNeed } from '#core/counter/counter-need.ts';
import { listNeeds } from '#core/counter/list-needs.ts';
import { toMillimetres } from '#core/length.ts';
import { NUMBER_LIMITS } from '#core/limits.ts';
import type { Fault, Outcome } from '#core/outcome.ts';
import { DEFAULTS } from '#core/tables/defaults.ts';
import { type PlanSpec, specifyPlan } from '#core/wish/plan-spec.ts';
import { readLengthField, startReading, writeQuery } from '#core/wish/reading.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { checkRequest } from './check-request.ts';
import { SQUARE_KEYS } from './counter-place.ts';
import { readQuery } from './read-query.ts';

/** What is to be bought, as understood. */
export interface Counter {
  /** Canonical: what equals it asks the same. */
  readonly question: string;
  readonly unit: Unit;
  readonly needs: readonly CounterNeed[];
  /** The plan that it is for; absent where only squares were asked for. */
  readonly plan?: { readonly spec: PlanSpec; readonly choice: PlanChoice };
}

/**
 * Understands what is to be bought, on the device: the query of a plan by the same core as the service, or
 * squares of one size such as `cut=8.5&count=40`.
 *
 * @returns the cloths, or every fault with its place
 */
export function readCounter(question: string): Outcome<Counter> {
  const asked = new URLSearchParams(question);
  return SQUARE_KEYS.some((key) => asked.has(key)) ? readSquares(asked) : readPlan(question);
}

function readPlan(question: string): Outcome<Counter> {
  const request: Outcome<PlanRequest> = checkRequest(readQuery(question));
  if (!request.ok) return request;
  const resolved = resolvePlan(request.value);
  if (!resolved.ok) return resolved;
  const { input, query } = resolved.value;
  const spec = specifyPlan(input);
  const choice = choosePlan(spec);
  const needs = listNeeds(spec, choice.chosen);
  return { ok: true, value: { question: query, unit: spec.unit, needs, plan: { spec, choice } } };
}

function readSquares(asked: URLSearchParams): Outcome<Counter> {
  const unit = asked.get('unit') === 'cm' ? 'cm' : 'in';
  const reading = startReading(unit);
  const given = asked.get('cut')?.trim() ?? '';
  const cut = readLengthField(reading, { path: ['cut'], given, limit: 'cut' });
  const squares = readCount(asked.get('count')?.trim() ?? '', reading.faults);
  if (reading.faults.length > 0) return { ok: false, faults: reading.faults };
  const question = `${writeQuery(reading.kept)}&count=${squares}`;
  return { ok: true, value: { question, unit, needs: [needSquares(unit, cut, squares)] } };
}

function readCount(received: string, faults: Fault[]): number {
  const { least, most } = NUMBER_LIMITS.pieceCount;
  const tell = (code: Fault['code'], expected?: number) =>
    faults.push({ code, path: ['count'], received, ...(expected !== undefined && { expected }) });
  const count = /^\d{1,9}$/.test(received) ? Number(received) : Number.NaN;
  if (received === '') tell('empty');
  else if (Number.isNaN(count)) tell('not-whole');
  else if (count < least) tell('too-small', least);
  else if (count > most) tell('too-large', most);
  return count;
}

function needSquares(unit: Unit, cut: number, squares: number): CounterNeed {
  const mm = (value: number) => toMillimetres(value, unit);
  const { rollWidth, selvage, squaring, step } = DEFAULTS[unit];
  return {
    cut: mm(cut),
    squares,
    spare: 0,
    roll: { width: mm(rollWidth), selvage: mm(selvage), prewash: { length: 0, width: 0 } },
    squaring: mm(squaring),
    step: mm(step),
    unit,
  };
}
