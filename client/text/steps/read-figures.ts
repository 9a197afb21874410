import type { Role } from '#core/contract.ts';
import type { SaidStep, StepManner } from './en.ts';

/** The figures of one step, ready to stand in a sentence. */
export interface StepFigures {
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
  /** A length with its unit. */
  readonly length: (name: string) => string;
  /** A length with its unit that is not overstated. */
  readonly gap: (name: string) => string;
  /** A length with its unit that is not understated. */
  readonly above: (name: string) => string;
  /** Cloths by the names of the language. */
  readonly fabrics: (name: string) => readonly string[];
  readonly roles: (name: string) => readonly string[];
  /** A mass, rounded as one says it. */
  readonly mass: (name: string) => number;
  /** Minutes that the step takes. */
  readonly minutes: number;
}

/**
 * The figures of a step by their names. One that is not there is 0, or no text: the sentence then says less.
 *
 * @example
 * const step = { id: 'part', do: '', detail: '', minutes: 2.4, figures: { links: 19 } };
 * const say = (length) => `${length} cm`;
 * const manner = { measure: say, gap: say, above: say, fabric: (name) => name, role: (name) => name };
 * readFigures(step, manner).number('links') // => 19
 * readFigures(step, manner).length('cut') // => '0 cm'
 * readFigures(step, manner).minutes // => 2.4
 */
export function readFigures({ figures, minutes }: SaidStep, manner: StepManner): StepFigures {
  const number = (name: string) => Number(figures[name] ?? 0);
  const list = (name: string) => [figures[name] ?? []].flat().map(String);
  return {
    number,
    text: (name) => `${figures[name] ?? ''}`,
    length: (name) => manner.measure(number(name)),
    gap: (name) => manner.gap(number(name)),
    above: (name) => manner.above(number(name)),
    fabrics: (name) => list(name).map(manner.fabric),
    roles: (name) => list(name).map((role) => manner.role(role as Role)),
    mass: (name) => Number(number(name).toFixed(number(name) < 1 ? 2 : 1)),
    minutes,
  };
}
