import type { Derivation } from '#core/contract.ts';
import { evaluate } from './evaluate.ts';

/** Figures in an answer are rounded to 4 decimals. */
const ROUNDING = 0.000051;

/**
 * What is wrong with derivations: a formula that does not come to its value, a value that is not the
 * figure at its path, a path told twice, a source left empty.
 */
export function judgeDerivations(rows: readonly Derivation[], answer: unknown): readonly string[] {
  const seen = new Set<string>();
  return rows.flatMap(({ path, formula, numbers, value, source }) => {
    const found = evaluate(formula, numbers);
    const figure = findFigure(answer, path);
    const isTwice = seen.has(path);
    seen.add(path);
    return [
      ...(Math.abs(found - value) <= ROUNDING
        ? []
        : [`${path}: ${formula} = ${found}, not ${value}`]),
      ...(figure === value ? [] : [`${path}: the answer says ${figure}, not ${value}`]),
      ...(isTwice ? [`${path} is told twice`] : []),
      ...(source === '' ? [`${path} has no source`] : []),
    ];
  });
}

/** The figure at a dotted path. */
export function findFigure(answer: unknown, path: string): unknown {
  return path
    .split('.')
    .reduce<unknown>(
      (part, key) =>
        typeof part === 'object' && part !== null ? Reflect.get(part, key) : undefined,
      answer,
    );
}
