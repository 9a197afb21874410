import { expect, test } from 'vitest';
import { prepareWork } from '#core/sewing/prepare-work.ts';
import { findStep, WORK_FACTS } from '../../support/work-facts.ts';

test('prepareWork says the cut in the unit of the request, and gives it as a figure', () => {
  expect(findStep('cut')).toMatchObject({
    do: 'Cut 102 squares of 8 1/2 in',
    minutes: 40.8,
    figures: { pieces: 102, cut: 8.5, layers: 2 },
  });
  expect(findStep('cut', { unit: 'cm' })).toMatchObject({
    do: 'Cut 102 squares of 21.59 cm',
    figures: { cut: 21.59 },
  });
});

test('prepareWork prewashes what is to be prewashed, and asks for a test block where cloth was not measured', () => {
  expect(findStep('prewash', { prewashed: ['backing'] })?.do).toContain('cloth of the backing');
  const both = findStep('prewash', { prewashed: ['top', 'backing', 'backing'] });
  expect(both).toMatchObject({ figures: { roles: ['top', 'backing'] } });
  expect(both?.do).toContain('top and backing');
  expect(prepareWork(WORK_FACTS).map(({ id }) => id)).toEqual(['swatch', 'cut']);
  expect(prepareWork({ ...WORK_FACTS, isMeasured: true }).map(({ id }) => id)).toEqual(['cut']);
});
