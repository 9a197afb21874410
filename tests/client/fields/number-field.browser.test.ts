import { render } from 'lit';
import { describe, expect, test, vi } from 'vitest';
import { readLength } from '#core/read-length.ts';
import { numberField } from '../../../client/fields/number-field.ts';
import { BASE_STYLES } from '../../../client/look/base-styles.ts';
import { loadText } from '../../../client/text/languages.ts';
import { sharedSource } from '../../../client/text/shared/source.ts';
import { SOUND_ENTRIES, WRONG_ENTRIES } from '../../support/entry-table.ts';
import { find, readText, renderFresh, type } from '../../support/render.ts';
import { touchField } from '../../support/touch-field.ts';

const FIELD = { id: 'cut', label: 'Cut', value: '8½', unit: 'in', onInput: () => {} };
const REASON = 'Set by this page';

const idsBy = (input: Element) => input.getAttribute('aria-describedby')?.split(' ') ?? [];

describe('numberField', () => {
  test('numberField is text with the keyboard of figures, its label and its unit tied to it', () => {
    const root = renderFresh(numberField(FIELD));
    const input = find<HTMLInputElement>(root, 'input');
    expect([input.type, input.inputMode, input.value]).toEqual(['text', 'decimal', '8½']);
    expect(input.labels?.[0]?.textContent).toBe('Cut');
    expect(idsBy(input)).toContain(find(root, '.unit').id);
    expect(input.hasAttribute('aria-invalid')).toBe(false);
  });

  test('numberField tells what was typed, letter by letter', () => {
    const onInput = vi.fn();
    const root = renderFresh(numberField({ ...FIELD, onInput }));
    type(root, 'input', '21,5 cm or so');
    expect(onInput).toHaveBeenCalledExactlyOnceWith('21,5 cm or so');
  });

  test('numberField ties its fault to the input', () => {
    const root = renderFresh(numberField({ ...FIELD, fault: 'Type a number.' }));
    const input = find(root, 'input');
    expect(input.getAttribute('aria-invalid')).toBe('true');
    expect(idsBy(input)).toContain(find(root, '.fault').id);
    expect(readText(root, '.fault')).toBe('Type a number.');
  });

  test('numberField offers eighths that change the fraction of what stands there', async () => {
    const onInput = vi.fn();
    const root = renderFresh(numberField({ ...FIELD, fractions: 'Fractions', onInput }));
    await touchField(root);
    expect(find(root, '.fractions').ariaLabel).toBe('Fractions');
    find(root, '.fractions button:nth-child(3)').click();
    expect(onInput).toHaveBeenCalledExactlyOnceWith('8⅜');
  });

  test('numberField takes an eighth beside the usual figure where it is empty', async () => {
    const onInput = vi.fn();
    const field = { ...FIELD, value: '', placeholder: '12', fractions: 'Fractions', onInput };
    const root = renderFresh(numberField(field));
    await touchField(root);
    find(root, '.fractions button').click();
    expect(onInput).toHaveBeenCalledExactlyOnceWith('12⅛');
  });

  test('numberField that is locked can be read and reached, says why, and offers no chips', () => {
    const locked = { ...FIELD, fractions: 'Fractions', isLocked: true, reason: REASON };
    const root = renderFresh(numberField(locked));
    const input = find<HTMLInputElement>(root, 'input');
    input.focus();
    expect([input.readOnly, input.disabled, document.activeElement === input]).toEqual([
      true,
      false,
      true,
    ]);
    const why = idsBy(input).find((id) => root.querySelector(`#${id}`)?.textContent === REASON);
    expect(why).toBe('cut-reason');
    expect(root.querySelector('.fractions')).toBeNull();
  });

  test('numberField that is disabled cannot be reached and offers no chips', () => {
    const root = renderFresh(numberField({ ...FIELD, fractions: 'Fractions', isDisabled: true }));
    const input = find<HTMLInputElement>(root, 'input');
    input.focus();
    expect([input.disabled, document.activeElement === input]).toEqual([true, false]);
    expect(root.querySelector('.fractions')).toBeNull();
  });

  test('numberField keeps the keyboard up while an eighth is chosen', async () => {
    const root = renderFresh(numberField({ ...FIELD, fractions: 'Fractions' }));
    await touchField(root);
    const press = new PointerEvent('pointerdown', { bubbles: true, cancelable: true });
    find(root, '.fractions button').dispatchEvent(press);
    expect(press.defaultPrevented).toBe(true);
  });
});

