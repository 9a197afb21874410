import { expect, test } from 'vitest';
import { makeStep } from '#core/sewing/make-step.ts';

test('makeStep rounds its minutes to four decimals and fills what was left out', () => {
  const words = { do: 'Cut', count: 3, detail: 'All.' };
  expect(makeStep('cut', 'cut', { ...words, minutes: 1 / 3, figures: { pieces: 3 } })).toEqual({
    ...words,
    id: 'cut',
    stage: 'cut',
    minutes: 0.3333,
    figures: { pieces: 3 },
    cautions: [],
  });
  expect(makeStep('trim', 'wash', words)).toMatchObject({ minutes: 0, figures: {} });
});
