import { describe, expect, test } from 'vitest';
import { BASE_FILES, type Contract, readPractice, readPromise } from './element-contract.ts';
import { resolve } from './import-rules.ts';
import { parseModule } from './parse-module.ts';
import { listFiles, readText } from './source-tree.ts';

const elements = listFiles('client/elements/*/*-element.ts');

/** The element's own folder, and what of the fields, drawings and looks is reached from there. */
function readTemplates(element: string): string {
  const folder = element.slice(0, element.lastIndexOf('/'));
  const found = new Set(listFiles(`${folder}/*.ts`));
  for (const file of found) {
    for (const { specifier, isType } of parseModule(readText(file)).imports) {
      const target = resolve(file, specifier);
      if (!isType && /^client\/(fields|drawing|look)\//.test(target)) found.add(target);
    }
  }
  return [...found].map(readText).join('\n');
}

const base = BASE_FILES.map(readText).join('\n');

test('the base tells the attributes that it has, and no others', () => {
  const [hosted = ''] = BASE_FILES.map(readText);
  const { attributes } = readPromise(hosted);
  expect(attributes.length).toBeGreaterThan(10);
  expect(attributes).toEqual(readPractice(hosted, '').attributes);
});

const KINDS: readonly (keyof Contract)[] = ['attributes', 'events', 'slots', 'parts', 'tokens'];

test('there is an element to judge', () => {
  expect(elements).toContain('client/elements/plan/plan-element.ts');
});

describe.each(elements)('%s', (element) => {
  const source = readText(element);
  const promise = readPromise(source);
  const practice = readPractice(source, readTemplates(element));

  const isOnBase = /extends (Asking|Light|Hosted)Element/.test(source);
  const sender = /extends (Asking|Light)Element/.test(source) ? base : source;

  test.each(KINDS)('its docblock names the %s that the code has, and no others', (kind) => {
    if (kind !== 'attributes' || !isOnBase) expect(promise[kind].length).toBeGreaterThan(0);
    expect(promise[kind]).toEqual(practice[kind]);
  });

  test('it says where its attributes are told, and that its event crosses the shadow', () => {
    if (isOnBase) expect(source).toMatch(/Attributes and properties.*those of every element/);
    expect(sender).toMatch(/bubbles: true,\s*composed: true/);
    for (const event of promise.events) {
      expect(source).toContain(`- \`${event}\` (bubbles, composed)`);
    }
  });

  test('an element for the pages of others has at least 6 parts and 12 custom properties', () => {
    const isLight = /extends LightElement/.test(source);
    expect(promise.parts.length).toBeGreaterThanOrEqual(isLight ? 6 : 1);
    expect(promise.tokens.length).toBeGreaterThanOrEqual(isLight ? 12 : 1);
  });

  test('every custom property that it promises has a value from the start, or something in its place', () => {
    const tokens = readText('client/look/tokens.ts');
    const bare = promise.tokens.filter((token) => readTemplates(element).includes(`var(${token})`));
    expect(bare.filter((token) => !tokens.includes(`${token}:`))).toEqual([]);
  });
});

describe('readPromise and readPractice', () => {
  const element = (docs: string, code: string) =>
    `/**\n * A.\n *\n${docs}\n */\nexport class A extends B {\n${code}\n}`;
  const docs =
    ' * Attributes and properties\n * - `plan`: a.\n *\n * Events\n * - `done` (bubbles): b.\n *\n' +
    ' * Slots\n * - default: c.\n *\n * Parts: `face`, `edge`.\n *\n * Custom properties: `--ragbloom-ink`.';
  const code =
    "static override properties = { plan: {}, inner: { state: true } };\nf() { new CustomEvent('done', {}); }";
  const templates = '<p part="face edge" style="color:var(--ragbloom-ink)">';

  test('readPromise and readPractice agree where docblock and code do', () => {
    const source = element(docs, code);
    expect(readPromise(source)).toEqual(readPractice(source, templates));
  });

  test.each<[keyof Contract, string, string]>([
    ['attributes', code.replace('plan: {}', 'plan: {}, more: {}'), templates],
    ['attributes', code.replace('plan: {}, ', ''), templates],
    ['events', code.replace("'done'", "'gone'"), templates],
    ['slots', code, `${templates}<slot name="more"></slot>`],
    ['slots', code, `${templates}<slot></slot>`],
    ['parts', code, `${templates}<p part="more">`],
    ['parts', code, templates.replace('face ', '')],
    ['tokens', code, `${templates} var(--ragbloom-more)`],
  ])('readPractice tells when %s are other than promised', (kind, other, shown) => {
    const source = element(docs, other);
    expect(readPractice(source, shown)[kind]).not.toEqual(readPromise(source)[kind]);
  });
});
