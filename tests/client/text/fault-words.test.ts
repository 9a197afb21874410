import { describe, expect, test } from 'vitest';
import { makeFaultWords } from '../../../client/text/fault-words.ts';

const fault = {
  code: 'too-small',
  path: ['block', 'cut'],
  expected: '2.5 cm',
  received: 1.5,
} as const;

describe('makeFaultWords', () => {
  test('makeFaultWords quotes the place and what was given in the quotes of the language', () => {
    const { where, given } = makeFaultWords('fr', ['«\u00a0', '\u00a0»']);
    expect(where(fault)).toBe('«\u00a0block.cut\u00a0»');
    expect(given(fault)).toBe('«\u00a01.5\u00a0»');
    expect(given({ code: 'empty', path: [] })).toBe('«\u00a0\u00a0»');
  });

  test('makeFaultWords says a figure with the decimal sign of the language, other words where none is told', () => {
    const { bound, found } = makeFaultWords('es', ['«', '»']);
    expect(bound(fault, 'Pon al menos', 'Pon más.')).toBe('Pon al menos 2,5 cm.');
    expect(bound({ ...fault, expected: 'some' }, 'Pon al menos', 'Pon más.')).toBe('Pon más.');
    expect(found(fault, 'eso')).toBe('1,5');
    expect(found({ code: 'empty', path: [] }, 'eso')).toBe('eso');
  });

  test.each([
    [['columns'], true],
    [['prints', 1, 'count'], true],
    [['block', 'cut'], false],
    [[], false],
  ])('makeFaultWords tells of %j whether whole things are counted: %s', (path, isWhole) => {
    expect(makeFaultWords('en', ['“', '”']).isCount({ code: 'empty', path })).toBe(isWhole);
  });

  test('makeFaultWords says both things that a comma may mean', () => {
    const unclear = { code: 'unclear-comma', path: [], received: '1,250' } as const;
    expect(makeFaultWords('en', ['“', '”']).meant(unclear, ' or ')).toBe('1250 or 1.250');
    expect(makeFaultWords('de', ['„', '“']).meant(unclear, ' oder ')).toBe('1250 oder 1,2500');
  });
});
