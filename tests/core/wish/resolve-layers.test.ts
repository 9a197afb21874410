import { describe, expect, test } from 'vitest';
import type { Layer, PlanLayer, Unit } from '#core/contract.ts';
import { findFabric } from '#core/tables/fabrics.ts';
import { startReading, writeQuery } from '#core/wish/reading.ts';
import { resolveLayers } from '#core/wish/resolve-layers.ts';
import { deepFreeze } from '../../support/deep-freeze.ts';

function read(layers: readonly PlanLayer[] | undefined, unit: Unit = 'in') {
  const reading = startReading(unit);
  const resolved = resolveLayers(reading, deepFreeze(layers));
  return { resolved, ...reading, query: decodeURIComponent(writeQuery(reading.kept)) };
}
const paths = ({ assumptions }: ReturnType<typeof read>) => assumptions.map(({ path }) => path);

describe('resolveLayers', () => {
  test('resolveLayers of nothing is four cotton prints on one flannel, and says so', () => {
    const classic = read(undefined);
    expect(
      classic.resolved.map(({ role, fabric, prints }) => [role, fabric, prints.length]),
    ).toEqual([
      ['top', 'quilting-cotton', 4],
      ['backing', 'flannel', 1],
    ]);
    for (const path of ['layers', 'layers.0.prints', 'layers.1.width', 'layers.1.shrink.length']) {
      expect(paths(classic)).toContain(path);
    }
  });

  test('resolveLayers of the classic ones spelt out is as if they were left out', () => {
    const left = read(undefined);
    expect(read([{ role: 'top' }, { role: 'backing' }])).toEqual(left);
    expect(read(left.resolved)).toEqual(left);
    const flannel = findFabric('flannel');
    const shrink = { length: flannel.length.usual, width: flannel.width.usual };
    const spelt = { role: 'backing', shrink, shrinkWashes: 1, gsm: flannel.gsm } as const;
    expect(read([{ role: 'top', prints: 4 }, spelt])).toEqual(left);
  });

  test('resolveLayers tells the fabric of a layer where the layers are not the classic ones', () => {
    const three = read([{ role: 'top' }, { role: 'middle' }, { role: 'backing' }]);
    expect(three.query).toBe('layers.0.role=top&layers.1.role=middle&layers.2.role=backing');
    expect(three.resolved.map(({ fabric }) => fabric)).toEqual([
      'quilting-cotton',
      'cotton-batting',
      'flannel',
    ]);
    expect(paths(three)).toContain('layers.1.fabric');
    expect(paths(three)).not.toContain('layers');
  });

  test('resolveLayers takes layers in any order', () => {
    const turned = read([{ role: 'backing' }, { role: 'top' }]);
    expect(turned.faults).toEqual([]);
    expect(turned.resolved.map(({ fabric }) => fabric)).toEqual(['flannel', 'quilting-cotton']);
    expect(turned.query).toBe('layers.0.role=backing&layers.1.role=top');
  });

  test.each<[string, readonly Layer[]]>([
    ['two tops', [{ role: 'top' }, { role: 'top' }]],
    ['no backing', [{ role: 'top' }, { role: 'middle' }]],
    ['two backings', [{ role: 'top' }, { role: 'backing' }, { role: 'backing' }]],
  ])('resolveLayers refuses %s', (_, layers) => {
    expect(read(layers).faults).toMatchObject([{ code: 'layers-unfit', path: ['layers'] }]);
  });

  test('resolveLayers keeps both rates where one differs from the table', () => {
    const own = read([{ role: 'top', shrink: { length: 3.5, width: 9 } }, { role: 'backing' }]);
    expect(own.query).toContain('layers.0.shrink.length=3.5&layers.0.shrink.width=9');
    expect(paths(own)).not.toContain('layers.0.shrink.length');
    expect(paths(own)).toContain('layers.0.shrinkWashes');
  });

  test('resolveLayers asks nothing of a wash count without rates', () => {
    const cotton = findFabric('quilting-cotton');
    const [top] = read([{ role: 'top', shrinkWashes: 5 }, { role: 'backing' }]).resolved;
    expect(top).toMatchObject({
      shrink: { length: cotton.length.usual, width: cotton.width.usual },
      shrinkWashes: 1,
    });
  });

  test('resolveLayers takes mass and thickness from the fabric until they are given', () => {
    const [top] = read([
      { role: 'top', fabric: 'denim', thickness: 1.1 },
      { role: 'backing' },
    ]).resolved;
    expect(top).toMatchObject({ gsm: 340, thickness: 1.1 });
  });

  test('resolveLayers reads what a layer is sold as, and tells the step that a roll does not name', () => {
    const offers = [
      { kind: 'roll', id: 'bolt', price: 1200 },
      { kind: 'pieces', id: 'quarter', width: '21', length: 18, count: 1, price: 350 },
    ] as const;
    const own = read([{ role: 'top', offers }, { role: 'backing' }]);
    expect(own.resolved[0]?.offers).toEqual([
      { kind: 'roll', id: 'bolt', step: 4.5, least: 4.5, price: 1200 },
      { kind: 'pieces', id: 'quarter', width: 21, length: 18, count: 1, price: 350 },
    ]);
    expect(own.resolved[1]).not.toHaveProperty('offers');
    expect(own.query).toBe(
      'layers.0.role=top&layers.0.offers.0.kind=roll&layers.0.offers.0.id=bolt&layers.0.offers.0.price=1200&layers.0.offers.1.kind=pieces&layers.0.offers.1.id=quarter&layers.0.offers.1.width=21&layers.0.offers.1.length=18&layers.0.offers.1.count=1&layers.0.offers.1.price=350&layers.1.role=backing',
    );
    expect(own.assumptions).toContainEqual(
      expect.objectContaining({ path: 'layers.0.offers.0.step', value: 4.5 }),
    );
    expect(read(own.resolved)).toEqual(own);
  });

  test('resolveLayers points at what is wrong with an offer, in its layer', () => {
    const offers = [
      { kind: 'roll', id: 'a', price: 1 },
      { kind: 'pieces', id: 'a', width: 'x', length: 18, count: 1 },
    ] as const;
    const { faults } = read([{ role: 'top' }, { role: 'backing', offers }]);
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['repeated-id', 'layers.1.offers.1.id'],
      ['missing', 'layers.1.offers.1.price'],
      ['not-a-length', 'layers.1.offers.1.width'],
    ]);
  });

  test('resolveLayers finds every wrong length of every layer at once', () => {
    const { faults } = read([
      { role: 'top', width: 'wide', selvage: -1 },
      { role: 'backing', prints: [{ id: 'a', width: '1 in' }] },
    ]);
    expect(faults.map(({ code, path }) => [code, path.join('.')])).toEqual([
      ['not-a-length', 'layers.0.width'],
      ['negative-length', 'layers.0.selvage'],
      ['too-small', 'layers.1.prints.0.width'],
    ]);
  });
});
