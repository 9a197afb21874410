/** Says how many there are, with the noun in the form that goes with the number. */
export type Count = (count: number, one: string, other: string) => string;

/**
 * How a language says a number with its noun: the form by its plural rules, the number in its manner.
 *
 * @example
 * makeCount('en')(1, 'block', 'blocks') // => '1 block'
 * makeCount('fr')(0, 'bloc', 'blocs') // => '0 bloc'
 * makeCount('de')(1250, 'Block', 'Blöcke') // => '1.250 Blöcke'
 */
export function makeCount(language: string): Count {
  const rules = new Intl.PluralRules(language);
  const { format } = new Intl.NumberFormat(language);
  return (count, one, other) => `${format(count)} ${rules.select(count) === 'one' ? one : other}`;
}
