/** The eighths that have a sign of their own. */
const SIGNS: Readonly<Record<string, string>> = {
  '1/8': '⅛',
  '1/4': '¼',
  '3/8': '⅜',
  '1/2': '½',
  '5/8': '⅝',
  '3/4': '¾',
  '7/8': '⅞',
};

/**
 * Sets the eighths in a text as fraction signs.
 *
 * @example
 * typesetFractions('8 1/2 in') // => '8½ in'
 * typesetFractions('3/4 yd') // => '¾ yd'
 */
export function typesetFractions(text: string): string {
  return text.replace(
    /(?<![\d/])(\d+ )?([1357]\/[248])(?![\d/])/g,
    (all: string, whole: string | undefined, fraction: string) => {
      const sign = SIGNS[fraction];
      return sign === undefined ? all : `${whole?.trim() ?? ''}${sign}`;
    },
  );
}
