import { describe, expect, test } from 'vitest';
import type { StashRequest } from '#core/contract.ts';
import { resolveStash } from '#core/wish/resolve-stash.ts';
import { expectStable } from '../../support/resolved-twice.ts';
import { topPiece } from '../../support/stashes.ts';

const pieces = [
  topPiece('quarter', 21, 18),
  { id: 'bolt end', role: 'backing' as const, width: 44, length: 60 },
];
const read = (request: StashRequest) => {
  const resolved = resolveStash(request);
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return resolved.value;
};

describe('resolveStash', () => {
  test('resolveStash fills what is usual: selvages for what is as wide as a bolt alone', () => {
    const { input, assumptions } = read({ pieces });
    expect(input.pieces).toEqual([
      { ...pieces[0], print: 'quarter', count: 1, directional: false, selvage: 0 },
      { ...pieces[1], print: 'bolt end', count: 1, directional: false, selvage: 0.5 },
    ]);
    expect(input).toMatchObject({
      block: { seam: 1 },
      shape: { ratio: 0.8 },
      grain: 'alternating',
      washes: 1,
      squaring: 0,
      usable: 2.5,
    });
    expect(input.layers.map(({ role, fabric }) => `${role} ${fabric}`)).toEqual([
      'top quilting-cotton',
      'backing flannel',
    ]);
    expect(assumptions.map(({ path }) => path)).toEqual(
      expect.arrayContaining(['pieces.0.selvage', 'pieces.1.selvage', 'shape.ratio', 'usable']),
    );
  });

  test('resolveStash says nothing of rolls, since the pieces are what there is', () => {
    const paths = read({ pieces }).assumptions.map(({ path }) => path);
    expect(paths.filter((path) => /^layers\.\d\.(prints|width|selvage)/.test(path))).toEqual([]);
  });

  test('resolveStash takes a middle layer from a piece for it', () => {
    const middle = { id: 'batting', role: 'middle' as const, width: 90, length: 60 };
    expect(read({ pieces: [...pieces, middle] }).input.layers.map(({ role }) => role)).toEqual([
      'top',
      'middle',
      'backing',
    ]);
  });

  test('resolveStash writes a canonical query with defaults left out', () => {
    const spelt = {
      pieces,
      grain: 'alternating' as const,
      usable: '2 1/2',
      touch: 'corners' as const,
    };
    expect(read(spelt).query).toBe(
      'pieces.0.id=quarter&pieces.0.role=top&pieces.0.width=21&pieces.0.length=18' +
        '&pieces.1.id=bolt%20end&pieces.1.role=backing&pieces.1.width=44&pieces.1.length=60' +
        '&touch=corners',
    );
  });

  test.each<[string, StashRequest]>([
    ['plain', { pieces }],
    ['in centimetres', { unit: 'cm', pieces: [topPiece('12', 108, 50, { print: '7', count: 3 })] }],
    [
      'with everything said',
      {
        pieces: [...pieces, { id: 'm', role: 'middle', width: '1 yd', length: 80, selvage: '1/4' }],
        block: { cut: 9, seam: '3/4' },
        layers: [
          { role: 'top', prewashed: true },
          { role: 'middle', fabric: 'blend-batting' },
          { role: 'backing', fabric: 'fleece', shrink: { length: 1, width: 1 } },
        ],
        shape: { target: { size: 'throw' } },
        touch: 'sides',
        grain: 'aligned',
        washes: 3,
        squaring: 0.5,
        usable: 4,
      },
    ],
    ['with cuts', { pieces, cuts: [9, '7 1/2'], shape: { target: { columns: 3, rows: 4 } } }],
  ])('resolveStash understands what it understood, given back: %s', (_, request) => {
    expectStable(resolveStash, request);
  });

  test('resolveStash finds everything at once', () => {
    const resolved = resolveStash({
      pieces: [topPiece('a', 21, 18, { selvage: 'x' }), topPiece('a', 5000, 18)],
      block: { seam: 'wide' },
      shape: { target: { width: 1, height: 40 } },
    });
    const faults = resolved.ok
      ? []
      : resolved.faults.map(({ code, path }) => [code, path.join('.')]);
    expect(faults).toEqual([
      ['not-a-length', 'pieces.0.selvage'],
      ['too-large', 'pieces.1.width'],
      ['not-a-length', 'block.seam'],
      ['too-small', 'shape.target.width'],
      ['repeated-id', 'pieces.1.id'],
    ]);
  });
});
