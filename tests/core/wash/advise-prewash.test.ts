import { describe, expect, test } from 'vitest';
import { advisePrewash, PULL_LIMIT } from '#core/wash/advise-prewash.ts';

describe('advisePrewash', () => {
  const pull = (length: number, width: number) =>
    [
      { layer: 'top', length: -length / 2, width: -width / 2, says: 'puckers' },
      { layer: 'backing', length: length / 2, width: width / 2, says: 'tight' },
    ] as const;

  test('advisePrewash is silent up to the limit and speaks beyond it', () => {
    expect(advisePrewash(pull(PULL_LIMIT, 0)).advised).toBe(false);
    const { advised, why } = advisePrewash(pull(0, PULL_LIMIT + 1));
    expect(advised).toBe(true);
    expect(why).toContain('3 percent points apart');
    expect(why).toContain('prewash the backing,');
  });

  test('advisePrewash names the layer that is tight where the gap is widest', () => {
    const { why } = advisePrewash([
      { layer: 'top', length: 1, width: -1.5, says: 'puckers' },
      { layer: 'backing', length: 0.5, width: 0.8, says: 'tight' },
    ]);
    expect(why).toContain('prewash the backing,');
  });

  test('advisePrewash of a layer that was prewashed says once more', () => {
    const { why } = advisePrewash(pull(4, 0), [false, true]);
    expect(why).toContain('prewash the backing once more,');
  });

  test('advisePrewash adds the doubt where it is wider than the fit asked for', () => {
    const doubt = { unit: 'in', half: 50.8, fit: 25.4, blocks: 4 } as const;
    const { advised, why, reasons } = advisePrewash(pull(0, 0), [], doubt);
    expect({ advised, reasons }).toEqual({ advised: true, reasons: ['doubt'] });
    expect(why).toContain('off by 2 in either way, more than the 1 in asked for');
    expect(why).toContain('4 washed test blocks');
    expect(advisePrewash(pull(3, 0), [], doubt).reasons).toEqual(['pull', 'doubt']);
  });

  test('advisePrewash is content with a doubt within the fit', () => {
    const doubt = { unit: 'in', half: 25.4, fit: 25.4 } as const;
    expect(advisePrewash(pull(0, 0), [], doubt)).toMatchObject({ advised: false, reasons: [] });
  });
});
