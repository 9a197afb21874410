import { describe, expect, test, vi } from 'vitest';
import { registerElement } from '../../../client/embed/register-element.ts';
import { VERSION } from '../../../client/embed/version.ts';

const makeClass = () =>
  class extends HTMLElement {
    static version?: string;
    static source = { api: '', patience: 1, loadCore: () => Promise.reject(new Error('none')) };
    static page = '/counter';
  };

describe('registerElement', () => {
  test('registerElement(name, element) registers a class that asks where the script came from', () => {
    const element = makeClass();
    const loadCore = () => Promise.reject(new Error('other'));
    registerElement('tried', element, { loadCore });
    expect(customElements.get('ragbloom-tried')).toBe(element);
    expect(element.source).toEqual({ api: location.origin, patience: 1, loadCore });
    expect(element.page).toBe(`${location.origin}/counter`);
    expect(element.version).toBe(VERSION);
  });

  test('registerElement(name, element) leaves what is there, and says nothing of the same version', () => {
    const warn = vi.spyOn(console, 'warn').mockReturnValue(undefined);
    const [first, second] = [makeClass(), makeClass()];
    registerElement('twice', first);
    registerElement('twice', second);
    expect(customElements.get('ragbloom-twice')).toBe(first);
    expect(second.source.api).toBe('');
    expect(warn).not.toHaveBeenCalled();
  });

  test('registerElement(name, element) says that another version is there', () => {
    const warn = vi.spyOn(console, 'warn').mockReturnValue(undefined);
    const other = makeClass();
    other.version = '0.9.0';
    customElements.define('ragbloom-other', other);
    registerElement('other', makeClass());
    expect(warn.mock.calls).toEqual([
      [`ragbloom-other is here in version 0.9.0, so ${VERSION} is left out.`],
    ]);
  });
});
