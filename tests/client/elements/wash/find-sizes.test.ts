import { describe, expect, test } from 'vitest';
import { planQuilt } from '#core/plan.ts';
import { resolvePlan } from '#core/wish/resolve-plan.ts';
import { checkRequest } from '../../../../client/data/check-request.ts';
import { readQuery } from '../../../../client/data/read-query.ts';
import { findSizes, linkPlan } from '../../../../client/elements/wash/find-sizes.ts';
import { answerWash } from '../../../support/wash-example.ts';

const SWATCHES =
  'swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=10&swatches.0.after=9.4&swatches.1.fabric=flannel&swatches.1.direction=length&swatches.1.before=10&swatches.1.after=9.5&grain=aligned&washes.0=2&washes.1=7';

describe('findSizes', () => {
  test('findSizes gives the sizes that the core gives for the quilt that was sewn', () => {
    const answer = predict('sewn.width=42&sewn.height=52');
    const sizes = findSizes(answer);
    expect(sizes?.sewn).toEqual({ width: 42, height: 52 });
    for (const [index, size] of (sizes?.after ?? []).entries()) {
      const told = answer.sizes[index];
      expect(size.washes).toBe(told?.washes);
      // Percentages come with four decimals: on 52 inches half a ten thousandth of one is 3e-5 in.
      expect(size.washed.width).toBeCloseTo(told?.width ?? 0, 3);
      expect(size.washed.height).toBeCloseTo(told?.height ?? 0, 3);
      expect(size.low.height).toBeCloseTo(told?.low.height ?? 0, 3);
      expect(size.high.width).toBeCloseTo(told?.high.width ?? 0, 3);
    }
  });

  test('findSizes goes by the nearest whole blocks for a size that is wanted', () => {
    const answer = predict('wanted.width=40&wanted.height=50');
    const sizes = findSizes(answer);
    expect(sizes?.sewn).toEqual(answer.sewFor?.nearest?.sewn);
    expect(sizes?.after[0]?.washed.width).toBeCloseTo(answer.sewFor?.nearest?.washed.width ?? 0, 3);
    expect(sizes?.grid).toEqual({
      columns: answer.sewFor?.nearest?.columns,
      rows: answer.sewFor?.nearest?.rows,
    });
  });

  test('findSizes is nothing where no size was given', () => {
    expect(findSizes(predict(''))).toBeUndefined();
  });
});

describe('linkPlan', () => {
  test('linkPlan leads to a plan that is sewn as the wash says and washes to the same size', () => {
    const answer = predict('wanted.width=40&wanted.height=50');
    const link = linkPlan(answer) ?? '';
    const request = checkRequest(readQuery(link.slice(link.indexOf('?'))));
    if (!request.ok) throw new Error(JSON.stringify(request.faults));
    const resolved = resolvePlan(request.value);
    if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
    const { size, grid, block } = planQuilt(resolved.value);
    const nearest = answer.sewFor?.nearest;
    expect(block.cut).toBe(nearest?.cut);
    expect(grid).toMatchObject({ columns: nearest?.columns, rows: nearest?.rows });
    expect(size.washed.width).toBeCloseTo(nearest?.washed.width ?? 0, 3);
    expect(size.washed.height).toBeCloseTo(nearest?.washed.height ?? 0, 3);
  });

  test('linkPlan is nothing for a quilt that is sewn already', () => {
    expect(linkPlan(predict('sewn.width=42&sewn.height=52'))).toBeUndefined();
  });
});

function predict(size: string) {
  return answerWash(`${SWATCHES}&${size}`) as ReturnType<typeof answerWash> & {
    readonly sizes: readonly {
      readonly washes: number;
      readonly width: number;
      readonly height: number;
      readonly low: { readonly width: number; readonly height: number };
      readonly high: { readonly width: number; readonly height: number };
    }[];
  };
}
