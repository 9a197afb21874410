import { globSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { SHORT_NAMES, shortNames } from '../../../client/build/short-names.ts';

const NAMES = Object.keys(SHORT_NAMES);
const readAll = (paths: readonly string[]) => paths.map((path) => readFileSync(path, 'utf8'));
const sources = [
  ...globSync('client/{data,drawing,elements,embed,fields,host,look,text}/**/*.ts'),
  ...globSync('api/core/**/*.ts'),
];
const source = readAll(sources).join('\n');

/** Names that `text` has in the way that `write` writes them. */
const findIn = (text: string, write: (name: string) => readonly string[]) =>
  NAMES.filter((name) => write(name).some((written) => text.includes(written)));

describe('shortNames', () => {
  test('every name has a short one of its own, and no source has that', () => {
    const short = Object.values(SHORT_NAMES);
    expect(new Set(short).size).toBe(NAMES.length);
    const lit = readAll(globSync('node_modules/lit-html/**/*.js')).join('\n');
    const used = new Set(
      [...`${source}\n${lit}`.matchAll(/\.(\$[\w$]+)/g)].map(([, name]) => name),
    );
    expect(short.filter((name) => used.has(name))).toEqual([]);
  });

  test('no name is on the wire', () => {
    const documents = readAll(['client/pages/openapi.json', 'api/core/contract.ts']).join('\n');
    expect(findIn(documents, (name) => [`"${name}"`, ` ${name}:`, ` ${name}?:`])).toEqual([]);
    expect(/ fabrics: /.test(documents)).toBe(true);
  });

  test('no name is an attribute, or stands between quotes where the bundler leaves it', () => {
    const write = (name: string) => [`'${name}'`, `"${name}"`, `.${name}=`, ` ${name}=\${`];
    // Types alone, of which nothing is left, may name a property so.
    const plain = source.replaceAll(/\b(?:Pick|Omit)<[^>]*>/g, '');
    expect(findIn(plain, write)).toEqual([]);
    expect(findIn("changed.has('isBusy')", write)).toEqual(['isBusy']);
  });

  test('nothing fetched while a script runs is given out under a name: it would be read as a property', () => {
    const fetched = sources.flatMap((path) => {
      const found = readFileSync(path, 'utf8').matchAll(/\bimport\('(\.[^']+)'\)/g);
      return [...found].map(([, target = '']) => join(dirname(path), target));
    });
    const given = readAll([...new Set(fetched)]).join('\n');
    const names = [...given.matchAll(/export (?:async )?(?:function|const|let|class) (\w+)/g)];
    const known = new Set(names.map(([, name]) => name));
    expect([...known]).toEqual(expect.arrayContaining(['readStart', 'switchUnit', 'writeMoney']));
    expect(NAMES.filter((name) => known.has(name))).toEqual([]);
  });

  test('no object of the browser or of the language has one', () => {
    const files = globSync('node_modules/@typescript/typescript-*/lib/lib.*.d.ts');
    const members = readAll(files)
      .join('\n')
      .matchAll(/^\s+(?:readonly |get |set )?([\w$]+)\??[(:<]/gm);
    const known = new Set([...members].map(([, name]) => name));
    expect(known.has('innerHTML')).toBe(true);
    expect(NAMES.filter((name) => known.has(name))).toEqual([]);
  });

  test('nothing but these names is written short', () => {
    expect(NAMES.every((name) => shortNames.mangleProps.test(name))).toBe(true);
    for (const name of ['answer', 'isBusyNow', 'preset', 'value', '_$LH']) {
      expect(shortNames.mangleProps.test(name)).toBe(false);
    }
  });
});
