import type { PropertyDeclarations } from 'lit';
import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from '../data/draft.ts';
import { readCurrency } from '../data/read-currency.ts';
import { type Sentences, sayFault } from '../fields/say-fault.ts';
import type { SaidCaution } from '../text/cautions/en.ts';
import type { CautionsWords } from '../text/cautions/source.ts';
import { type Language, loadText } from '../text/languages.ts';
import type { LightWords } from '../text/light/source.ts';
import type { ShownAnswer } from './errand.ts';
import { MeasuredElement } from './measured-element.ts';

/** How money is written, in whole minor units of a currency. */
type WriteMoney = (language: string, currency: string, minor: number) => string;

/**
 * An element for the page of somebody else: it brings little at first, and fetches what few readers need once they do:
 * the sentences that say what is wrong with what was typed, and how a currency is written.
 */
export abstract class LightElement<
  Kind extends AnyDraft,
  Answer extends ShownAnswer,
  Words extends { readonly light: LightWords },
  Core,
> extends MeasuredElement<Kind, Answer, Words, Core> {
  static override properties: PropertyDeclarations = {
    ...MeasuredElement.properties,
    sentences: { state: true },
    writeMoney: { state: true },
    cautions: { state: true },
  };

  declare protected sentences: Sentences | undefined;
  declare protected writeMoney: WriteMoney | undefined;
  declare protected cautions: CautionsWords | undefined;

  /** The language that the sentences were last asked for in. */
  #asked = '';
  /** The same of the cautions, which the service itself tells in English. */
  #careful = 'en';

  override willUpdate(changed: Map<PropertyKey, unknown>): void {
    super.willUpdate(changed);
    const language = this.words?.light.language as Language | undefined;
    if (language && language !== this.#asked && this.isWrong) void this.#learn(language);
    if (language && language !== this.#careful) void this.#care(language);
    if (readCurrency(this.currency) && this.writeMoney === undefined) void this.#price();
  }

  /** Whether there is a fault to tell of. */
  protected get isWrong(): boolean {
    return this.status.faults.length + this.status.hostFaults.length > 0;
  }

  protected tell({ light }: Words, fault: Fault): string {
    return sayFault(this.sentences ?? {}, fault, () => light.wrong);
  }

  /** Whole minor units as money, once there is a currency and what writes it. */
  protected get sayMoney(): ((minor: number) => string) | undefined {
    const { writeMoney, words } = this;
    const code = readCurrency(this.currency);
    if (code === '' || writeMoney === undefined || words === undefined) return undefined;
    return (minor) => writeMoney(words.light.language, code, minor);
  }

  /** The words of a caution; those of the service until there are some in the language. */
  protected sayCaution(caution: SaidCaution): string {
    return this.cautions?.say(caution, {}) ?? caution.text;
  }

  /** What the host asked for and cannot be had, by place. */
  protected get oddPlaces(): readonly string[] {
    const places = this.status.hostFaults.map(({ path }) => path.join('.'));
    const isOdd = Boolean(this.currency) && readCurrency(this.currency) === '';
    return isOdd ? [...places, 'currency'] : places;
  }

  /**
   * Until the sentences come, and where they cannot be had, one that fits all stands for them and the next fault asks
   * again: nothing stays in the language before.
   */
  async #learn(language: Language): Promise<void> {
    this.#asked = language;
    this.sentences = undefined;
    try {
      const { faultsSource } = await import('../text/faults/source.ts');
      const said = await loadText(faultsSource, language);
      if (language === this.#asked) this.sentences = said;
    } catch {
      this.#asked = '';
    }
  }

  async #care(language: Language): Promise<void> {
    this.#careful = language;
    this.cautions = undefined;
    try {
      const { cautionsSource } = await import('../text/cautions/source.ts');
      const said = await loadText(cautionsSource, language);
      if (language === this.#careful) this.cautions = said;
    } catch {
      this.#careful = '';
    }
  }

  async #price(): Promise<void> {
    const money = await import('../data/money.ts').catch(() => undefined);
    this.writeMoney = money?.writeMoney;
  }
}
