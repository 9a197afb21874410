import type { Unit } from '#core/contract.ts';
import { typesetFractions } from '#core/drawing/typeset-fractions.ts';
import { toMillimetres } from '#core/length.ts';
import { writeExact, writeGap } from '#core/write-length.ts';
import { sayFigure } from '../text/say-figure.ts';
import type { SharedWords } from '../text/shared/source.ts';
import type { StepManner } from '../text/steps/en.ts';

/** What a ruler shows: a sixteenth of an inch, a millimetre. */
const MARK = { in: 1 / 16, cm: 0.1 } as const;

/**
 * How a language writes the figures of a step: lengths as on a ruler, with its decimal sign and with fraction signs.
 *
 * @param unit of the lengths.
 */
export function makeStepManner(
  { language, fabric, role }: Pick<SharedWords, 'language' | 'fabric' | 'role'>,
  unit: Unit,
): StepManner {
  const measure = (length: number) =>
    typesetFractions(sayFigure(language, writeExact(toMillimetres(length, unit), unit)));
  const gap = (length: number) => {
    const [least, rest = ''] = writeGap(toMillimetres(length, unit), unit).split('less than ');
    return typesetFractions(`${least ? '' : '< '}${sayFigure(language, least || rest)}`);
  };
  const above = (length: number) => measure(Math.ceil(length / MARK[unit] - 1e-9) * MARK[unit]);
  return { measure, gap, above, fabric: fabric as StepManner['fabric'], role };
}
