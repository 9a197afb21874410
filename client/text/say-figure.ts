/** A number as the core writes it or as fraction signs set it, and the unit behind it. */
const FIGURE = /^[\d.½¼¾⅛⅜⅝⅞⅓⅔⅙⅚⅕⅖⅗⅘/ ]+(?:[ \u00a0](?:in|ft|yd|mm|cm|m|g|kg|lb|%))?$/;

/**
 * A figure that a fault tells, with the decimal sign of the language. What the core tells in English words instead
 * is left out, so that a sentence is in one language only.
 *
 * @param told as in `expected` and `received` of a fault.
 * @returns nothing where there is no figure.
 *
 * @example
 * sayFigure('de', '2.5 cm') // => '2,5 cm'
 * sayFigure('en', '196¾ in') // => '196¾ in'
 * sayFigure('de', 'at least one share above 0') // => ''
 */
export function sayFigure(
  language: string,
  told: string | number | readonly string[] | undefined,
): string {
  const text = `${told ?? ''}`;
  if (!FIGURE.test(text)) return '';
  const [point = '.'] = new Intl.NumberFormat(language).format(0.5).match(/\D/) ?? [];
  return text.replace('.', point);
}
