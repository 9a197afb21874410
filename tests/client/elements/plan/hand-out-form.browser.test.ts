import { expect, test, vi } from 'vitest';
import { handOutForm } from '../../../../client/elements/plan/hand-out-form.ts';
import { workSource } from '../../../../client/text/work/source.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';

const words = workSource.en;

test('handOutForm gives what was typed, and a usual heading where there is none', () => {
  const onSubmit = vi.fn();
  const root = renderFresh(handOutForm(watchContext(), { words, onSubmit }));
  type(root, '#class-pupils', '12');
  type(root, '#class-note', ' Bring tea. ');
  find(root, '.go').click();
  expect(onSubmit).toHaveBeenCalledExactlyOnceWith({
    heading: 'Rag quilt class',
    pupils: '12',
    note: 'Bring tea.',
  });
});

test('handOutForm labels its fields and ties the fault to its own', () => {
  const root = renderFresh(
    handOutForm(watchContext(), { words, fault: 'pupils', onSubmit: vi.fn() }),
  );
  const field = find<HTMLInputElement>(root, '#class-pupils');
  expect(field.labels?.[0]?.textContent).toBe('Pupils');
  expect(field.getAttribute('aria-describedby')).toContain('class-pupils-fault');
  expect(readText(root, '#class-pupils-fault')).toContain('1 to 60');
});

test('handOutForm waits while the class is worked out, and closes when asked', async () => {
  const context = watchContext();
  const root = renderFresh(handOutForm(context, { words, isBusy: true, onSubmit: vi.fn() }));
  await new Promise((done) => setTimeout(done));
  expect(find<HTMLButtonElement>(root, '.go').disabled).toBe(true);
  expect(readText(root, '[role=status]')).toContain('Working out');
  find(root, 'button[type=button]').click();
  await expect.poll(() => context.act.lay.mock.calls.length).toBe(1);
});
