import type { FaultCode } from '#core/faults.ts';

/** A kind of problem: one for each fault code, and those that lie in no part of an input. */
export type ProblemKind = FaultCode | 'several-faults' | 'too-many-requests' | 'unknown-format';

/**
 * Status and title of each kind, the one place where a fault meets a status of HTTP:
 * 400 for a message that cannot be read, 422 for one that can but asks for what is wrong or impossible.
 */
export const PROBLEM_KINDS = {
  'malformed-json': [400, 'The body is not JSON'],
  'malformed-query': [400, 'The query cannot be read'],
  'wrong-content-type': [415, 'The body is not sent as JSON'],
  'body-too-large': [413, 'The body is too large'],
  'too-deep': [400, 'The input is nested too deeply'],
  'not-found': [404, 'There is nothing at this address'],
  'wrong-method': [405, 'This address does not take that method'],
  internal: [500, 'The service failed'],
  'unknown-key': [422, 'A part of the input is not known here'],
  'repeated-key': [400, 'A part of the input is given twice'],
  missing: [422, 'A part of the input is missing'],
  'wrong-type': [422, 'A value is of the wrong kind'],
  'not-one-of': [422, 'A value is none of those known'],
  empty: [422, 'A value is empty'],
  'too-short': [422, 'A list or text is too short'],
  'too-long': [422, 'A list or text is too long'],
  'not-whole': [422, 'A number is not whole'],
  'too-small': [422, 'A value is too small'],
  'too-large': [422, 'A value is too large'],
  'bad-name': [422, 'A name or colour is not written as it should be'],
  'not-a-length': [422, 'A value cannot be read as a length'],
  'unclear-comma': [422, 'A comma could mean two things'],
  'negative-length': [422, 'A length is below nothing'],
  'zero-parts': [422, 'A fraction has 0 below its line'],
  'two-lengths': [422, 'Two lengths stand where one belongs'],
  'unknown-unit': [422, 'A length has a unit that is not known'],
  'target-unclear': [422, 'The size wished for is not clear'],
  'size-not-in-region': [422, 'This size has no meaning in that region'],
  'seam-eats-face': [422, 'The seam allowances leave nothing of the block'],
  'snips-reach-stitching': [422, 'The snips would cut the stitching'],
  'roll-too-narrow': [422, 'The cloth is narrower than a piece'],
  'layers-unfit': [422, 'These layers do not make a quilt'],
  'repeated-id': [422, 'Two things have the same name'],
  'counts-do-not-sum': [422, 'The counts of the prints do not add up'],
  'quilt-too-large': [422, 'The quilt would be too large'],
  'after-unlikely': [422, 'A size after washing is hard to believe'],
  'wish-unclear': [422, 'The wish cannot be read'],
  'mixed-currencies': [422, 'Prices are in several currencies'],
  'price-unclear': [422, 'The price is said in more than one way'],
  'percents-do-not-sum': [422, 'The percents do not add up'],
  'several-faults': [422, 'Several things are wrong'],
  'too-many-requests': [429, 'Too many requests came at once'],
  'unknown-format': [501, 'The answer is not to be had in this format'],
} as const satisfies Record<ProblemKind, readonly [status: number, title: string]>;

/** Which status speaks for a message with faults of several: what keeps it from being read comes first. */
const ORDER: readonly number[] = [500, 404, 405, 415, 413, 400, 422];

/**
 * The status of an answer that tells these faults.
 *
 * @example
 * chooseStatus(['too-small', 'repeated-key']) // => 400
 */
export function chooseStatus(codes: readonly FaultCode[]): number {
  const statuses = codes.map((code) => PROBLEM_KINDS[code][0]);
  return ORDER.find((status) => statuses.some((found) => found === status)) ?? 422;
}
