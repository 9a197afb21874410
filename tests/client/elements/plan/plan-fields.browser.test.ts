import { describe, expect, test } from 'vitest';
import { entryField } from '../../../../client/elements/plan/plan-fields.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { find, readText, renderFresh, type } from '../../../support/render.ts';

const SEAM = { path: 'block.seam', label: 'Seam' } as const;
const readValue = (root: ParentNode) => find<HTMLInputElement>(root, 'input').value;

describe('entryField', () => {
  test('entryField shows what was typed before all else', () => {
    const context = watchContext({ draft: { 'block.seam': ' 7/8ths' } });
    expect(readValue(renderFresh(entryField(context, { ...SEAM, shown: 1 })))).toBe(' 7/8ths');
  });

  test('entryField shows a figure of the plan where nothing was typed', () => {
    const root = renderFresh(entryField(watchContext(), { ...SEAM, shown: 1.5 }));
    expect(readValue(root)).toBe('1½');
  });

  test('entryField that is emptied goes back to the usual figure, which stands there faintly', () => {
    const context = watchContext({ draft: { 'block.seam': '2' } });
    const root = renderFresh(entryField(context, { ...SEAM, usual: 1 }));
    expect(find<HTMLInputElement>(root, 'input').placeholder).toBe('1');
    type(root, 'input', '');
    expect(context.act.edit).toHaveBeenCalledExactlyOnceWith('block.seam', undefined);
  });

  test('entryField without a usual figure stays empty when emptied', () => {
    const context = watchContext();
    type(renderFresh(entryField(context, SEAM)), 'input', '');
    expect(context.act.edit).toHaveBeenCalledExactlyOnceWith('block.seam', '');
  });

  test('entryField says what is wrong there', () => {
    const context = watchContext({
      faults: [{ code: 'not-a-length', path: ['block', 'seam'], received: 'x' }],
    });
    expect(readText(renderFresh(entryField(context, SEAM)), '.fault')).toMatch(
      /“x” is not a length/,
    );
  });

  test('entryField offers eighths for inches alone', () => {
    const has = (root: ParentNode) => root.querySelector('.fractions') !== null;
    expect(has(renderFresh(entryField(watchContext(), SEAM)))).toBe(true);
    expect(has(renderFresh(entryField(watchContext({ draft: { unit: 'cm' } }), SEAM)))).toBe(false);
    const rows = { path: 'target.rows', label: 'Rows', isCount: true } as const;
    expect(has(renderFresh(entryField(watchContext(), rows)))).toBe(false);
  });
});
