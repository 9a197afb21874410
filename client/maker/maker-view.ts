import { html, nothing, type TemplateResult } from 'lit';
import { keyed } from 'lit/directives/keyed.js';
import type { MakerWords } from '../text/maker/en.ts';
import { COLORS, type ColorName, listFilled, type MakerState } from './maker-state.ts';
import { MAKER_VIEWS, type MakerField } from './maker-views.ts';
import type { Snippets } from './write-snippets.ts';

/** What can be done with the maker. */
export interface MakerActions {
  readonly choose: (view: string) => void;
  readonly change: (change: Partial<MakerState>) => void;
  readonly copy: (area: HTMLTextAreaElement) => void;
}

/** What the maker shows. */
export interface Making {
  readonly state: MakerState;
  readonly snippets: Snippets;
  /** Height of what is in the preview, pixels. */
  readonly height: number;
  /** What was last said of a copy. */
  readonly said: string;
  readonly words: MakerWords;
  readonly act: MakerActions;
}

const readValue = ({ target }: Event) => (target as HTMLInputElement).value;

/** The maker: what to show, what it begins with, how it looks, how it will be, and what to copy. */
export function makerView(making: Making): TemplateResult {
  const { words, snippets, height } = making;
  return html`<form class="maker" autocomplete="off" @submit=${(event: Event) => event.preventDefault()}>
      ${viewChoice(making)} ${startFields(making)} ${lockBoxes(making)} ${lookFields(making)}
    </form>
    <section class="preview" aria-labelledby="preview">
      <h2 id="preview">${words.preview}</h2>
      <p>${words.previewHint}</p>
      ${keyed(
        snippets.preview,
        html`<iframe
          src=${snippets.preview}
          sandbox="allow-scripts"
          title=${words.previewTitle}
          height=${height}
        ></iframe>`,
      )}
    </section>
    ${snippetList(making)} ${hostNotes(words)}`;
}

function viewChoice({ state, words, act }: Making): TemplateResult {
  return html`<fieldset>
    <legend>${words.view}</legend>
    ${MAKER_VIEWS.map(
      ({ name }) => html`<label class="check"
        ><input
          type="radio"
          name="view"
          value=${name}
          .checked=${name === state.view.name}
          @change=${() => act.choose(name)}
        /><span>${words.views[name]}</span></label
      >`,
    )}
  </fieldset>`;
}

function startFields({ state, words, act }: Making): TemplateResult {
  const set = (path: string) => (event: Event) =>
    act.change({ values: { ...state.values, [path]: readValue(event) } });
  const entry = ({ path, choices }: MakerField) => {
    const value = state.values[path] ?? '';
    return choices === undefined
      ? html`<input .value=${value} @input=${set(path)} />`
      : select(['', ...choices], {
          value,
          say: (choice) => choice || words.any,
          onChange: set(path),
        });
  };
  return html`<fieldset class="ask">
    <legend>${words.start}</legend>
    <p>${words.startHint}</p>
    ${state.view.fields.map(
      (field) => html`<label>${words.fields[field.path]} ${entry(field)}</label>`,
    )}
  </fieldset>`;
}

interface Select {
  readonly value: string;
  readonly say: (choice: string) => string;
  readonly onChange: (event: Event) => void;
}

function select(choices: readonly string[], { value, say, onChange }: Select): TemplateResult {
  return html`<select @change=${onChange}>
    ${choices.map(
      (choice) =>
        html`<option value=${choice} .selected=${choice === value}>${say(choice)}</option>`,
    )}
  </select>`;
}

function lockBoxes({ state, words, act }: Making): TemplateResult {
  const toggle = (path: string) => () => {
    const isLocked = state.locked.includes(path);
    const others = state.locked.filter((one) => one !== path);
    act.change({ locked: isLocked ? others : [...others, path] });
  };
  return html`<fieldset>
    <legend>${words.fixTitle}</legend>
    <p>${words.fixHint}</p>
    ${listFilled(state).map(
      ({ path }) => html`<label class="check"
        ><input
          type="checkbox"
          .checked=${state.locked.includes(path)}
          @change=${toggle(path)}
        /><span>${words.fix(words.fields[path])}</span></label
      >`,
    )}
  </fieldset>`;
}

function lookFields({ state, words, act }: Making): TemplateResult {
  const { languages, schemes } = words;
  return html`<fieldset class="ask">
    <legend>${words.look}</legend>
    <label
      >${words.language}
      ${select(Object.keys(languages), {
        value: state.language,
        say: (choice) => languages[choice as keyof typeof languages],
        onChange: (event) => act.change({ language: readValue(event) }),
      })}</label
    >
    <label
      >${words.scheme}
      ${select(Object.keys(schemes), {
        value: state.scheme,
        say: (choice) => schemes[choice as keyof typeof schemes],
        onChange: (event) => act.change({ scheme: readValue(event) }),
      })}</label
    >
    <label
      >${words.currency}
      <input
        maxlength="3"
        .value=${state.currency}
        @input=${(event: Event) => act.change({ currency: readValue(event).toUpperCase() })}
    /></label>
    ${COLORS.map((name) => colorField(name, { state, words, act }))}
  </fieldset>`;
}

function colorField(
  name: ColorName,
  { state, words, act }: Pick<Making, 'state' | 'words' | 'act'>,
): TemplateResult {
  const color = state.colors[name];
  const { [name]: _, ...others } = state.colors;
  const set = (next: string | undefined) =>
    act.change({ colors: next === undefined ? others : { ...others, [name]: next } });
  return html`<div class="color">
    <label class="check"
      ><input
        type="checkbox"
        .checked=${color !== undefined}
        @change=${() => set(color === undefined ? FIRST[name] : undefined)}
      /><span>${words.own(words.colors[name])}</span></label
    >
    ${
      color === undefined
        ? nothing
        : html`<input
            type="color"
            aria-label=${words.colors[name]}
            .value=${color}
            @input=${(event: Event) => set(readValue(event))}
          />`
    }
  </div>`;
}

/** A colour to begin with: that of the look in light. */
const FIRST: Readonly<Record<ColorName, string>> = {
  ink: '#1b2233',
  sheet: '#fdf9f0',
  ground: '#f1e9da',
  madder: '#a3302c',
};

function snippetList({ snippets, words, said, act }: Making): TemplateResult {
  const names = (['script', 'frame', 'address', 'picture'] as const).filter(
    (name) => snippets[name] !== undefined,
  );
  return html`<div class="snippets">
    ${names.map((name) => {
      const [title, hint] = words.snippets[name];
      const area = `snippet-${name}`;
      const copy = () => act.copy(document.getElementById(area) as HTMLTextAreaElement);
      return html`<section>
        <h2>${title}</h2>
        <p id="${area}-hint">${hint}</p>
        <textarea
          id=${area}
          readonly
          spellcheck="false"
          rows=${Math.min(7, 1 + Math.ceil((snippets[name]?.length ?? 0) / 70))}
          aria-label=${title}
          aria-describedby="${area}-hint"
          .value=${snippets[name] ?? ''}
        ></textarea>
        <button type="button" aria-label=${words.copyOf(title)} @click=${copy}>${words.copy}</button>
      </section>`;
    })}
    <p role="status" class="said">${said}</p>
  </div>`;
}

function hostNotes(words: MakerWords): TemplateResult {
  return html`<section class="hosts">
    <h2>${words.notes}</h2>
    <dl>
      ${words.hosts.map(
        ([name, note]) =>
          html`<dt>${name}</dt>
            <dd>${note}</dd>`,
      )}
    </dl>
  </section>`;
}
