import type { StashAnswer, StashOption, Unit } from '#core/contract.ts';
import { sayLength, saySides } from './say-length.ts';
import type { Row, Telling } from './telling.ts';

/** The quilts that the cloth at hand makes, the largest first, and what each takes of which piece. */
export function tellStash(answer: StashAnswer): Telling {
  const { options, cautions, input } = answer;
  const count = options.length;
  const limits: Row = ['What keeps it from being larger', answer.limitedBy.join(', ')];
  return {
    title:
      count === 0
        ? 'This cloth makes no quilt yet'
        : `${count} ${count === 1 ? 'quilt' : 'quilts'} that this cloth makes`,
    tables: [
      ...options.map((option) => ({
        name: `${option.columns} by ${option.rows} blocks`,
        rows: tellOption(option, input.unit),
      })),
      ...(answer.limitedBy.length === 0 ? [] : [{ name: 'Limits', rows: [limits] }]),
    ],
    cautions,
  };
}

function tellOption(option: StashOption, unit: Unit): readonly Row[] {
  const { cut, sewn, washed, uses, buy } = option;
  return [
    ['Cut each block', `${sayLength(cut, unit)} square`],
    ['Sewn', saySides(sewn, unit)],
    ['Washed, about', saySides(washed, unit)],
    ...uses.map(({ id, role, blocks }): Row => [`${id}, ${role}`, `${blocks} squares`]),
    ...buy.map(({ role, blocks }): Row => [`To buy, ${role}`, `${blocks} squares`]),
  ];
}
