/**
 * The two things that a comma before three digits may mean, each written so that it can mean only one: thousands
 * without a sign, and a decimal in the manner of the language. With several commas only the first can be meant.
 *
 * @example
 * commaReadings('en', '1,250') // => ['1250', '1.250']
 * commaReadings('de', '1,250 mm') // => ['1250 mm', '1,2500 mm']
 * commaReadings('en', '1,234,567') // => ['1234567']
 */
export function commaReadings(language: string, typed: string): readonly string[] {
  const whole = typed.replaceAll(',', '');
  if (typed.replace(',', '').length > whole.length || typed.includes('.')) return [whole];
  // A fourth digit keeps the comma from being taken for that of thousands again.
  const hasPoint = new Intl.NumberFormat(language).format(0.5).includes('.');
  return [whole, hasPoint ? typed.replace(',', '.') : typed.replace(/(,\d{3})/, '$10')];
}
