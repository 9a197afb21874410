import * as v from 'valibot';
import type { Range } from '#core/limits.ts';

/*
 * One kind of check serves every bound, its message being the fault's code and what was expected: each action of
 * valibot that is left out makes the element lighter.
 */

/** A number within a range, both ends included, so that neither infinity passes. */
export const within = ({ least, most }: Range) =>
  v.pipe(
    v.number(),
    v.check((value) => value >= least, `too-small ${least}`),
    v.check((value) => value <= most, `too-large ${most}`),
  );

/** A whole number within a range. */
export const whole = (range: Range) =>
  v.pipe(
    within(range),
    v.check((value) => Number.isInteger(value), 'not-whole'),
  );

/** A text of 1 to `most` characters. */
export const line = (most: number) =>
  v.pipe(
    v.string(),
    v.check((value) => value !== '', 'empty'),
    v.check((value) => value.length <= most, `too-long ${most}`),
  );

/** A list of `least` to `most` items. */
export const list = <Item extends v.GenericSchema>(item: Item, { least, most }: Range) =>
  v.pipe(
    v.array(item),
    v.check((items) => items.length >= least, `too-short ${least}`),
    v.check((items) => items.length <= most, `too-long ${most}`),
  );
