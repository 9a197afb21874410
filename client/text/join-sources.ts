import type { TextSource } from './languages.ts';

/**
 * The words of several parts as those of one, so that an element loads all it says at once. Where one part cannot be
 * had in a language, none is taken: half a page in another language is worse than a whole one.
 *
 * @example
 * const part = { en: 'Seam', load: { es: async () => 'Costura', de: async () => 'Naht', fr: async () => 'Couture' } };
 * joinSources({ seam: part }).en // => { seam: 'Seam' }
 */
export function joinSources<Parts extends object>(
  sources: {
    readonly [Name in keyof Parts]: TextSource<Parts[Name]>;
  },
): TextSource<Parts> {
  const entries = Object.entries(sources) as [string, TextSource<unknown>][];
  const load = (language: 'es' | 'de' | 'fr') => async () => {
    const parts = entries.map(async ([name, source]) => [name, await source.load[language]()]);
    return Object.fromEntries(await Promise.all(parts)) as Parts;
  };
  return {
    en: Object.fromEntries(entries.map(([name, { en }]) => [name, en])) as Parts,
    load: { es: load('es'), de: load('de'), fr: load('fr') },
  };
}
