import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { deriveSchemas } from '../../../api/docs/derive-schemas.ts';

const contract = readFileSync(new URL('../../../api/core/contract.ts', import.meta.url), 'utf8');

describe('deriveSchemas', () => {
  test('takes docblocks of types and of their parts as descriptions', () => {
    const text =
      '/** A pair. */\nexport interface A {\n  /** Of it\n   * all. */\n  readonly b: number;\n readonly c: string }';
    expect(deriveSchemas(text, ['A'])).toEqual({
      A: {
        type: 'object',
        description: 'A pair.',
        properties: { b: { type: 'number', description: 'Of it all.' }, c: { type: 'string' } },
        required: ['b', 'c'],
      },
    });
  });
  test('brings what a type mentions, by name, in the order of names', () => {
    const text =
      'interface Z { a: readonly A[] } type A = B | 1; type B = boolean; type C = string;';
    expect(Object.keys(deriveSchemas(text, ['Z']))).toEqual(['A', 'B', 'Z']);
  });
  test('refuses a type that is not there', () => {
    expect(() => deriveSchemas('interface A { b: B }', ['A'])).toThrow('no type B');
  });
  test('reads the whole contract', () => {
    const names = [...contract.matchAll(/^export (?:interface|type) (\w+)(?!\w*<)/gm)].map(
      ([, name]) => String(name),
    );
    expect(names.length).toBeGreaterThan(40);
    const wanted = names.filter((name) => name !== 'AnswerParts');
    expect(Object.keys(deriveSchemas(contract, wanted))).toEqual(expect.arrayContaining(wanted));
  });
});
