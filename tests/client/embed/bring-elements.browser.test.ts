import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { bringElements } from '../../../client/embed/bring-elements.ts';

let at = 0;
let tag = '';
const put = (html: string) => {
  const box = document.body.appendChild(document.createElement('div'));
  box.innerHTML = html;
};
const turn = () => new Promise((done) => setTimeout(done));
const defineAt = (version: string) => async () => {
  customElements.define(
    tag,
    class extends HTMLElement {
      static version = version;
    },
  );
};

beforeEach(() => {
  at += 1;
  tag = `ragbloom-brought-${at}`;
});
afterEach(() => {
  document.body.replaceChildren();
  vi.restoreAllMocks();
});

describe('bringElements', () => {
  test('bringElements loads an element that is there, once, however many there are', async () => {
    put(`<${tag}></${tag}><p><${tag}></${tag}></p>`);
    const load = vi.fn(defineAt('1'));
    bringElements({ files: { [tag]: ['a', 'b'] }, version: '1', load });
    await turn();
    expect(load.mock.calls).toEqual([[['a', 'b']]]);
  });

  test('bringElements loads nothing of an element that is not there', async () => {
    const load = vi.fn(defineAt('1'));
    bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    put('<p></p>');
    await turn();
    expect(load).not.toHaveBeenCalled();
  });

  test('bringElements loads an element that comes later, deep in what came', async () => {
    const load = vi.fn(defineAt('1'));
    bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    await turn();
    put(`<section><p><${tag}></${tag}></p></section>`);
    await turn();
    expect(load).toHaveBeenCalledTimes(1);
  });

  test('bringElements, run twice in one version, loads once and says nothing', async () => {
    const warn = vi.spyOn(console, 'warn').mockReturnValue(undefined);
    put(`<${tag}></${tag}>`);
    const load = vi.fn(defineAt('1'));
    for (let run = 0; run < 2; run += 1) {
      bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    }
    await turn();
    bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    expect(load).toHaveBeenCalledTimes(1);
    expect(warn).not.toHaveBeenCalled();
  });

  test('bringElements of a second version leaves the first in place and says so once', async () => {
    const warn = vi.spyOn(console, 'warn').mockReturnValue(undefined);
    put(`<${tag}></${tag}>`);
    const [load, other] = [vi.fn(defineAt('1')), vi.fn(defineAt('2'))];
    bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    bringElements({ files: { [tag]: ['a'] }, version: '2', load: other });
    put(`<${tag}></${tag}>`);
    await turn();
    expect(load).toHaveBeenCalledTimes(1);
    expect(other).not.toHaveBeenCalled();
    expect(warn.mock.calls).toEqual([[`${tag} is here in version 1, so 2 is left out.`]]);
  });

  test('bringElements tries again what could not be loaded when the tag comes again', async () => {
    put(`<${tag}></${tag}>`);
    const load = vi.fn().mockRejectedValueOnce(new Error('no network')).mockResolvedValue(1);
    bringElements({ files: { [tag]: ['a'] }, version: '1', load });
    await turn();
    put(`<${tag}></${tag}>`);
    await turn();
    expect(load).toHaveBeenCalledTimes(2);
  });
});
