import { expect, test } from 'vitest';
import { tellAt } from '../../../../client/elements/layout/layout-context.ts';
import { layoutContext, SMALL } from '../../../support/layout-context.ts';

test('tellAt says what is wrong at one place, and nothing of another', () => {
  const { status, ...context } = layoutContext(SMALL);
  const faults = [{ code: 'too-large', path: ['columns'], expected: '40' }] as const;
  const faulty = { ...context, status: { ...status, faults } };
  expect(tellAt(faulty, 'columns')).toContain('40');
  expect(tellAt(faulty, 'rows')).toBeUndefined();
});
