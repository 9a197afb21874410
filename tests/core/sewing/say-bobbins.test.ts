import { expect, test } from 'vitest';
import { sayBobbins } from '#core/sewing/say-bobbins.ts';

test('sayBobbins names each place of its own step', () => {
  const bobbins = [
    { step: 'quilt-first', changes: 2, after: [20, 41] },
    { step: 'join', row: 'B', changes: 1, after: [1] },
    { step: 'join-rows', row: 'D', changes: 1, after: [0] },
    { step: 'border', changes: 1, after: [0] },
  ] as const;
  expect(sayBobbins(bobbins, 'quilt-first')).toBe(
    ' The bobbin runs out after about 20 blocks, and after about 41 blocks.',
  );
  expect(sayBobbins(bobbins, 'join')).toBe(' The bobbin runs out after about 1 block of row B.');
  expect(sayBobbins(bobbins, 'join-rows')).toBe(' The bobbin runs out at the start of row D.');
  expect(sayBobbins(bobbins, 'border')).toBe(' The bobbin runs out as you begin.');
  expect(sayBobbins(bobbins, 'quilt-second')).toBe('');
});

test('sayBobbins counts where there are too many to name', () => {
  const bobbins = [{ step: 'quilt-first', changes: 7, after: [1, 2, 3, 4, 5, 6, 7] }] as const;
  expect(sayBobbins(bobbins, 'quilt-first')).toBe(' The bobbin runs out 7 times in this step.');
});
