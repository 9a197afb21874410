import { en } from './en.ts';

/** All that the page says, in one language; English sets what there is to say. */
export type Text = typeof en;

const LANGUAGES: readonly Text[] = [en];

/**
 * The text in the first language asked for that there is, else English.
 *
 * @param languages tags such as `de-AT`, best first.
 *
 * @example
 * chooseText(['xx', 'en-GB']).language // => 'en'
 */
export function chooseText(languages: readonly string[]): Text {
  const known = languages.flatMap((tag) => {
    const primary = tag.toLowerCase().split('-')[0];
    return LANGUAGES.filter(({ language }) => language === primary);
  });
  return known[0] ?? en;
}
