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
    expect(askView(plan, ENDPOINTS, 'target.size=lap&ref=a', strict)).toMatchObject({ ok: false });
    expect(askView(plan, ENDPOINTS, 'target.size=lap&ref=a', lenient)).toMatchObject({
      ok: true,
      query: 'target.size=lap',
    });
    const query = 'fbclid=a1&target.size=lap&utm_source=mail&utm_medium=a_b';
    expect(askView(plan, ENDPOINTS, query, lenient)).toMatchObject({
      ok: true,
      query: 'target.size=lap',
    });
    for (const broken of ['target.si_ze=lap', 'target.size=lap&cuts.1=8', 'target.size=lap&%zz=1'])
      expect(askView(plan, ENDPOINTS, broken, lenient).ok, broken).toBe(false);
  });
  test('shows the example where only that was asked', () => {
    expect(askView(plan, ENDPOINTS, 'ref=mail', lenient)).toMatchObject({
      ok: true,
      isExample: true,
      query: plan.example,
    });
    expect(askView(plan, ENDPOINTS, 'target.size=lap&ref=mail', lenient).isExample).toBe(false);
    expect(askView(plan, ENDPOINTS, 'ref=mail', strict).isExample).toBe(false);
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
