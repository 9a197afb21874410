import { describe, expect, test } from 'vitest';
import { counterFor } from '../../support/counter-needs.ts';
import { planFor } from '../../support/plans.ts';

describe('listNeeds', () => {
  test.each([
    { target: { width: 40, height: 50 } },
    { unit: 'cm' as const, target: { size: 'double' as const }, spare: 0 },
    {
      target: { columns: 7, rows: 9 },
      layers: [
        {
          role: 'top' as const,
          prints: [
            { id: 'Oat sprig', count: 40 },
            { id: 'Moss', count: 23 },
          ],
        },
        { role: 'middle' as const },
        { role: 'backing' as const },
      ],
    },
  ])('listNeeds of %j has the rows of the plan', (request) => {
    const { needs, choice } = counterFor(request);
    const { fabrics, grid } = planFor(request);
    expect(choice.chosen.grid).toEqual({ columns: grid.columns, rows: grid.rows });
    const rows = needs.map(({ cloth, squares, spare }) => [cloth, squares - spare, spare]);
    expect(rows).toEqual(
      fabrics.map(({ role, fabric, print, pieces, spare }) => [
        { role, fabric, ...(print !== undefined && { print }) },
        pieces,
        spare,
      ]),
    );
  });
});
