import { describe, expect, test } from 'vitest';
import { type FabricInput, listOffers, readFabric } from '#core/yardage/read-fabric.ts';

const FABRIC: FabricInput = {
  id: 'cloth',
  width: 108,
  selvage: 1.5,
  prewash: { length: 5, width: 2 },
  squaring: 2.5,
  step: 10,
  pieces: [{ id: 'p', width: 20, length: 30, count: 7, directional: true }],
};

describe('listOffers', () => {
  test('listOffers is the roll by its step where nothing is offered', () => {
    expect(listOffers(FABRIC)).toEqual([{ kind: 'roll', id: 'roll', step: 10, least: 10 }]);
  });
});

describe('readFabric', () => {
  test('readFabric in millimetres: usable 108·0.98 − 2·1.5 cm, a step gives 95 % of itself', () => {
    const order = readFabric(FABRIC, 'cm');
    expect(order.usable).toBeCloseTo(1058.4 - 30, 9);
    expect(order.kinds).toEqual([{ across: 200, along: 300, count: 7, canTurn: false }]);
    expect(order).toMatchObject({ costs: 'area', squaring: 25, rollPlaces: [0], sheetPlaces: [] });
    // 10 cm of 108 cm are 1080 cm².
    expect(order.rolls).toEqual([{ room: 95, squaring: 25, least: 1, cost: 1080 }]);
    expect(order).not.toHaveProperty('lengthLeft');
  });

  test('readFabric counts the price of a step from that of a yard or a metre, and the least in steps', () => {
    const offers = [
      { kind: 'pieces', id: 'q', width: 50, length: 55, count: 2, most: 3, price: 600 },
      { kind: 'roll', id: 'r', step: 25, least: 60, price: 1800 },
    ] as const;
    const order = readFabric({ ...FABRIC, offers, lengthLeft: 90 }, 'cm');
    expect(order).toMatchObject({
      costs: 'price',
      lengthLeft: 900,
      rollPlaces: [1],
      sheetPlaces: [0],
    });
    expect(order.rolls).toMatchObject([{ least: 3, cost: 450, room: 237.5 }]);
    expect(order.sheets).toMatchObject([{ count: 2, most: 3, cost: 600 }]);
    expect(order.sheets[0]?.width).toBeCloseTo(490, 9);
    expect(order.sheets[0]?.length).toBeCloseTo(522.5, 9);
    const yards = readFabric({ ...FABRIC, offers, step: 4.5 }, 'in');
    expect(yards.rolls[0]?.cost).toBeCloseTo((1800 * 25) / 36, 9);
  });
});
