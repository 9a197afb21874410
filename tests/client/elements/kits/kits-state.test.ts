import { describe, expect, test } from 'vitest';
import {
  chooseKind,
  chooseWay,
  currencyOf,
  FIRST_DRAFT,
  findKind,
  findWay,
  type KitsDraft,
  listNames,
  listOtherFaults,
  namesPrints,
  unitOf,
  writeAsked,
} from '../../../../client/elements/kits/kits-state.ts';
import { answerKits } from '../../../support/stock.ts';

describe('writeAsked', () => {
  test('asks in minor units, and leaves empty rows out', () => {
    const draft: KitsDraft = { 'bolts.1.cost': '11,2', 'bolts.0.id': '', 'costs.labour': '' };
    expect(writeAsked(draft)).toEqual({
      query: 'currency=USD&bolts.0.cost=1120',
      places: [1],
      isEmpty: false,
      faults: [],
    });
  });

  test('tells of what is no amount, at its row', () => {
    const { faults } = writeAsked({ 'bolts.2.cost': 'dear', 'costs.price': '1,2,3' });
    expect(faults.map(({ path }) => path)).toEqual([
      ['costs', 'price'],
      ['bolts', 2, 'cost'],
    ]);
  });
});

describe('chooseKind and findKind', () => {
  test.each(['own', 'grid', 'queen'] as const)(
    'findKind(chooseKind(draft, %j)) is that',
    (kind) => {
      const chosen = chooseKind(FIRST_DRAFT, kind, answerKits());
      expect(findKind(chosen)).toBe(kind);
      expect(Object.keys(chosen).filter((path) => path.startsWith('plan.target.')).length).toBe(
        kind === 'queen' ? 1 : 2,
      );
    },
  );
});

describe('chooseWay and findWay', () => {
  test.each(['none', 'margin', 'markup', 'price'] as const)(
    'findWay(chooseWay(draft, %j)) is that, and no other is left',
    (way) => {
      const chosen = chooseWay(FIRST_DRAFT, way);
      expect(findWay(chosen)).toBe(way);
      const ways = ['margin', 'markup', 'price'] as const;
      const left = ways.filter((one) => chosen[`costs.${one}`] !== undefined);
      expect(left).toEqual(way === 'none' ? [] : [way]);
    },
  );
});

test('currencyOf is what is given, else that of the service for the unit', () => {
  expect([currencyOf({}), currencyOf({ unit: 'cm' }), currencyOf({ currency: 'JPY' })]).toEqual([
    answerKits(
      'plan.target.columns=2&plan.target.rows=2&bolts.0.id=a&bolts.0.role=top&bolts.0.width=44&bolts.0.length=90',
    ).input.currency,
    'EUR',
    'JPY',
  ]);
});

test('listOtherFaults are those that no cell and no field shows', () => {
  const at = (...path: (string | number)[]) => ({ code: 'empty', path }) as const;
  const shown = [
    at('bolts', 0, 'cost'),
    at('kits'),
    at('costs', 'margin'),
    at('plan', 'block', 'cut'),
  ];
  expect(listOtherFaults([...shown, at('plan', 'spare')])).toEqual([at('plan', 'spare')]);
});

test('listNames, namesPrints and unitOf read a draft', () => {
  expect(listNames(true)).toEqual(['id', 'role', 'print', 'width', 'length', 'cost']);
  expect([namesPrints(FIRST_DRAFT), namesPrints({ 'bolts.0.print': 'a' })]).toEqual([false, true]);
  expect(unitOf({ unit: 'cm' })).toBe('cm');
});
