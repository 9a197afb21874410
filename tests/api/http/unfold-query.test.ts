import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { unfoldQuery } from '../../../api/http/unfold-query.ts';

const TEXT = new Set(['id']);
const unfold = (query: string) => unfoldQuery(query, TEXT);
const readOf = (query: string) => {
  const outcome = unfold(query);
  if (!outcome.ok) throw new Error(JSON.stringify(outcome.faults));
  return outcome.value;
};
const faultsOf = (query: string) => {
  const outcome = unfold(query);
  return outcome.ok ? [] : outcome.faults.map(({ code, path }) => `${code} ${path.join('.')}`);
};

describe('unfoldQuery reads', () => {
  test('dotted names as groups and positions as lists, in any order', () => {
    expect(readOf('a.b.1=2&c=x&a.b.0=1')).toEqual({ a: { b: [1, 2] }, c: 'x' });
  });
  test('nothing as an empty group', () => {
    expect([readOf(''), readOf('&')]).toEqual([{}, {}]);
  });
  test.each([
    ['8.5', 8.5],
    ['-3', -3],
    ['0', 0],
    ['0.10', 0.1],
    ['true', true],
    ['false', false],
  ])('%s as a value of its own kind', (text, expected) => {
    expect(readOf(`v=${text}`)).toEqual({ v: expected });
  });
  test.each([
    '0x10',
    '1e999',
    '1e3',
    'NaN',
    'Infinity',
    '.5',
    '5.',
    '01',
    '--1',
    'null',
    'True',
    '٣',
  ])('%s as text', (text) => {
    expect(readOf(`v=${encodeURIComponent(text)}`)).toEqual({ v: text });
  });
  test('plus and percent-encoding as a browser form sends them', () => {
    expect(readOf('v=8+1%2F2&w=8%C2%BD')).toEqual({ v: '8 1/2', w: '8½' });
  });
  test('a name of free text as text whatever it looks like', () => {
    expect(readOf('id=12&x.id=true&n=12')).toEqual({ id: '12', x: { id: 'true' }, n: 12 });
  });
  test('an empty value, with or without its sign, as the empty text that the schema refuses', () => {
    expect(readOf('a=&b')).toEqual({ a: '', b: '' });
  });
});