describe('the chips of a number field', () => {
  test('each is as large as a fingertip wants, seven of them in the width of half a phone', async () => {
    const host = document.body.appendChild(document.createElement('div'));
    const root = host.attachShadow({ mode: 'open' });
    const sheet = new CSSStyleSheet();
    // What a coarse pointer sees while the field is touched.
    sheet.replaceSync(`${BASE_STYLES} :host{width:150px} .fractions{display:grid}`);
    root.adoptedStyleSheets = [sheet];
    render(numberField({ ...FIELD, fractions: 'Fractions' }), root);
    await touchField(root);
    const boxes = [...root.querySelectorAll('button')].map((chip) => chip.getBoundingClientRect());
    expect(boxes).toHaveLength(7);
    for (const box of boxes) {
      expect(Math.min(box.width, box.height)).toBeGreaterThanOrEqual(44);
      expect(box.right).toBeLessThanOrEqual(host.getBoundingClientRect().right);
    }
    host.remove();
  });
});

/** A field that keeps what is typed and says what is wrong with it, as the elements do. */
function renderEntry(unit: 'in' | 'cm', say: (typed: string) => string | undefined) {
  const root = renderFresh('');
  let value = '';
  const show = () =>
    renderFresh(
      numberField({ ...FIELD, unit, value, fault: value === '' ? undefined : say(value), onInput }),
    );
  const onInput = vi.fn((typed: string) => {
    value = typed;
  });
  return { root, onInput, show };
}

describe('numberField with the table of entries', () => {
  test('numberField hands on every entry letter by letter, leaves it as typed, and finds no fault in a sound one', () => {
    for (const [typed, unit] of SOUND_ENTRIES) {
      const { show, onInput } = renderEntry(unit, (text) =>
        readLength(text, unit).ok ? undefined : 'wrong',
      );
      type(show(), 'input', typed);
      expect(onInput).toHaveBeenCalledExactlyOnceWith(typed);
      const root = show();
      expect(find<HTMLInputElement>(root, 'input').value, typed).toBe(typed);
      expect(root.querySelector('.fault'), typed).toBeNull();
    }
  });

  test.each(['en', 'es', 'de', 'fr'] as const)(
    'numberField says in %s what is wrong with every wrong entry, in words of its own, and leaves it as typed',
    async (language) => {
      const { faults } = await loadText(sharedSource, language);
      const say = (text: string) => {
        const read = readLength(text, 'in');
        const [fault] = read.ok ? [] : read.faults;
        return fault && faults[fault.code](fault);
      };
      const said = new Map<string, string>();
      for (const [typed, code] of WRONG_ENTRIES) {
        const { show } = renderEntry('in', say);
        type(show(), 'input', typed);
        const root = show();
        const input = find<HTMLInputElement>(root, 'input');
        if (typed === '') continue;
        expect(input.value, typed).toBe(typed);
        expect(input.getAttribute('aria-invalid'), typed).toBe('true');
        expect(idsBy(input), typed).toContain('cut-fault');
        const sentence = readText(root, '.fault');
        expect(sentence, typed).toMatch(/^[^ ].{20,}\.$/);
        said.set(code, `${said.get(code) ?? ''}\n${sentence}`);
        if (!/^(empty|negative)/.test(code)) {
          expect(sentence, typed).toContain(typed.replace(/\s+/g, ' ').trim());
        }
      }
      expect(new Set(said.values()).size).toBe(said.size);
      expect(said.size).toBe(7);
    },
  );
});
