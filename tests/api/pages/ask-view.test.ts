import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { askView, listFaulty } from '../../../api/pages/ask-view.ts';
import { findView } from '../../support/tell-answer.ts';

const plan = findView('plan');
const strict = { isLenient: false };
const lenient = { isLenient: true };

describe('askView', () => {
  test('asks by the canonical query, however it was spelt', () => {
    const seen = askView(plan, ENDPOINTS, 'target.height=50.0&target.width=40', strict);
    expect(seen).toMatchObject({ ok: true, query: 'target.width=40&target.height=50' });
  });
  test('tells every fault, those of a query that cannot be read too', () => {
    const seen = askView(plan, ENDPOINTS, 'target.size=throw&spare=300&%zz=1', strict);
    const codes = seen.ok ? [] : seen.faults.map(({ code }) => code);
    expect(codes.toSorted()).toEqual(['malformed-query', 'too-large']);
  });
  test('passes over what other sites append, where that is asked for', () => {
    const query = 'fbclid=a1&target.size=lap&utm_source=mail';
    expect(askView(plan, ENDPOINTS, 'target.size=lap&ref=a', strict)).toMatchObject({ ok: false });
    expect(askView(plan, ENDPOINTS, 'target.size=lap&ref=a', lenient)).toMatchObject({
      ok: true,
      query: 'target.size=lap',
    });
    expect(askView(plan, ENDPOINTS, query.replace('utm_source', 'utmsource'), lenient).ok).toBe(
      true,
    );
  });
  test('shows the example where only that was asked', () => {
    expect(askView(plan, ENDPOINTS, 'ref=mail', lenient)).toMatchObject({
      ok: true,
      query: plan.example,
    });
  });
  test('is a bug where no endpoint answers', () => {
    expect(() => askView(plan, [], '', strict)).toThrow('/v1/plan');
  });
});

describe('listFaulty', () => {
  test('lists the places as a query has them', () => {
    const seen = askView(plan, ENDPOINTS, 'target.width=x&target.height=50', strict);
    expect(listFaulty(seen)).toEqual(['target.width']);
    expect(listFaulty(askView(plan, ENDPOINTS, '', strict))).toEqual([]);
  });
});
