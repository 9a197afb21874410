import { render } from 'lit';
import { afterEach, describe, expect, test, vi } from 'vitest';
import type { LoadedPlan } from '../../../../client/data/load-plan.ts';
import {
  readPupils,
  startHandOut,
  writeClassQuery,
} from '../../../../client/elements/plan/hand-out.ts';
import type { Aside } from '../../../../client/elements/plan/open-aside.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, type } from '../../../support/render.ts';

const plan = planThrow();
afterEach(() => vi.restoreAllMocks());

/** The form in an element of its own, drawn anew whenever something is laid. */
async function openForm(load: (query: string) => Promise<LoadedPlan>) {
  const context = watchContext();
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const root = host.attachShadow({ mode: 'open' });
  const place = root.appendChild(document.createElement('div'));
  const show = (aside?: Aside) => render(aside?.(context, plan), place);
  context.act.lay.mockImplementation(show);
  context.act.load.mockImplementation(load);
  show(await startHandOut(context));
  await new Promise((done) => setTimeout(done));
  const submit = (pupils: string) => {
    type(root, '#class-pupils', pupils);
    find(root, '.go').click();
  };
  return { root, context, submit };
}

const answerClass = async (query: string): Promise<LoadedPlan> => ({
  kind: 'answer',
  from: 'service',
  answer: planThrow({ pupils: Number(/pupils=(\d+)/.exec(query)?.[1]) }),
});

describe('startHandOut', () => {
  test('startHandOut asks for the plan with so many pupils and prints two pages', async () => {
    const print = vi.spyOn(globalThis, 'print').mockImplementation(() => {});
    const { root, context, submit } = await openForm(answerClass);
    type(root, '#class-heading', 'Tuesday at six');
    submit('12');
    await expect.poll(() => print.mock.calls.length).toBe(1);
    expect(context.act.load).toHaveBeenCalledExactlyOnceWith('target.size=throw&pupils=12');
    expect(root.querySelectorAll('.leaf')).toHaveLength(2);
    expect(readText(root, 'h1')).toBe('Tuesday at six');
    expect(readText(root, '.bring thead')).toContain('12 pupils');
    globalThis.dispatchEvent(new Event('afterprint'));
    expect(root.querySelector('.hand-out')).toBeNull();
  });

  test('startHandOut says what is wrong with the number, and keeps what was typed', async () => {
    const { root, context, submit } = await openForm(answerClass);
    type(root, '#class-heading', 'Tuesday at six');
    submit('a few');
    expect(readText(root, '.fault')).toContain('1 to 60');
    expect(find(root, '#class-pupils').getAttribute('aria-invalid')).toBe('true');
    expect(find<HTMLInputElement>(root, '#class-heading').value).toBe('Tuesday at six');
    expect(find<HTMLInputElement>(root, '#class-pupils').value).toBe('a few');
    expect(context.act.load).not.toHaveBeenCalled();
  });

  test('startHandOut says so where nobody answers', async () => {
    const { root, submit } = await openForm(() => Promise.reject(new Error('offline')));
    submit('12');
    await expect.poll(() => readText(root, '[role=alert]')).toContain('cannot be reached');
    expect(root.querySelector('.hand-out')).toBeNull();
  });
});

describe('readPupils', () => {
  test('readPupils takes 1 to 60, with blanks around it', () => {
    expect(['1', ' 60 ', '007'].map(readPupils)).toEqual([1, 60, undefined]);
    expect(['0', '61', '-3', '2.5', ''].map(readPupils)).toEqual(Array(5).fill(undefined));
  });
});

describe('writeClassQuery', () => {
  test('writeClassQuery puts the pupils in the place of those that were there', () => {
    expect(writeClassQuery('/?pupils=3&target.size=lap', 4)).toBe('target.size=lap&pupils=4');
    expect(writeClassQuery('/?target.size=lap&pupils=3&explain=true', 4)).toBe(
      'target.size=lap&explain=true&pupils=4',
    );
  });
});
