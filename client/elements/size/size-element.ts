import type { TemplateResult } from 'lit';
import type { Draft } from '../../data/draft.ts';
import type { ShownSize } from '../../data/is-size-answer.ts';
import type { Source } from '../../data/load-answer.ts';
import type { OnDevice } from '../../data/on-device.ts';
import { writeMeasure } from '../../fields/write-figures.ts';
import { LightElement } from '../../host/light-element.ts';
import { joinSources } from '../../text/join-sources.ts';
import { lightSource } from '../../text/light/source.ts';
import { sizeSource } from '../../text/size/source.ts';
import type { SizeContext } from './size-context.ts';
import { sizeErrand } from './size-errand.ts';
import { sizeStyles } from './size-styles.ts';
import { sizeView } from './size-view.ts';

/** What the event `ragbloom-size` carries. */
export interface SizeDetail {
  /** The answer of the API, whole: its `input` is the request as understood, its `links` say where it can be had again. */
  readonly answer: ShownSize;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
}

type Words = SizeContext['words'];
type Core = Pick<OnDevice, 'computePlan'>;

/**
 * How large a quilt comes out: a size becomes blocks, their cut, the size after the wash, the cloth to buy, the hours
 * and, where the host gives prices in its preset, what the cloth costs. Made for the page of a product.
 *
 * Attributes and properties: those of every element. Whatever its preset says stays, the reader chooses the size alone;
 * with `target` or `unit` in `locked` not even those. Prices are whole minor units of `currency`.
 *
 * Events
 * - `ragbloom-size` (bubbles, composed): an answer is on the table; `detail` is a `SizeDetail`.
 *
 * Slots
 * - default: what shows until the element is there, such as a table of sizes.
 * - `title`: in place of its heading.
 * - `action`: below the answer, for a shop's own button.
 * - `note`: below that, for a shop's own words.
 *
 * Parts: `ask`, `size`, `notices`, `cautions`, `result`, `drawing`, `figures`, `cloth`, `cost`, `link`.
 *
 * Custom properties: `--ragbloom-ground`, `--ragbloom-sheet`, `--ragbloom-ink`, `--ragbloom-soft`, `--ragbloom-line`,
 * `--ragbloom-edge`, `--ragbloom-madder`, `--ragbloom-display` (type),
 * `--ragbloom-figure` (size of the figures), `--ragbloom-gap`, `--ragbloom-border`, `--ragbloom-radius`,
 * `--ragbloom-drawing` (width of the drawing).
 */
export class SizeElement extends LightElement<Draft, ShownSize, Words, Core> {
  static override styles = sizeStyles;

  /** Where every element asks; whoever registers it says where the core for the device is to be had. */
  static source: Source<Core> = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  protected readonly errand = sizeErrand;
  protected readonly text = joinSources({ light: lightSource, size: sizeSource });

  protected get source(): Source<Core> {
    return SizeElement.source;
  }

  protected view(words: Words): TemplateResult {
    const { status } = this;
    const unit = status.draft.unit === 'cm' ? 'cm' : 'in';
    const said = status.answer?.input.unit ?? unit;
    return sizeView({
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
