const FRACTIONS =
  '½1/2 ⅓1/3 ⅔2/3 ¼1/4 ¾3/4 ⅛1/8 ⅜3/8 ⅝5/8 ⅞7/8 ⅕1/5 ⅖2/5 ⅗3/5 ⅘4/5 ⅙1/6 ⅚5/6'.split(' ');

/**
 * Writes what was typed with every sign in its plain form: fraction signs spelt out, typographic quotes, hyphens and
 * spaces as those of a keyboard, full-width signs and the digits of Arabic keyboards as 0 to 9, one space where there
 * were several, letters small, and no plus before a number.
 *
 * @example
 * writePlain('+8⅜ In') // => '8 3/8 in'
 * writePlain('４’２″') // => '4\'2"'
 * writePlain('٨٫٥') // => '8.5'
 */
export function writePlain(typed: string): string {
  const signs = FRACTIONS.reduce(
    (text, fraction) => text.replaceAll(fraction.charAt(0), ` ${fraction.slice(1)}`),
    typed.normalize('NFC'),
  );
  return signs
    .replace(/[！-～]/g, (wide) => String.fromCharCode(wide.charCodeAt(0) - 0xfee0))
    .replace(/[٠-٩۰-۹]/g, (digit) => `${digit.charCodeAt(0) & 15}`)
    .replace(/٫/g, '.')
    .replace(/[⁄∕]/g, '/')
    .replace(/[‘’′]/g, "'")
    .replace(/[“”„″]|''/g, '"')
    .replace(/[‐‑–]/g, '-')
    .replace(/\s+/g, ' ')
    .trim()
    .toLowerCase()
    .replace(/^\+ ?(?=[\d.,])/, '');
}
