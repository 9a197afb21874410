import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { find, type } from '../../support/render.ts';
import type { ToyElement } from '../../support/toy-element.ts';
import { inside, openToy, readToy, serveToys, settleToy } from '../../support/toys.ts';

const FORM =
  '<form><fieldset><ragbloom-toy name="rope" preset="rope.length=4"></ragbloom-toy></fieldset></form>';
const form = () => find<HTMLFormElement>(document.body, 'form');
const sent = () => Object.fromEntries(new FormData(form()));
const title = (toy: ToyElement) => inside(toy).querySelector('h2')?.textContent;

describe('HostedElement', () => {
  beforeEach(() => {
    serveToys();
  });
  afterEach(() => {
    document.body.replaceChildren();
    document.documentElement.removeAttribute('lang');
    vi.unstubAllGlobals();
  });

  test('it sends the canonical query of its answer under its name', async () => {
    const toy = await openToy(FORM);
    expect(toy.form).toBe(form());
    expect(sent()).toEqual({ rope: 'rope.length=4' });
    expect(toy.value).toBe('rope.length=4');
  });

  test('it sends nothing while what was typed has no answer', async () => {
    const toy = await openToy(FORM);
    type(inside(toy), '#length', '5');
    await toy.updateComplete;
    expect(sent()).toEqual({});
    await settleToy(toy);
    expect(sent()).toEqual({ rope: 'rope.length=5' });
  });

  test('a form that is reset has what the host asked for', async () => {
    const toy = await openToy(FORM);
    type(inside(toy), '#length', '5');
    await settleToy(toy);
    form().reset();
    await settleToy(toy);
    expect(find<HTMLInputElement>(inside(toy), '#length').value).toBe('4');
    expect(sent()).toEqual({ rope: 'rope.length=4' });
  });

  test('it takes what the browser kept of it, before its first view and after', async () => {
    const toy = await openToy(FORM);
    toy.formStateRestoreCallback('rope.length=7');
    await settleToy(toy);
    expect(readToy(toy).draft['rope.length']).toBe('7');
    const early = document.createElement('ragbloom-toy') as ToyElement;
    early.setAttribute('preset', 'rope.length=4');
    document.body.replaceChildren(early);
    early.formStateRestoreCallback('rope.length=8');
    await settleToy(early);
    expect(readToy(early).draft['rope.length']).toBe('8');
  });

  test('a fieldset that is disabled switches it off, and so does its own attribute', async () => {
    const toy = await openToy(FORM);
    const field = find<HTMLInputElement>(inside(toy), '#length');
    const fieldset = find<HTMLFieldSetElement>(document.body, 'fieldset');
    fieldset.disabled = true;
    await expect.poll(() => field.matches(':disabled')).toBe(true);
    expect(sent()).toEqual({});
    fieldset.disabled = false;
    await expect.poll(() => field.matches(':disabled')).toBe(false);
    expect(sent()).toEqual({ rope: 'rope.length=4' });
    toy.disabled = true;
    await expect.poll(() => field.matches(':disabled')).toBe(true);
    expect(toy.matches(':disabled')).toBe(true);
    expect(sent()).toEqual({});
    toy.disabled = false;
    await expect.poll(() => field.matches(':disabled')).toBe(false);
  });

  test('it is invalid while something is wrong, and says so where it is', async () => {
    const toy = await openToy(FORM);
    expect(form().checkValidity()).toBe(true);
    type(inside(toy), '#length', 'wide');
    await settleToy(toy);
    await toy.updateComplete;
    expect(toy.checkValidity()).toBe(false);
    expect(toy.validity.customError).toBe(true);
    expect(toy.validationMessage).toBe('not-a-length at rope.length');
    const told: Event[] = [];
    toy.addEventListener('invalid', (event) => told.push(event));
    expect(form().reportValidity()).toBe(false);
    expect(told).toHaveLength(1);
    expect(toy.reportValidity()).toBe(false);
    expect(inside(toy).activeElement?.id).toBe('length');
  });

  test('two elements in one form are two entries', async () => {
    const one = '<ragbloom-toy name="rope" preset="rope.length=4"></ragbloom-toy>';
    await openToy(`<form>${one}${one.replace('4', '9')}</form>`);
    await settleToy(find<ToyElement>(document.body, 'ragbloom-toy:last-child'));
    expect(new FormData(form()).getAll('rope')).toEqual(['rope.length=4', 'rope.length=9']);
  });

  test('it speaks the language of its page, and another once the attribute says so', async () => {
    document.documentElement.lang = 'es-MX';
    const toy = await openToy();
    expect(title(toy)).toBe('Cuerda');
    toy.lang = 'de';
    await expect.poll(() => title(toy)).toBe('Seil');
    toy.lang = 'fr';
    await expect.poll(() => title(toy)).toBe('Rope');
  });

  test('of two languages asked for in one breath the last is spoken', async () => {
    const toy = await openToy();
    toy.lang = 'de';
    await toy.updateComplete;
    toy.lang = 'es';
    await expect.poll(() => title(toy)).toBe('Cuerda');
    await new Promise((done) => setTimeout(done, 100));
    expect(title(toy)).toBe('Cuerda');
  });

  test('it follows its page when that changes its language', async () => {
    const toy = await openToy();
    expect(title(toy)).toBe('Rope');
    document.documentElement.lang = 'es';
    await expect.poll(() => title(toy)).toBe('Cuerda');
  });

  test('what stands inside it shows until its words are there', async () => {
    document.body.innerHTML = '<ragbloom-toy lang="de"><a href="#a">The plan</a></ragbloom-toy>';
    const toy = find<ToyElement>(document.body, 'ragbloom-toy');
    await toy.updateComplete;
    expect(inside(toy).querySelector('slot:not([name])')).not.toBeNull();
    await settleToy(toy);
    expect(inside(toy).querySelector('slot:not([name])')).toBeNull();
  });

  test('attributes and properties are in step', async () => {
    const toy = await openToy();
    toy.name = 'rope';
    toy.disabled = true;
    await toy.updateComplete;
    expect(toy.getAttribute('name')).toBe('rope');
    expect(toy.hasAttribute('disabled')).toBe(true);
    toy.setAttribute('preset', 'rope.length=3');
    toy.setAttribute('locked', 'rope unit');
    toy.setAttribute('currency', 'EUR');
    toy.setAttribute('unit', 'cm');
    for (const flag of ['address', 'remember', 'embedded', 'ahead'] as const) {
      expect(toy[flag]).toBe(false);
      toy.setAttribute(flag, '');
      expect(toy[flag]).toBe(true);
    }
    expect(toy).toMatchObject({
      preset: 'rope.length=3',
      locked: 'rope unit',
      currency: 'EUR',
      unit: 'cm',
    });
  });
});
