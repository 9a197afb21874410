import { describe, expect, test } from 'vitest';
import type { PlanAnswer } from '#core/contract.ts';
import { app } from '../../../api/app.ts';
import { tellPlan, tellSize } from '../../../api/pages/tell-plan.ts';
import { findRow } from '../../support/tell-answer.ts';

const QUERY = 'target.width=40&target.height=50';
const ask = async (query: string): Promise<PlanAnswer> =>
  (await (await app.request(`/v1/plan?${query}`)).json()) as PlanAnswer;

describe('tellSize', () => {
  test('tells blocks, cut and cloth as the API says them', async () => {
    const answer = await ask(QUERY);
    const told = tellSize(answer);
    expect(told.title).toBe('Rag quilt of 4 by 5 blocks, about 40 1/2 in by 50 1/8 in');
    expect(findRow(told, 'Blocks')).toBe('20: 4 across, 5 down');
    expect(findRow(told, 'Cut each block')).toBe('12 in square');
    expect(findRow(told, 'backing, flannel')).toBe('2 3/8 yd');
    expect(told.image).toBe(`/v1/plan.svg?${QUERY}`);
  });
  test('tells offers where there are some, and leaves out prints that no block is left for', async () => {
    const told = tellSize(
      await ask(
        'target.columns=1&target.rows=2&layers.0.role=top&layers.1.role=backing' +
          '&layers.1.offers.0.kind=pieces&layers.1.offers.0.id=fat%20quarter&layers.1.offers.0.width=21' +
          '&layers.1.offers.0.length=18&layers.1.offers.0.count=1&layers.1.offers.0.price=300',
      ),
    );
    expect(findRow(told, 'backing, flannel')).toBe('fat quarter: 1 piece of 21 in by 18 in');
    expect(findRow(told, 'top D, quilting cotton')).toBeUndefined();
  });
});

describe('tellPlan', () => {
  test('adds thread, needle, hours and every step of the work', async () => {
    const answer = await ask(`${QUERY}&unit=in`);
    const told = tellPlan(answer);
    expect(findRow(told, 'Needle')).toBe(answer.bulk.needle);
    expect(findRow(told, 'Thread, at most about')).toBe(`${Math.ceil(answer.thread.used)} yd`);
    expect(told.steps).toEqual(answer.steps.map((step) => step.do));
    expect(told.cautions).toEqual(answer.cautions);
  });
});
