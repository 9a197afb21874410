import { describe, expect, test } from 'vitest';
import { listCautions } from '#core/cautions.ts';
import type { Caution } from '#core/contract.ts';
import { listKitCautions } from '#core/kits/list-kit-cautions.ts';
import type { CautionFigures } from '../../../../client/text/cautions/en.ts';
import { cautionsSource } from '../../../../client/text/cautions/source.ts';
import { loadText } from '../../../../client/text/languages.ts';
import { explainedFor } from '../../../support/plans.ts';

const LANGUAGES = ['es', 'de', 'fr'] as const;
const BIG = { width: 2000, height: 2500 };
const FACTS = {
  unit: 'cm',
  size: BIG,
  wish: BIG,
  crossingThickness: 8,
  snips: 3920,
  needle: '100/16',
  machine: 'large',
  layers: [{ role: 'top', fabric: 'quilting-cotton', prewashed: false, prints: [] }],
  doubt: { width: 40, height: 50, blocks: 8 },
} as const;

/** Each caution that there is, in each severity that it comes in. */
const CAUTIONS: readonly Caution[] = [
  ...listCautions({ ...FACTS, clearance: 2, infant: true }),
  ...listCautions({ ...FACTS, clearance: 5, machine: 'laundry' }),
  ...listCautions({ ...FACTS, clearance: 12, crossingThickness: 3 }),
];
const FIGURES: CautionFigures = {
  snips: 3920,
  clearance: '2,5 mm',
  thickness: '8 mm',
  needle: '100/16',
  machine: 'laundry',
};

describe('cautions in every language', () => {
  test('the cautions in English are those of the service', () => {
    for (const caution of CAUTIONS) {
      expect(cautionsSource.en.say(caution, FIGURES)).toBe(caution.text);
    }
  });

  test.each(LANGUAGES)(
    'every caution in every severity is said in %s, with figures or without',
    async (language) => {
      const { say } = await loadText(cautionsSource, language);
      expect(new Set(CAUTIONS.map(({ code }) => code)).size).toBe(12);
      for (const caution of CAUTIONS) {
        for (const figures of [FIGURES, {}]) {
          const said = say(caution, figures);
          expect(said, caution.code).not.toBe(caution.text);
          expect(said, caution.code).toMatch(/^\p{Lu}.*\.$/su);
          expect(said, caution.code).not.toMatch(/undefined|NaN|\[object| {2}/);
        }
      }
    },
  );

  test.each(LANGUAGES)('in %s a caution grows with its severity', async (language) => {
    const { say } = await loadText(cautionsSource, language);
    for (const code of ['infant-sleep', 'snip-near-seam'] as const) {
      const said = CAUTIONS.filter((one) => one.code === code).map((one) => say(one, FIGURES));
      expect(new Set(said).size).toBe(code === 'infant-sleep' ? 2 : 3);
    }
  });

  test.each([
    ['es', /bebé.*doce meses.*mantas.*firme y plano.*boca arriba.*boca de un bebé/s],
    ['de', /Baby.*zwölf Monaten.*Decke.*feste, flache Matratze.*Rücken.*Mund eines Babys/s],
    ['fr', /bébé.*douze mois.*couverture.*ferme et plat.*sur le dos.*bouche d’un bébé/s],
  ] as const)(
    'in %s the danger to a sleeping baby says all that the English does',
    async (language, all) => {
      const { say } = await loadText(cautionsSource, language);
      const danger = { code: 'infant-sleep', severity: 'danger', text: '' } as const;
      expect(say(danger, {})).toMatch(all);
    },
  );

  test.each(LANGUAGES)(
    'in %s the label of a kit is told from labels in general',
    async (language) => {
      const { say } = await loadText(cautionsSource, language);
      const { input, plan, spec } = explainedFor({ target: { width: 40, height: 50 } });
      const label = listKitCautions(input, plan, spec).find(({ code }) => code === 'label-rules');
      const caution = { code: 'label-rules', severity: 'note', text: label?.text ?? '' } as const;
      expect(say(caution, { isDraftLabel: true })).not.toBe(say(caution, {}));
    },
  );
});
