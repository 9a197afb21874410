import { describe, expect, test } from 'vitest';
import { type Contract, readPractice, readPromise } from './element-contract.ts';
import { listFiles, readText } from './source-tree.ts';

const elements = listFiles('client/elements/*/*-element.ts');

/** The element's own folder and what all elements are made of. */
function readTemplates(element: string): string {
  const folder = element.slice(0, element.lastIndexOf('/'));
  const files = listFiles(`${folder}/*.ts`, 'client/{fields,drawing,look}/*.ts');
  return files.map(readText).join('\n');
}

const KINDS: readonly (keyof Contract)[] = ['attributes', 'events', 'slots', 'parts', 'tokens'];

test('there is an element to judge', () => {
  expect(elements).toContain('client/elements/plan/plan-element.ts');
});

describe.each(elements)('%s', (element) => {
  const source = readText(element);
  const promise = readPromise(source);
  const practice = readPractice(source, readTemplates(element));

  test.each(KINDS)('its docblock names the %s that the code has, and no others', (kind) => {
    expect(promise[kind].length).toBeGreaterThan(0);
    expect(promise[kind]).toEqual(practice[kind]);
  });

  test('every event that it promises crosses the shadow and says so', () => {
    for (const event of promise.events) {
      const sent = source.slice(source.indexOf(`new CustomEvent('${event}'`)).split(')')[0];
      expect(sent).toMatch(/bubbles: true.*composed: true/s);
      expect(source).toContain(`- \`${event}\` (bubbles, composed)`);
    }
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
