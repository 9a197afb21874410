import { expect, test } from 'vitest';
import { sayStep } from '../../../../client/elements/plan/say-step.ts';
import { loadText } from '../../../../client/text/languages.ts';
import { makingText } from '../../../../client/text/making-text.ts';
import { sharedSource } from '../../../../client/text/shared/source.ts';
import { stepsSource } from '../../../../client/text/steps/source.ts';
import { planText } from '../../../../client/text/text.ts';
import { planThrow } from '../../../support/plan-throw.ts';

test('sayStep says in English what the service says', () => {
  for (const step of planThrow().steps) {
    const text = { ...planText.en, ...makingText.en };
    expect(sayStep({ text, said: 'in' }, step)).toEqual([step.do, step.detail]);
  }
});

test('sayStep says a step in German from its figures', async () => {
  const [shared, steps] = await Promise.all([
    loadText(sharedSource, 'de'),
    loadText(stepsSource, 'de'),
  ]);
  const text = { ...planText.en, ...makingText.en, ...shared, steps };
  const cut = planThrow({ unit: 'cm', block: { cut: 21.5 } }).steps.find(({ id }) => id === 'cut');
  if (cut === undefined) throw new Error('nothing is cut');
  const [what] = sayStep({ text, said: 'cm' }, cut);
  expect(what).toContain('21,5 cm zuschneiden');
});
