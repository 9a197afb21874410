import { describe, expect, test } from 'vitest';
import { chooseKind, findKind } from '../../../client/host/size-kind.ts';

const ANSWER = { grid: { columns: 4, rows: 5 }, wish: { width: 40.5, height: 50 } };

describe('size-kind', () => {
  test('findKind tells how a size is given', () => {
    expect(findKind({ 'target.width': '40', 'target.height': '50' })).toBe('own');
    expect(findKind({ 'target.size': 'lap' })).toBe('lap');
    expect(findKind({ 'target.columns': '4', 'target.rows': '5' })).toBe('grid');
    expect(findKind({ 'target.bed.width': '60', 'target.bed.length': '80' })).toBe('bed');
  });

  test('chooseKind starts from the figures on the table and leaves nothing of the old size', () => {
    const draft = { 'target.size': 'lap', 'target.region': 'us', 'block.cut': '9' } as const;
    const own = { 'target.width': '40½', 'target.height': '50', 'block.cut': '9' };
    expect(chooseKind(draft, 'own', ANSWER)).toEqual(own);
    const grid = { 'target.columns': '4', 'target.rows': '5', 'block.cut': '9' };
    expect(chooseKind(draft, 'grid', ANSWER)).toEqual(grid);
    expect(chooseKind(draft, 'throw')).toEqual({ 'target.size': 'throw', 'block.cut': '9' });
  });

  test('chooseKind measures a mattress in the unit of the draft', () => {
    expect(chooseKind({ unit: 'cm' }, 'bed')['target.bed.width']).toBe('150');
    expect(chooseKind({}, 'bed')['target.bed.width']).toBe('60');
  });
});
