import { describe, expect, test } from 'vitest';
import { readHostInput, tellOnce } from '../../../client/data/read-host-input.ts';

describe('readHostInput', () => {
  test('readHostInput(query) takes a flat query as typed', () => {
    expect(readHostInput('?target.width=8%201%2F2&target.height=21,5&unit=cm')).toEqual({
      draft: { 'target.width': '8 1/2', 'target.height': '21,5', unit: 'cm' },
      faults: [],
    });
  });

  test('readHostInput(request) takes an object of the contract', () => {
    const request = {
      target: { size: 'lap' },
      layers: [
        { role: 'top', prints: [{ id: 'Blue', share: 2 }] },
        { role: 'backing', prewashed: true },
      ],
      explain: undefined,
    };
    expect(readHostInput(request).draft).toEqual({
      'target.size': 'lap',
      'layers.0.role': 'top',
      'layers.0.prints.0.id': 'Blue',
      'layers.0.prints.0.share': '2',
      'layers.1.role': 'backing',
      'layers.1.prewashed': 'true',
    });
  });

  test('readHostInput tells what has no place in a plan and keeps the rest', () => {
    expect(readHostInput('target.size=lap&size=queen&__proto__=1')).toEqual({
      draft: { 'target.size': 'lap' },
      faults: [
        { code: 'unknown-key', path: ['size'], received: 'queen' },
        { code: 'unknown-key', path: ['__proto__'], received: '1' },
      ],
    });
  });

  test('readHostInput tells once what lies under one unknown name, however much that is', () => {
    const { faults } = readHostInput({ colours: { red: 1, green: 2 }, unit: 'in' });
    expect(faults.map(({ code, path }) => [code, ...path])).toEqual([['unknown-key', 'colours']]);
  });

  test('readHostInput takes the first of a place that is given twice, and tells the second', () => {
    expect(readHostInput('unit=cm&target.size=lap&target.size=queen')).toEqual({
      draft: { unit: 'cm', 'target.size': 'lap' },
      faults: [{ code: 'repeated-key', path: ['target', 'size'], received: 'queen' }],
    });
  });

  test('readHostInput tells values that are empty or beyond reason', () => {
    const long = 'x'.repeat(41);
    expect(readHostInput({ unit: '', grain: long }).faults).toEqual([
      { code: 'empty', path: ['unit'], received: '' },
      { code: 'too-long', path: ['grain'], expected: '40', received: long },
    ]);
  });

  test.each([null, undefined, 7, true, [], {}, ''])(
    'readHostInput(%j) gives an empty draft',
    (given) => {
      expect(readHostInput(given).draft).toEqual({});
    },
  );
});

describe('tellOnce', () => {
  test('tellOnce(faults) keeps one of each kind for each place, in their order', () => {
    const faults = [
      { code: 'missing', path: ['target', 'height'] },
      { code: 'empty', path: ['target', 'height'] },
      { code: 'missing', path: ['target', 'height'], received: 'nothing' },
      { code: 'missing', path: ['target', 'width'] },
    ] as const;
    expect(tellOnce(faults).map(({ code, path }) => `${code} ${path[1]}`)).toEqual([
      'missing height',
      'empty height',
      'missing width',
    ]);
  });
});
