/**
 * A ten-millionth of a piece: what two lengths may differ by and still count as the same, since
 * inches and centimetres of one length meet only to the last bits.
 */
const SLACK = 1e-7;

/**
 * How many whole sizes fit into a room.
 *
 * @param room and size in one unit, size above 0
 * @returns a whole number, never below 0
 *
 * @example
 * countFitting(1066.8, 213.36) // => 5
 */
export function countFitting(room: number, size: number): number {
  return Math.max(0, Math.floor(room / size + SLACK));
}

/**
 * How many whole sizes are needed to cover a need.
 *
 * @example
 * countNeeded(10, 2.5) // => 4
 * countNeeded(10.1, 2.5) // => 5
 */
export function countNeeded(need: number, size: number): number {
  return Math.max(0, Math.ceil(need / size - SLACK));
}
