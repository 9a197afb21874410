import fc from 'fast-check';
import type { LayoutRequest } from '#core/contract.ts';

const side = fc.integer({ min: 1, max: 9 });

/** Wishes for a layout, nearly all possible: some with counts, some with pins, some with a whole grid. */
export const layoutRequests: fc.Arbitrary<LayoutRequest> = fc
  .tuple(side, side, fc.integer({ min: 2, max: 7 }))
  .chain(([columns, rows, prints]) =>
    fc
      .record({
        picks: fc.array(fc.nat({ max: prints - 1 }), {
          minLength: columns * rows,
          maxLength: columns * rows,
        }),
        isCounted: fc.boolean(),
        pins: fc.constantFrom(0, 0.2, 1),
        chances: fc.array(fc.integer({ min: 0, max: 99 }), {
          minLength: columns * rows,
          maxLength: columns * rows,
        }),
        values: fc.option(fc.array(fc.nat({ max: 100 }), { minLength: prints, maxLength: prints })),
        rest: fc.record(
          {
            pattern: fc.constantFrom(
              'scattered' as const,
              'checkerboard' as const,
              'diagonal' as const,
              'rings' as const,
            ),
            touch: fc.constantFrom('corners' as const, 'sides' as const),
            seed: fc.nat({ max: 4_294_967_295 }),
          },
          { requiredKeys: [], noNullPrototype: true },
        ),
      })
      .map(({ picks, isCounted, pins, chances, values, rest }) => {
        const letters = picks.map((pick) => String.fromCharCode(65 + pick));
        const pinned = letters.map((letter, at) =>
          (chances[at] ?? 0) < pins * 100 ? letter : '.',
        );
        return {
          columns,
          rows,
          prints: Array.from({ length: prints }, (_, at) => ({
            id: `Print ${at}`,
            ...(isCounted && { count: picks.filter((pick) => pick === at).length }),
            ...(values !== null && { value: values[at] ?? 0 }),
          })),
          ...(pins > 0 && {
            fixed: Array.from({ length: rows }, (_, row) =>
              pinned.slice(row * columns, (row + 1) * columns).join(''),
            ),
          }),
          ...rest,
        };
      }),
  );
