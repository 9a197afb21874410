import { describe, expect, test } from 'vitest';
import { makeStepManner } from '../../../client/fields/step-manner.ts';
import { de } from '../../../client/text/shared/de.ts';
import { en } from '../../../client/text/shared/en.ts';

describe('makeStepManner', () => {
  test('makeStepManner writes a length as on a ruler, with the decimal sign of the language', () => {
    expect(makeStepManner(de, 'cm').measure(21.5)).toBe('21,5 cm');
    expect(makeStepManner(en, 'cm').measure(21.5)).toBe('21.5 cm');
    expect(makeStepManner(de, 'in').measure(8.5)).toBe('8½ in');
    expect(makeStepManner(de, 'in').measure(8.3)).toBe('8,3 in');
  });

  test('makeStepManner never says more than a gap is', () => {
    expect(makeStepManner(de, 'in').gap(0.24)).toBe('3/16 in');
    expect(makeStepManner(de, 'cm').gap(0.5999)).toBe('0,59 cm');
    expect(makeStepManner(de, 'in').gap(0.03)).toBe('< 1/16 in');
  });

  test('makeStepManner never says less than a bound is', () => {
    expect(makeStepManner(de, 'cm').above(0.4047)).toBe('0,5 cm');
    expect(makeStepManner(de, 'in').above(0.26)).toBe('5/16 in');
    expect(makeStepManner(de, 'cm').above(0.5)).toBe('0,5 cm');
  });

  test('makeStepManner names cloth in the language', () => {
    expect(makeStepManner(de, 'cm').fabric('flannel')).toBe('Flanell');
  });
});
