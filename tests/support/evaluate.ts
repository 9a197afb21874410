const WORDS = ['floor', 'ceil', 'sqrt', 'round', 'max'] as const;

/**
 * Reckons a formula of plain arithmetic over named numbers: `+ - * / ** ( )`, `floor ceil sqrt round max`.
 * A name that is given and not used, or used and not given, is an error.
 */
export function evaluate(formula: string, numbers: Readonly<Record<string, number>>): number {
  if (!/^[\w\s.,()+\-*/]+$/.test(formula)) throw new Error(`Not plain arithmetic: ${formula}`);
  const names = new Set(formula.match(/[A-Za-z]\w*/g) ?? []);
  for (const word of WORDS) names.delete(word);
  const unknown = [...names].filter((name) => numbers[name] === undefined);
  const idle = Object.keys(numbers).filter((name) => !names.has(name));
  if (unknown.length + idle.length > 0) throw new Error(`${formula}: ${[...unknown, ...idle]}`);
  const reckon = new Function(...WORDS, ...Object.keys(numbers), `return ${formula};`);
  return reckon(Math.floor, Math.ceil, Math.sqrt, Math.round, Math.max, ...Object.values(numbers));
}
