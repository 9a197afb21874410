import { expect, test } from 'vitest';
import { quiltView } from '../../../../client/elements/wash/wash-view-quilt.ts';
import { find, renderFresh, type } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

test('quiltView types a size and wash counts', () => {
  const context = showWash();
  const root = renderFresh(quiltView(context));
  type(root, '#wanted-width', '44');
  type(root, '#washes', '2, 9');
  expect(context.act.edit).toHaveBeenNthCalledWith(1, 'wanted.width', '44');
  expect(context.act.edit).toHaveBeenNthCalledWith(2, 'washes', '2, 9');
});

test('quiltView chooses another cloth, a prewash and how sure to be', () => {
  const context = showWash();
  const root = renderFresh(quiltView(context));
  const middle = find<HTMLSelectElement>(root, '#middle');
  middle.value = 'Flannel';
  middle.dispatchEvent(new Event('change'));
  expect(context.act.replace).toHaveBeenLastCalledWith(
    expect.objectContaining({ 'layers.1.role': 'middle', 'layers.1.fabric': 'flannel' }),
  );
  find(root, 'input[type=checkbox]').click();
  expect(context.act.replace).toHaveBeenLastCalledWith(
    expect.objectContaining({ 'layers.0.prewashed': 'true' }),
  );
  find(root, '[name=confidence]').click();
  expect(context.act.replace).toHaveBeenLastCalledWith(
    expect.objectContaining({ confidence: '90' }),
  );
});

test('quiltView opens what holds a fault', () => {
  const faults = [{ code: 'not-whole', path: ['washes', '1'] }] as const;
  const root = renderFresh(quiltView(showWash('', { faults })));
  expect(find<HTMLDetailsElement>(root, 'details').open).toBe(true);
  expect(find(root, '#washes-fault').textContent).toBe('Give a whole number.');
});
