import { readCounter } from '../../client/data/counter-question.ts';
import type { AnyDraft } from '../../client/data/draft.ts';
import {
  type CounterActions,
  type CounterContext,
  makeContext,
} from '../../client/elements/counter/counter-context.ts';
import { FIRST_STATE } from '../../client/elements/counter/counter-state.ts';
import { counterSource } from '../../client/text/counter/source.ts';
import { lightSource } from '../../client/text/light/source.ts';
import { sharedSource } from '../../client/text/shared/source.ts';

/** What a scene at the counter is made of. */
interface Scene {
  readonly question?: string;
  readonly shop?: AnyDraft;
  readonly currency?: string;
  readonly canShare?: boolean;
  readonly state?: Partial<CounterContext['state']>;
}

/** What the views of the counter are given, and a list that gathers what they ask to be done. */
export function setCounter({
  question = 'target.width=40&target.height=50',
  shop = {},
  currency = 'USD',
  canShare = false,
  state = {},
}: Scene): { readonly context: CounterContext; readonly done: readonly unknown[][] } {
  const read = question === '' ? undefined : readCounter(question);
  if (read !== undefined && !read.ok) throw new Error(JSON.stringify(read.faults));
  const counter = read?.value;
  const place = { question, shop };
  const done: unknown[][] = [];
  const act = new Proxy({} as CounterActions, {
    get:
      (_target, name) =>
      (...given: readonly unknown[]) =>
        done.push([name, ...given]),
  });
  const text = {
    light: lightSource.en,
    counter: counterSource.en,
    sentences: sharedSource.en.faults,
  };
  const given = { state: { ...FIRST_STATE, place, counter, ...state }, text, canShare, act };
  return { context: makeContext(given, currency), done };
}
