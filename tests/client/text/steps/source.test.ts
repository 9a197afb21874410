import { describe, expect, test } from 'vitest';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { makeStepManner } from '../../../../client/fields/step-manner.ts';
import { loadText } from '../../../../client/text/languages.ts';
import { sharedSource } from '../../../../client/text/shared/source.ts';
import { stepsSource } from '../../../../client/text/steps/source.ts';
import { planFor } from '../../../support/plans.ts';

const LANGUAGES = ['es', 'de', 'fr'] as const;

/** Plans that differ in what their steps tell. */
const PLANS = [
  { target: { width: 40, height: 50 } },
  { unit: 'cm', target: { width: 100, height: 130 }, stitch: { chained: false } },
  { target: { columns: 1, rows: 1 } },
  { target: { columns: 1, rows: 5 }, tolerance: { ease: 0 } },
  { unit: 'cm', target: { columns: 5, rows: 4 }, tolerance: { seam: 0, cut: 0 } },
  {
    target: { size: 'queen' },
    layers: [
      { role: 'top', prints: 3, prewashed: true },
      { role: 'middle', fabric: 'cotton-batting' },
      { role: 'backing', prewashed: true },
    ],
  },
] as const;

const steps = PLANS.flatMap((input) => {
  const plan = planFor(input);
  return plan.steps.map((step) => ({ step, unit: plan.input.unit }));
});

describe('steps in every language', () => {
  test('the plans have every step there is', () => {
    expect(new Set(steps.map(({ step }) => step.id)).size).toBe(14);
  });

  test('steps in English are those of the service', () => {
    for (const { step, unit } of steps) {
      expect(stepsSource.en.say(step, makeStepManner(sharedSource.en, unit))).toEqual([
        step.do,
        step.detail,
      ]);
    }
  });

  test.each(LANGUAGES)(
    'every step is said in %s, whole, with the figures of its own',
    async (language) => {
      const words = await loadText(stepsSource, language);
      const shared = await loadText(sharedSource, language);
      for (const { step, unit } of steps) {
        const [what, detail] = words.say(step, makeStepManner(shared, unit));
        expect(what, step.id).not.toBe(step.do);
        expect(detail, step.id).not.toBe(step.detail);
        expect(detail, step.id).toMatch(/^\S.*\.$/s);
        expect(`${what} ${detail}`, step.id).not.toMatch(
          /undefined|NaN|null|\[object| {2}|: *[;.]/,
        );
      }
    },
  );

  test.each(LANGUAGES)(
    'the figures of a step in %s are those that English names',
    async (language) => {
      const words = await loadText(stepsSource, language);
      const shared = await loadText(sharedSource, language);
      const list = (text: string) =>
        text.match(/\d+(?:[.,/ \u00a0\u202f]\d+)*/g)?.map((n) => n.replace(/\D/g, '')) ?? [];
      for (const { step, unit } of steps) {
        const own = words.say(step, makeStepManner(shared, unit)).join(' ');
        const english = new Set(
          list(typesetFractions(`${step.do} ${step.detail} ; 1; ${step.figures['bobbins']}`)),
        );
        const strange = list(own).filter((n) => !english.has(n));
        expect(strange, `${step.id}: ${own} / ${step.detail}`).toEqual([]);
      }
    },
  );

  test('a step of a later service that has no words yet is told in English', async () => {
    const { say } = await loadText(stepsSource, 'de');
    const step = { id: 'press', do: 'Press it', detail: 'Flat.', minutes: 1, figures: {} };
    expect(say(step, makeStepManner(sharedSource.en, 'in'))).toEqual(['Press it', 'Flat.']);
  });
});
