import { type CautionsWords, cautionsSource } from './cautions/source.ts';
import { joinSources } from './join-sources.ts';
import type { TextSource } from './languages.ts';
import { type LightWords, lightSource } from './light/source.ts';
import { type SharedWords, sharedSource } from './shared/source.ts';
import { type WashWords, washSource } from './wash/source.ts';

/** The words that all elements share, and those of the wash. */
export interface WashText {
  readonly text: SharedWords;
  readonly cautions: CautionsWords;
  readonly light: LightWords;
  readonly words: WashWords;
}

/** The text about the wash, in every language. */
export const washText: TextSource<WashText> = joinSources<WashText>({
  text: sharedSource,
  cautions: cautionsSource,
  light: lightSource,
  words: washSource,
});
