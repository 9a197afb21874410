import { NUMBER_LIMITS } from '#core/limits.ts';
import { holdsWork } from '../../data/holds-work.ts';
import type { ShownPlan } from '../../data/is-plan-answer.ts';
import { chooseLanguage, loadText } from '../../text/languages.ts';
import { type WorkWords, workSource } from '../../text/work/source.ts';
import { handOutForm } from './hand-out-form.ts';
import { handOutSheet } from './hand-out-sheet.ts';
import type { Aside } from './open-aside.ts';
import type { MakingContext } from './plan-context.ts';

const PUPILS = NUMBER_LIMITS.pupils;

/** What a teacher says of her class. */
export interface ClassWish {
  readonly heading: string;
  /** As typed. */
  readonly pupils: string;
  readonly note: string;
}

/** Asks a teacher for the heading and the number of pupils, then prints the hand-out of the plan. */
export async function startHandOut({ text }: Pick<MakingContext, 'text'>): Promise<Aside> {
  const words = await loadText(workSource, chooseLanguage([text.language]));
  return showForm(words, {});
}

/** What the form shows beside its fields. */
interface FormState {
  readonly fault?: 'pupils' | 'unreachable';
  readonly isBusy?: boolean;
}

function showForm(words: WorkWords, state: FormState): Aside {
  return (context, answer) =>
    handOutForm(context, {
      ...state,
      words,
      onSubmit: (wish) => void handOut(context, answer, { words, wish }),
    });
}

/** The plan again with what a class needs, and then the sheets of it on paper. */
async function handOut(
  { act }: MakingContext,
  answer: ShownPlan,
  { words, wish }: { readonly words: WorkWords; readonly wish: ClassWish },
): Promise<void> {
  const pupils = readPupils(wish.pupils);
  if (pupils === undefined) return act.lay(showForm(words, { fault: 'pupils' }));
  act.lay(showForm(words, { isBusy: true }));
  const loaded = await act.load(writeClassQuery(answer.links.page, pupils)).catch(() => undefined);
  const plan = loaded?.kind === 'answer' ? loaded.answer : undefined;
  if (plan === undefined || !holdsWork(plan) || plan.class === undefined) {
    return act.lay(showForm(words, { fault: 'unreachable' }));
  }
  const sheet = { words, wish, all: plan.class, plan, onDone: () => act.lay() };
  act.lay((context) => handOutSheet(context, sheet));
}

/**
 * A number of pupils as typed, where it is one.
 *
 * @example
 * readPupils(' 12 ') // => 12
 * readPupils('61') // => undefined
 * readPupils('a few') // => undefined
 */
export function readPupils(typed: string): number | undefined {
  const pupils = /^\d{1,2}$/.test(typed.trim()) ? Number(typed) : 0;
  return pupils >= PUPILS.least && pupils <= PUPILS.most ? pupils : undefined;
}

/**
 * The query of a plan for so many pupils.
 *
 * @param page the address of the plan, with or without pupils of its own.
 *
 * @example
 * writeClassQuery('/?target.size=lap&pupils=3', 12) // => 'target.size=lap&pupils=12'
 */
export function writeClassQuery(page: string, pupils: number): string {
  const query = page.slice(page.indexOf('?') + 1).replace(/^pupils=\d+&|&pupils=\d+/, '');
  return `${query}&pupils=${pupils}`;
}
