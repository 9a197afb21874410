import { html, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { editDraft } from '../../client/data/draft.ts';
import { loadAnswer, type Source } from '../../client/data/load-answer.ts';
import type { Errand } from '../../client/host/errand.ts';
import { MeasuredElement } from '../../client/host/measured-element.ts';
import type { TextSource } from '../../client/text/languages.ts';

/** What the toy asks for: a length of rope, in whatever unit. */
export type ToyDraft = Readonly<
  Partial<Record<'rope.length' | 'rope.width' | 'unit' | 'knots', string>>
>;

export interface ToyAnswer {
  readonly input: object;
  readonly links: { readonly self: string };
}

interface ToyWords {
  readonly title: string;
}

type ToyCore = (query: string) => ToyAnswer;

const toyErrand: Errand<ToyDraft, ToyAnswer, ToyCore> = {
  name: 'ragbloom-toy',
  keys: ['rope', 'unit', 'knots'],
  complete: (draft) => ({ 'rope.length': '10', ...draft }),
  findBlank: (draft) =>
    draft['rope.length'] === '' ? [{ code: 'empty', path: ['rope', 'length'] }] : [],
  load: (query, source, signal) =>
    loadAnswer<ToyAnswer, ToyCore>(
      {
        address: `/v1/toy?${query}`,
        isAnswer: (body): body is ToyAnswer => Object.hasOwn(Object(body), 'links'),
        compute: (core) => ({ ok: true, value: core(query) }),
      },
      source,
      signal,
    ),
};

const toyText: TextSource<ToyWords> = {
  en: { title: 'Rope' },
  load: {
    es: async () => ({ title: 'Cuerda' }),
    de: () => new Promise((done) => setTimeout(() => done({ title: 'Seil' }), 50)),
    fr: () => Promise.reject(new Error('none')),
  },
};

/** The least element that the base of all can be tried with. */
export class ToyElement extends MeasuredElement<ToyDraft, ToyAnswer, ToyWords, ToyCore> {
  static from: Source<ToyCore> = {
    api: '',
    patience: 4000,
    loadCore: () => Promise.reject(new Error('none')),
  };

  protected readonly errand = toyErrand;
  protected readonly text = toyText;

  protected get source(): Source<ToyCore> {
    return ToyElement.from;
  }

  protected tell(_words: ToyWords, fault: Fault): string {
    return `${fault.code} at ${fault.path.join('.')}`;
  }

  protected view(words: ToyWords): TemplateResult {
    const { draft, faults, hostFaults, trouble, from, isBusy } = this.status;
    const length = draft['rope.length'] ?? '';
    const isFaulty = faults.length > 0;
    return html`<h2>${words.title}</h2>
      <input
        id="length"
        aria-label="Length"
        aria-invalid=${isFaulty}
        ?readonly=${this.isLocked('rope.length')}
        .value=${length}
        @input=${({ target }: InputEvent) =>
          this.type(
            'rope.length',
            editDraft(draft, 'rope.length', (target as HTMLInputElement).value),
          )}
      />
      <button id="wider" @click=${() => this.decide({ ...draft, 'rope.width': '2' })}>Wider</button>
      <button id="in" @click=${() => void this.measureIn('in')}>in</button>
      <button id="cm" @click=${() => void this.measureIn('cm')}>cm</button>
      <button id="retry" @click=${() => this.ask()}>Try again</button>
      <output>${JSON.stringify({ draft, faults, hostFaults, trouble, from, isBusy })}</output>`;
  }
}