describe('unfoldQuery refuses', () => {
  test.each([
    ['a=1&a=2', 'repeated-key a'],
    ['a.b=1&c=2&a.b=1', 'repeated-key a.b'],
    ['a%2Eb=1&a.b=1', 'repeated-key a.b'],
    ['a=1&a.b=2', 'malformed-query a.b'],
    ['a.b=2&a=1', 'malformed-query a'],
    ['a.0=1&a.2=2', 'malformed-query a'],
    ['a.1=1', 'malformed-query a'],
    ['a.0=1&a.b=2', 'malformed-query a'],
    ['a.01=1', 'malformed-query a.01'],
    ['a.99999999=1', 'malformed-query a.99999999'],
    ['__proto__=1', 'malformed-query __proto__'],
    ['a.__proto__.b=1', 'malformed-query a.__proto__.b'],
    ['a..b=1', 'malformed-query a..b'],
    ['=1', 'malformed-query '],
    ['.=1', 'malformed-query .'],
    ['a=%zz', 'malformed-query a'],
    ['a.b=%zz', 'malformed-query a.b'],
    ['a=%ff', 'malformed-query a'],
    ['%ff=1', 'malformed-query %ff'],
  ])('%s', (query, expected) => {
    expect(faultsOf(query)).toEqual([expected]);
  });
  test('names of more than 12 parts', () => {
    expect(faultsOf(`${'a.'.repeat(11)}a=1`)).toEqual([]);
    expect(faultsOf(`${'a.'.repeat(12)}a=1`)).toEqual([`too-deep ${'a.'.repeat(11)}a`]);
  });
  test('more than 8192 characters', () => {
    expect(faultsOf(`a=${'x'.repeat(8190)}`)).toEqual([]);
    expect(faultsOf(`a=${'x'.repeat(8191)}`)).toEqual(['malformed-query ']);
  });
  test('more than 1000 parameters', () => {
    const names = Array.from({ length: 1001 }, (_, at) => `k${at}`);
    expect(faultsOf(names.slice(1).join('&'))).toEqual([]);
    expect(faultsOf(names.join('&'))).toEqual(['malformed-query ']);
  });
  test('all that is wrong at once', () => {
    expect(faultsOf('a=1&a=2&b.1=1&c=%')).toEqual([
      'repeated-key a',
      'malformed-query c',
      'malformed-query b',
    ]);
  });
  test('nothing that is sound beside what is not', () => {
    const soundOf = (query: string) => {
      const outcome = unfold(query);
      return outcome.ok ? 'all' : outcome.sound;
    };
    expect(soundOf('a=1&a=2&b=%zz&c.x=3')).toEqual({ a: 1, c: { x: 3 } });
    expect(soundOf('a.1=1&b.c.0=1&b.c.2=1&b.d=4')).toEqual({ b: { d: 4 } });
    expect(soundOf('a=1&a.b=2&__proto__=3')).toEqual({ a: 1 });
    expect(soundOf(`a=${'x'.repeat(8191)}`)).toBeUndefined();
  });
  test('a broken name with each of its parts apart', () => {
    const outcome = unfold('target.%FFwidth=3&a%2eb%FF=1');
    expect(outcome.ok || outcome.faults.map(({ path }) => path)).toEqual([
      ['target', '%FFwidth'],
      ['a', 'b%FF'],
    ]);
  });
  test('constructor and its like never as more than a name', () => {
    const value = readOf('constructor.prototype.x=1') as object;
    expect(Object.hasOwn(value, 'constructor')).toBe(true);
    expect(Reflect.get({}, 'x')).toBeUndefined();
  });
});

const key = fc.stringMatching(/^[a-z]{1,3}$/);
const leaf = fc.oneof(
  fc.boolean(),
  fc.integer(),
  fc.stringMatching(/^[ -~½é]{0,8}$/).filter((text) => !/^(-?\d+(\.\d+)?|true|false)$/.test(text)),
);
const { tree } = fc.letrec<{ tree: unknown; node: unknown }>((tie) => ({
  node: fc.oneof(
    { maxDepth: 4 },
    leaf,
    tie('tree'),
    fc.array(tie('node'), { minLength: 1, maxLength: 4 }),
  ),
  tree: fc.dictionary(key, tie('node'), { minKeys: 1, maxKeys: 4, noNullPrototype: true }),
}));

test('unfoldQuery undoes flattening, whatever the order of the pairs', () => {
  const cases = fc
    .tuple(tree, fc.infiniteStream(fc.double({ noNaN: true })))
    .map(([value, order]) => ({ value, pairs: shuffle(flatten(value, []), order) }));
  fc.assert(
    fc.property(cases, ({ value, pairs }) => {
      fc.pre(pairs.every((pair) => pair.split('.').length <= 12));
      expect(unfoldQuery(pairs.join('&'), new Set())).toEqual({ ok: true, value });
    }),
    { numRuns: 300 },
  );
});

test('unfoldQuery takes any text at all without an exception', () => {
  fc.assert(
    fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (query) => {
      expect(typeof unfold(query).ok).toBe('boolean');
    }),
    { numRuns: 1000 },
  );
});

function flatten(value: unknown, path: readonly string[]): string[] {
  if (typeof value !== 'object' || value === null) {
    return [`${path.join('.')}=${encodeURIComponent(String(value))}`];
  }
  return Object.entries(value).flatMap(([name, part]) => flatten(part, [...path, name]));
}

function shuffle(pairs: readonly string[], order: Iterator<number>): readonly string[] {
  return pairs
    .map((pair) => ({ pair, rank: Number(order.next().value) }))
    .sort((one, other) => one.rank - other.rank)
    .map(({ pair }) => pair);
}
