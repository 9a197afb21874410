import type { RollAnswer, Unit, YardageAnswer } from '#core/contract.ts';
import { roundTo } from '#core/length.ts';
import { sayLength } from './say-length.ts';
import type { Row, Telling } from './telling.ts';

/** What to buy of each cloth, how it is cut, and whether what is left on the bolt is enough. */
export function tellYardage(answer: YardageAnswer): Telling {
  const { fabrics, cautions, links, input } = answer;
  const bought = fabrics.map((fabric) => `${fabric.id}, ${sayBought(fabric)}`).join('; ');
  return {
    title: `Cloth to buy: ${bought}`,
    tables: fabrics.map((fabric) => ({ name: fabric.id, rows: tellRoll(fabric, input.unit) })),
    cautions,
    image: links.self.replace('/v1/yardage', '/v1/yardage.svg'),
  };
}

function sayBought({ buy }: RollAnswer): string {
  return buy.map(({ text }) => text).join(' and ') || 'nothing';
}

function tellRoll(fabric: RollAnswer, unit: Unit): readonly Row[] {
  const { enough, fits = [], strips } = fabric;
  const pieces = fits.map(({ id, count }) => `${count} of ${id}`).join(', ');
  const cut = strips.map(({ count, length, pieces: beside }): Row => {
    const each = beside.map((piece) => `${piece.count} of ${piece.id}`).join(' and ');
    const name = `${count} ${count === 1 ? 'strip' : 'strips'} of ${sayLength(length, unit)}`;
    return [name, `each gives ${each}`];
  });
  return [
    ['Buy', sayBought(fabric)],
    ['Cut into', sayLength(fabric.length, unit)],
    ['Cloth between the selvages', sayLength(fabric.usableWidth, unit)],
    ...cut,
    ['Left over', `${roundTo(fabric.waste, 0)} %`],
    ...(enough === undefined ? [] : [tellEnough(enough, pieces)]),
  ];
}

function tellEnough(isEnough: boolean, pieces: string): Row {
  if (isEnough) return ['Is what is there enough', 'Yes'];
  return ['Is what is there enough', pieces === '' ? 'No' : `No, it gives ${pieces}`];
}
