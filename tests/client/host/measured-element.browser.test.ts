import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { find } from '../../support/render.ts';
import { type ToyDraft, ToyElement } from '../../support/toy-element.ts';
import { inside, openToy, readToy, serveToys, settleToy } from '../../support/toys.ts';

/** A toy for which what switches units cannot always be had. */
class FarToy extends ToyElement {
  isThere = true;
  protected override async sayIn(unit: 'in' | 'cm'): Promise<ToyDraft> {
    if (!this.isThere) throw new TypeError('no signal');
    return super.sayIn(unit);
  }
}
customElements.define('ragbloom-far', FarToy);

async function press(toy: ToyElement, button: string): Promise<void> {
  find(inside(toy), button).click();
  await settleToy(toy);
}

describe('MeasuredElement', () => {
  beforeEach(() => {
    const loadCore = () => Promise.reject(new Error('none'));
    ToyElement.from = { api: '', patience: 4000, loadCore };
  });
  afterEach(() => {
    document.body.replaceChildren();
    vi.unstubAllGlobals();
  });

  test('it says its lengths in the other unit and asks so', async () => {
    const asked = serveToys();
    const toy = await openToy('<ragbloom-toy preset="rope.length=4"></ragbloom-toy>');
    await press(toy, '#cm');
    expect(readToy(toy).draft).toEqual({ 'rope.length': '10.16', unit: 'cm' });
    expect(asked.at(-1)).toContain('rope.length=10.16&unit=cm');
  });

  test('what was chosen last is measured in, however fast', async () => {
    serveToys();
    const toy = await openToy('<ragbloom-toy preset="rope.length=4"></ragbloom-toy>');
    find(inside(toy), '#cm').click();
    await press(toy, '#in');
    await expect.poll(() => readToy(toy).draft).toEqual({ 'rope.length': '4', unit: 'in' });
  });

  test('without what switches units nothing changes but that it is told, and asking again switches', async () => {
    serveToys();
    document.body.innerHTML = '<ragbloom-far preset="rope.length=4"></ragbloom-far>';
    const toy = find<FarToy>(document.body, 'ragbloom-far');
    await toy.updateComplete;
    await settleToy(toy);
    toy.isThere = false;
    await press(toy, '#cm');
    expect(readToy(toy)).toMatchObject({ draft: { 'rope.length': '4' }, trouble: 'silent' });
    toy.isThere = true;
    await press(toy, '#retry');
    expect(readToy(toy).trouble).toBeUndefined();
    expect(readToy(toy).draft).toEqual({ 'rope.length': '10.16', unit: 'cm' });
  });
});
