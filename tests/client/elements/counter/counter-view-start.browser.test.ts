import { describe, expect, test } from 'vitest';
import { startView } from '../../../../client/elements/counter/counter-view-start.ts';
import { setCounter } from '../../../support/counter-scene.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';

function show(state: Parameters<typeof setCounter>[0]['state'], shop = {}) {
  const { context, done } = setCounter({ question: '', shop, ...(state && { state }) });
  return { root: renderFresh(startView(context)), done };
}

describe('startView', () => {
  test('startView offers the last plan on the device where there is one', () => {
    const { root, done } = show({ lastPlan: 'target.size=lap' });
    find(root, 'button.go').click();
    expect(done).toEqual([['open', 'target.size=lap']]);
    expect(show({}).root.querySelectorAll('.go')).toHaveLength(1);
  });

  test('startView takes an address, or squares of one size', () => {
    const { root, done } = show({}, { address: '/?target.size=lap', cut: '8½', unit: 'cm' });
    type(root, '#address', 'a');
    type(root, '#cut', '9');
    type(root, '#count', '40');
    find(root, '.chip:first-child input').click();
    find<HTMLFormElement>(root, 'form.field').requestSubmit();
    find<HTMLFormElement>(root, 'form.stack').requestSubmit();
    expect(done).toEqual([
      ['enter', 'address', 'a'],
      ['enter', 'cut', '9'],
      ['enter', 'count', '40'],
      ['enter', 'unit', ''],
      ['open', '/?target.size=lap'],
      ['open', '?unit=cm&cut=8%C2%BD&count=%20'],
    ]);
  });

  test('startView tells what is wrong at its field, and of a plan above', () => {
    const { root } = show({
      faults: [
        { code: 'empty', path: ['count'] },
        { code: 'target-unclear', path: ['address'] },
        { code: 'too-large', path: ['block', 'seam'], expected: '3.93 in' },
      ],
    });
    expect(readText(root, '#count-fault')).toBe('Type a number, such as 6.');
    expect(readText(root, '[role=alert]')).toBe(
      'What was asked for could not be read: There is no plan in that. Paste the whole address, with what stands behind the question mark.That is too large. Give at most 3⅞ in. block.seam',
    );
  });
});
