import { describe, expect, test } from 'vitest';
import { orderBlocks } from '#core/sewing/order-blocks.ts';
import { findStep, WORK_FACTS } from '../../support/work-facts.ts';

describe('orderBlocks', () => {
  test('orderBlocks stacks, quilts both ways and snips', () => {
    expect(orderBlocks(WORK_FACTS).map(({ id }) => id)).toEqual([
      'stack',
      'quilt-first',
      'part',
      'quilt-second',
      'snip',
    ]);
  });

  test('orderBlocks parts a chain only where there is one', () => {
    expect(findStep('part')?.figures).toEqual({ links: 47 });
    expect(findStep('part', { chained: false })).toBeUndefined();
    expect(findStep('quilt-first', { chained: false })).toMatchObject({ figures: { links: 0 } });
    expect(findStep('quilt-first', { chained: false })?.detail).toContain('Cut the thread');
    expect(findStep('part', { columns: 1, rows: 1 })).toBeUndefined();
  });

  test('orderBlocks stacks the cloth that this quilt is of, from the bottom up', () => {
    expect(findStep('stack')?.detail).toContain('Flannel at the bottom, quilting cotton on top');
    const fabrics = ['quilting-cotton', 'fleece', 'denim'] as const;
    const stack = findStep('stack', { fabrics });
    expect(stack?.detail).toContain('Denim at the bottom, then fleece, quilting cotton on top');
    expect(stack?.figures['fabrics']).toEqual(['denim', 'fleece', 'quilting-cotton']);
  });

  test('orderBlocks keeps the prints apart where there are several', () => {
    expect(findStep('stack')?.detail).toContain('a stack for each of the 4 prints');
    expect(findStep('stack', { prints: 1 })?.detail).not.toContain('prints');
  });

  test('orderBlocks tells of the bobbin in the step in which it runs out', () => {
    expect(findStep('quilt-second')?.detail).toContain('runs out after about 31 blocks');
    expect(findStep('quilt-second')?.figures['bobbins']).toBe(1);
    expect(findStep('quilt-first')?.detail).not.toContain('bobbin');
    expect(findStep('quilt-first')?.figures['bobbins']).toBe(0);
  });

  test('orderBlocks snips at depth, pitch and clearance, and compares with snipping after joining', () => {
    const snip = findStep('snip');
    expect(snip?.detail).toContain('1/2 in deep, 1/4 in apart, 1/2 in short of the seam');
    // 6336 less 3630 snips, and 158.4 less 90.75 minutes.
    expect(snip?.detail).toContain('2706 fewer, about 68 minutes less');
    expect(snip?.figures).toMatchObject({
      snips: 6336,
      depth: 0.5,
      pitch: 0.25,
      clearance: 0.5,
      snipsJoined: 3630,
      minutesJoined: 90.75,
    });
    expect(findStep('snip', { minutesJoined: 158.2 })?.detail).not.toContain('minute');
  });

  test('orderBlocks never says that the snips stop at nothing', () => {
    expect(findStep('snip', { clearance: 1 })?.detail).toContain('less than 1/16 in short of the');
  });

  test('orderBlocks speaks of one block as one', () => {
    const lone = { columns: 1, rows: 1, pieces: 2 };
    expect(findStep('stack', lone)?.do).toBe('Stack 1 block of 2 layers');
    expect(findStep('quilt-first', lone)?.do).toBe('Quilt the block from corner to corner');
    expect(findStep('quilt-first', lone)?.detail).toContain('Cut the thread');
    expect(findStep('snip', lone)?.detail).not.toContain('joining');
  });
});
