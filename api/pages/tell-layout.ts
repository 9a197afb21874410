import type { LayoutAnswer } from '#core/contract.ts';
import { letterOf } from '#core/layout/letter-of.ts';
import { nameRow } from '#core/layout/name-row.ts';
import type { Row, Telling } from './telling.ts';

/** Where each print goes, row by row from the top, and how often like blocks meet. */
export function tellLayout(answer: LayoutAnswer): Telling {
  const { columns, rows, prints } = answer.input;
  const { sides, corners } = answer.touching;
  const meetings: readonly Row[] = [
    ['Sharing a side', `${sides}`],
    ['Meeting at a corner', `${corners}`],
  ];
  return {
    title: `Layout of ${columns} by ${rows} blocks in ${prints.length} prints`,
    tables: [
      {
        name: 'Prints',
        rows: prints.map(
          ({ id, count }, at): Row => [`Print ${letterOf(at)}`, `${id}, ${count} blocks`],
        ),
      },
      {
        name: 'Rows from the top',
        rows: answer.cells.map((row, at): Row => [`Row ${nameRow(at)}`, [...row].join(' ')]),
      },
      { name: 'Blocks of one print', rows: meetings },
    ],
    cautions: answer.cautions,
    ...(answer.links.image !== undefined && { image: answer.links.image }),
  };
}
