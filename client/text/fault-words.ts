import type { Fault } from '#core/outcome.ts';
import { commaReadings } from './comma-readings.ts';
import { sayFigure } from './say-figure.ts';

/** What the sentences about faults quote. */
export interface FaultWords {
  /** The place in the input, quoted. */
  readonly where: (fault: Fault) => string;
  /** What was given, quoted. */
  readonly given: (fault: Fault) => string;
  /** The figure that was given, else other words. */
  readonly found: (fault: Fault, otherwise: string) => string;
  /** A sentence that ends with the figure that would do, else another one. */
  readonly bound: (fault: Fault, start: string, otherwise: string) => string;
  /** Whether whole things are counted in that place, so that an example has to be whole too. */
  readonly isCount: (fault: Fault) => boolean;
  /** What was typed in each way that it may be meant. */
  readonly meant: (fault: Fault, or: string) => string;
}

/** The names of what is counted in whole things. */
const COUNTS = /^(count|columns|rows|pupils|kits|distinctPrints|mostOfOne|spare)$/;

/**
 * What the sentences about faults quote, in the manner of a language.
 *
 * @param quotes what stands before and after a quoted word.
 *
 * @example
 * const { given, bound } = makeFaultWords('de', ['„', '“']);
 * given({ code: 'not-a-length', path: [], received: 'breit' }) // => '„breit“'
 * bound({ code: 'too-small', path: [], expected: '2.5 cm' }, 'Nimm mindestens', 'Nimm mehr.') // => 'Nimm mindestens 2,5 cm.'
 */
export function makeFaultWords(
  language: string,
  [open, close]: readonly [open: string, close: string],
): FaultWords {
  const quote = (said: string | number) => `${open}${said}${close}`;
  return {
    where: ({ path }) => quote(path.join('.')),
    given: ({ received = '' }) => quote(received),
    found: ({ received }, otherwise) => sayFigure(language, received) || otherwise,
    bound: ({ expected }, start, otherwise) => {
      const figure = sayFigure(language, expected);
      return figure === '' ? otherwise : `${start} ${figure}.`;
    },
    isCount: ({ path }) => COUNTS.test(`${path.at(-1)}`),
    meant: ({ received = '' }, or) => commaReadings(language, `${received}`).join(or),
  };
}
