/**
 * Puts a fraction behind the whole part of what was typed.
 *
 * @example
 * setFraction('8', '½') // => '8½'
 * setFraction('8 1/4', '½') // => '8½'
 * setFraction('3/8', '⅞') // => '⅞'
 */
export function setFraction(typed: string, sign: string): string {
  return (/^\d+(?![\d/])/.exec(typed.trim())?.[0] ?? '') + sign;
}
