/** The languages that there are words in; English is always at hand, the others are fetched when they are wanted. */
export type Language = 'en' | 'es' | 'de' | 'fr';

/** The words of one part of a page, in every language; English sets what there is to say. */
export interface TextSource<Words> {
  readonly en: Words;
  readonly load: Readonly<Record<Exclude<Language, 'en'>, () => Promise<Words>>>;
}

const LANGUAGES: readonly string[] = ['en', 'es', 'de', 'fr'] satisfies readonly Language[];

/**
 * The first language asked for that there is, else English.
 *
 * @param tags such as `de-AT` (BCP 47), best first.
 *
 * @example
 * chooseLanguage(['xx', 'de-AT']) // => 'de'
 * chooseLanguage([]) // => 'en'
 */
export function chooseLanguage(tags: readonly string[]): Language {
  const primaries = tags.map((tag) => tag.toLowerCase().split('-')[0] ?? '');
  return (primaries.find((tag) => LANGUAGES.includes(tag)) ?? 'en') as Language;
}

/** The words in a language; in English where that language cannot be had. */
export async function loadText<Words>(
  source: TextSource<Words>,
  language: Language,
): Promise<Words> {
  if (language === 'en') return source.en;
  return source.load[language]().catch(() => source.en);
}
