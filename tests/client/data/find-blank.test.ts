import { expect, test } from 'vitest';
import { findBlank } from '../../../client/data/find-blank.ts';

test('findBlank tells each place that was left empty, and no other', () => {
  expect(findBlank({ 'target.width': '', 'target.height': '50', 'block.cut': '' })).toEqual([
    { code: 'empty', path: ['target', 'width'] },
    { code: 'empty', path: ['block', 'cut'] },
  ]);
  expect(findBlank({})).toEqual([]);
});
