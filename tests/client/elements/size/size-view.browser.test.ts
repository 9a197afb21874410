import { expect, test } from 'vitest';
import { sizeView } from '../../../../client/elements/size/size-view.ts';
import { sizeContext } from '../../../support/light-contexts.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

test('sizeView says once to those who hear it that an answer is there', () => {
  const { context } = sizeContext();
  expect(readText(renderFresh(sizeView(context)), '[role=status]')).toMatch(/^\d+ by \d+ blocks, /);
  const busy = { ...context, status: { ...context.status, isBusy: true } };
  const root = renderFresh(sizeView(busy));
  expect(readText(root, '[role=status]')).toBe('');
  expect(find(root, '.table').classList).toContain('busy');
});

test('sizeView keeps room for the first answer, and its slots are there already', () => {
  const { context } = sizeContext();
  const waiting = { ...context, status: { ...context.status, answer: undefined, isBusy: true } };
  const root = renderFresh(sizeView(waiting));
  expect(root.querySelector('.waiting')).not.toBeNull();
  expect([...root.querySelectorAll('slot')].map(({ name }) => name)).toEqual([
    'title',
    'action',
    'note',
  ]);
});
