import type { TemplateResult } from 'lit';
import type { ShownYardage } from '../../data/is-yardage-answer.ts';
import type { Source } from '../../data/load-answer.ts';
import type { YardageDraft } from '../../data/piece-rows.ts';
import type { YardageOnDevice } from '../../data/yardage-on-device.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { LightElement } from '../../host/light-element.ts';
import { joinSources } from '../../text/join-sources.ts';
import { lightSource } from '../../text/light/source.ts';
import { yardageSource } from '../../text/yardage/source.ts';
import type { YardageContext } from './yardage-context.ts';
import { yardageErrand } from './yardage-errand.ts';
import { yardageStyles } from './yardage-styles.ts';
import { yardageView } from './yardage-view.ts';

/** What the event `ragbloom-yardage` carries. */
export interface YardageDetail {
  /** The answer of the API, whole: its `input` is the request as understood, its `links` say where it can be had again. */
  readonly answer: ShownYardage;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

type Words = YardageContext['words'];

/**
 * How much cloth to buy for pieces of a few sizes, cut in strips across the roll, and whether what is left on the bolt
 * is enough. Made for the page of a shop that sells cloth, and for a tutorial.
 *
 * Attributes and properties: those of every element. Its fields are those of the first cloth; any of them in `locked`
 * is read and not asked. Prices are whole minor units of `currency`.
 *
 * Events
 * - `ragbloom-yardage` (bubbles, composed): an answer is on the table; `detail` is a `YardageDetail`.
 *
 * Slots
 * - default: what shows until the element is there, such as a table of lengths.
 * - `title`: in place of its heading.
 * - `action`: below the answer, for a shop's own button.
 * - `note`: below that, for a shop's own words.
 *
 * Parts: `ask`, `cloth`, `pieces`, `notices`, `result`, `figures`, `enough`, `cost`, `strips`, `link`, `cautions`.
 *
 * Custom properties: `--ragbloom-ground`, `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-leaf`, `--ragbloom-display` (type),
 * `--ragbloom-figure` (size of the figures), `--ragbloom-gap`, `--ragbloom-border`, `--ragbloom-radius`,
 * `--ragbloom-drawing` (width of the drawings).
 */
export class YardageElement extends LightElement<
  YardageDraft,
  ShownYardage,
  Words,
  YardageOnDevice
> {
  static override styles = yardageStyles;

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: Source<YardageOnDevice> = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  protected readonly errand = yardageErrand;
  protected readonly text = joinSources({ light: lightSource, yardage: yardageSource });

  protected get source(): Source<YardageOnDevice> {
    return YardageElement.source;
  }

  protected view(words: Words): TemplateResult {
    const { status } = this;
    const unit = status.draft.unit === 'cm' ? 'cm' : 'in';
    const said = status.answer?.input.unit ?? unit;
    return yardageView({
      status,
      words,
      unit,
      sayLength: (...values) => writeMeasure(words.light.language, said, ...values),
      sayMoney: this.sayMoney,
      odd: this.oddPlaces,
      api: this.api ?? this.source.api,
      isLocked: (path) => this.isLocked(path),
      sayCaution: (caution) => this.sayCaution(caution),
      tell: (fault) => this.tell(words, fault),
      act: {
        type: (path, draft) => this.type(path, draft),
        choose: (draft) => this.decide(draft),
        measureIn: (next) => void this.measureIn(next),
        retry: () => this.ask(),
      },
    });
  }
}
