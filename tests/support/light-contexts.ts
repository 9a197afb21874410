import { computePlan } from '../../client/data/on-device.ts';
import { computeYardage } from '../../client/data/yardage-on-device.ts';
import type { SizeContext } from '../../client/elements/size/size-context.ts';
import type { YardageContext } from '../../client/elements/yardage/yardage-context.ts';
import { writeMeasure } from '../../client/fields/write-figures.ts';
import { en as light } from '../../client/text/light/en.ts';
import { en as size } from '../../client/text/size/en.ts';
import { en as yardage } from '../../client/text/yardage/en.ts';

const nothing = () => undefined;

const SHARED = {
  unit: 'in',
  sayLength: (...values: readonly number[]) => writeMeasure('en', 'in', ...values),
  sayMoney: undefined,
  odd: [],
  api: 'https://planner.example',
  isLocked: () => false,
  sayCaution: ({ text }: { readonly text: string }) => text,
  tell: ({ code }: { readonly code: string }) => code,
} as const;

const STATUS = { faults: [], hostFaults: [], from: 'service', isBusy: false } as const;

/** What the views of the size are given, for the answer to a query. */
export function sizeContext(query = 'target.size=lap', change: Partial<SizeContext> = {}) {
  const outcome = computePlan(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const draft = Object.fromEntries(new URLSearchParams(query));
  const act = { type: nothing, choose: nothing, measureIn: nothing, retry: nothing };
  const words = { light, size };
  const answer = outcome.value;
  const context: SizeContext = { ...SHARED, status: { ...STATUS, draft, answer }, words, act };
  return { context: { ...context, ...change }, answer };
}

/** A cloth of one kind of piece. */
export const CLOTH =
  'fabrics.0.id=Fog&fabrics.0.width=42&fabrics.0.pieces.0.id=A&fabrics.0.pieces.0.width=8.5&fabrics.0.pieces.0.length=8.5&fabrics.0.pieces.0.count=42';

/** What the views of the yardage are given, for the answer to a query. */
export function yardageContext(query = CLOTH, change: Partial<YardageContext> = {}) {
  const outcome = computeYardage(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  const draft = Object.fromEntries(new URLSearchParams(query));
  const act = { type: nothing, choose: nothing, measureIn: nothing, retry: nothing };
  const words = { light, yardage };
  const answer = outcome.value;
  const context: YardageContext = { ...SHARED, status: { ...STATUS, draft, answer }, words, act };
  return { context: { ...context, ...change }, answer };
}
