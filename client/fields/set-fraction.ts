/** What stands before the last whole number, that number, its fraction or decimals, and the unit behind. */
const PARTS =
  /^(.*?)(\d+(?!\d))?(?:[.,]\d*|[ -]*\d+ ?[/⁄∕] ?\d*|[ -]?[½¼¾⅛⅜⅝⅞⅓⅔⅚])?( ?(?:\p{L}+\.?|["'″′”“„’]{0,2}))$/u;

/** A number with thousands set off is not one that eighths belong to. */
const THOUSANDS = /\d[.,]\d{3}[.,]\d/;

/**
 * Puts a fraction behind the last whole number that was typed, in the place of the one that stands there. What was
 * typed before it, and the unit, stay.
 *
 * @example
 * setFraction('8', '½') // => '8½'
 * setFraction('8 1/4 in', '½') // => '8½ in'
 * setFraction('3/8', '⅞') // => '⅞'
 */
export function setFraction(typed: string, sign: string): string {
  const text = typed.normalize('NFC').trim();
  if (THOUSANDS.test(text)) return typed;
  if (!/\d|[½¼¾⅛⅜⅝⅞⅓⅔]/.test(text)) return sign;
  const [, before = '', whole = '', unit = ''] = PARTS.exec(text) ?? [];
  return `${before}${whole}${sign}${unit}`;
}
