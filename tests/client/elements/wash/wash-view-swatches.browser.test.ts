import { describe, expect, test } from 'vitest';
import { swatchesView } from '../../../../client/elements/wash/wash-view-swatches.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';
import { showWash } from '../../../support/wash-example.ts';

const ONE =
  'swatches.0.fabric=Rose&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.9';

describe('swatchesView', () => {
  test('swatchesView marks invented swatches and lets one start afresh', () => {
    const context = showWash();
    const root = renderFresh(swatchesView(context));
    find(root, '.invented button').click();
    expect(context.act.clear).toHaveBeenCalledOnce();
    expect(renderFresh(swatchesView(showWash(ONE))).querySelector('.invented')).toBeNull();
  });

  test('swatchesView has an empty row below what was typed, and types into it', () => {
    const context = showWash();
    const root = renderFresh(swatchesView(context));
    type(root, '#c0-3-width-after', '9');
    expect(context.act.typeCell).toHaveBeenCalledExactlyOnceWith(0, 3, 'width.after', '9');
  });

  test('swatchesView ties each fault to its cell, whatever layer of the table it is in', () => {
    const faults = [
      { code: 'after-unlikely', path: ['swatches', '0', 'after'] },
      { code: 'not-whole', path: ['swatches', '0', 'washes'] },
    ] as const;
    const root = renderFresh(swatchesView(showWash(ONE, { faults })));
    const id = find(root, '#c0-0-length-after').getAttribute('aria-describedby');
    expect(readText(root, `#${id}`)).toContain('Along the roll, after: The swatch cannot');
    expect(readText(root, '#washes-0-fault')).toBe('Give a whole number.');
    expect(root.querySelectorAll('.fault').length).toBe(2);
  });

  test('swatchesView asks for the name of a cloth that the table does not know', () => {
    const context = showWash(ONE);
    const root = renderFresh(swatchesView(context));
    type(root, '#name-0', 'Fern');
    expect(context.act.name).toHaveBeenCalledExactlyOnceWith(0, { fabric: 'Fern' });
    expect(root.textContent).toContain('No layer of the quilt is of this cloth');
  });
});
