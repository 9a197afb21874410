import { html, type TemplateResult } from 'lit';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Source } from '../../../client/data/load-answer.ts';
import type { Errand, ShownAnswer } from '../../../client/host/errand.ts';
import { LightElement } from '../../../client/host/light-element.ts';
import { en } from '../../../client/text/light/en.ts';
import type { LightWords } from '../../../client/text/light/source.ts';
import { find, readText } from '../../support/render.ts';

interface Words {
  readonly light: LightWords;
}
type Kind = Readonly<Partial<Record<'length' | 'unit', string>>>;

const FAULT = { code: 'negative-length', path: ['length'] } as const;
const CAUTION = { code: 'infant-sleep', severity: 'danger', text: 'Not for a baby.' } as const;

const errand: Errand<Kind, ShownAnswer, never> = {
  name: 'x-light',
  keys: ['length', 'unit'],
  complete: (draft) => draft,
  findBlank: ({ length }) => (length === '-1' ? [FAULT] : []),
  load: async () => ({
    kind: 'answer',
    answer: { input: {}, links: { self: '/?length=1' } },
    from: 'service',
  }),
};

class Light extends LightElement<Kind, ShownAnswer, Words, never> {
  protected readonly errand = errand;
  protected readonly source: Source<never> = {
    api: '',
    patience: 1,
    loadCore: () => Promise.reject(new Error('none')),
  };
  protected readonly text = {
    en: { light: en },
    load: {
      es: async () => ({ light: { ...en, language: 'es' } }),
      de: async () => ({ light: { ...en, language: 'de' } }),
      fr: async () => ({ light: { ...en, language: 'fr' } }),
    },
  };

  protected view(words: Words): TemplateResult {
    return html`<p id="odd">${this.oddPlaces.join()}</p>
      <p id="money">${this.sayMoney?.(123456)}</p>
      <p id="fault">${this.tell(words, FAULT)}</p>
      <p id="caution">${this.sayCaution(CAUTION)}</p>`;
  }
}

function open(markup: string): (id: string) => string {
  document.body.innerHTML = markup;
  const { shadowRoot } = find(document.body, 'x-light');
  return (id) => (shadowRoot?.querySelector(id) ? readText(shadowRoot, id) : '');
}

describe('LightElement', () => {
  beforeEach(() => {
    if (customElements.get('x-light') === undefined) customElements.define('x-light', Light);
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
  });

  test('it has one sentence for whatever is wrong until the exact ones have come', async () => {
    const read = open('<x-light></x-light>');
    await expect.poll(() => read('#fault')).toBe(en.wrong);
    const wrong = open('<x-light preset="length=-1"></x-light>');
    await expect.poll(() => wrong('#fault')).toMatch(/Leave out the minus/);
  });

  test('it says what is wrong and what to mind in the language of its page', async () => {
    const read = open('<x-light lang="de" preset="length=-1"></x-light>');
    await expect.poll(() => read('#fault')).toMatch(/[Mm]inus/);
    expect(read('#fault')).not.toMatch(/Leave out/);
    await expect.poll(() => read('#caution')).toMatch(/^Nicht für ein schlafendes Baby/);
    find(document.body, 'x-light').lang = 'en';
    await expect.poll(() => read('#caution')).toBe('Not for a baby.');
    await expect.poll(() => read('#fault')).toMatch(/Leave out the minus/);
  });

  test('nothing that it says stays in the language before, not even until the new words are there', async () => {
    const read = open('<x-light lang="de" preset="length=-1"></x-light>');
    await expect.poll(() => read('#fault')).toMatch(/[Mm]inus/);
    await expect.poll(() => read('#caution')).toMatch(/^Nicht für/);
    const element = find(document.body, 'x-light');
    const heard: string[] = [];
    const listener = new MutationObserver(() => heard.push(`${read('#fault')}${read('#caution')}`));
    const { shadowRoot } = element;
    if (shadowRoot === null) throw new Error('It has drawn nothing.');
    listener.observe(shadowRoot, { subtree: true, characterData: true, childList: true });
    element.lang = 'fr';
    element.lang = 'en';
    await expect.poll(() => read('#fault')).toMatch(/Leave out the minus/);
    await expect.poll(() => read('#caution')).toBe('Not for a baby.');
    listener.disconnect();
    expect(heard.length).toBeGreaterThan(0);
    expect(heard.join(' ')).not.toMatch(/Nicht für|Lass/);
  });

  test.each([
    ['EUR', '€1,234.56'],
    ['jpy', '¥123,456'],
    ['KWD', 'KWD 123.456'],
  ])('it writes money in %s', async (currency, said) => {
    const read = open(`<x-light currency="${currency}"></x-light>`);
    await expect.poll(() => read('#money').replace('\u00a0', ' ')).toBe(said);
    expect(read('#odd')).toBe('');
  });

  test('it tells a currency that is none beside the rest that cannot be used', async () => {
    const read = open('<x-light currency="euro" preset="colour=red"></x-light>');
    await expect.poll(() => read('#odd')).toBe('colour,currency');
    expect(read('#money')).toBe('');
  });
});
