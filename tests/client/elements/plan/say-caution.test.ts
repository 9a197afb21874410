import { expect, test } from 'vitest';
import { sayCaution } from '../../../../client/elements/plan/say-caution.ts';
import { cautionsSource } from '../../../../client/text/cautions/source.ts';
import { loadText } from '../../../../client/text/languages.ts';
import { planText } from '../../../../client/text/text.ts';
import { planThrow } from '../../../support/plan-throw.ts';

const plan = planThrow();
const find = (code: string) => {
  const found = plan.cautions.find((caution) => caution.code === code);
  if (found === undefined) throw new Error(`There is no ${code}.`);
  return found;
};

test('sayCaution says in English what the service says', () => {
  for (const caution of plan.cautions) {
    expect(sayCaution({ text: planText.en, said: 'in' }, plan, caution)).toBe(caution.text);
  }
});

test('sayCaution names the figures of the plan in German', async () => {
  const cautions = await loadText(cautionsSource, 'de');
  const say = (code: string) =>
    sayCaution({ text: planText.en, said: 'in', cautions }, plan, find(code));
  expect(say('repetitive-snipping')).toContain('5.640 Einschnitte');
  expect(say('snip-near-seam')).toContain('½ in');
  expect(say('needle-at-crossings')).toContain(plan.bulk.needle);
});
