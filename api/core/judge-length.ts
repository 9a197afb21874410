import type { FaultCode } from './faults.ts';
import { readTerms } from './read-terms.ts';

/** What may stand between two lengths. */
const BETWEEN = / ?(?:[x×*;,&]|--?|\b(?:by|to|and|mal|bis|und|por|y|par|sur|et)\b) ?| /g;
/** A longer text is no slip of somebody who types a length. */
const LONGEST = 64;

/**
 * What is wrong with a text that is no length, as nearly as it can be told.
 *
 * @param text as `writePlain` writes it, not empty, and refused by `readTerms`
 *
 * @example
 * judgeLength('-3') // => 'negative-length'
 * judgeLength('1 3/0') // => 'zero-parts'
 * judgeLength('40x50') // => 'two-lengths'
 * judgeLength('8 ells') // => 'unknown-unit'
 * judgeLength('broad') // => 'not-a-length'
 */
export function judgeLength(text: string): FaultCode {
  if (text.length > LONGEST) return 'not-a-length';
  if (/^[-−] ?[\d.,]/.test(text)) return 'negative-length';
  if (/\d ?\/ ?0+(?![\d.,])/.test(text)) return 'zero-parts';
  if (isTwo(text)) return 'two-lengths';
  return hasUnknownUnit(text) ? 'unknown-unit' : 'not-a-length';
}

/** Of nothing there is no second one: `0x10` is no pair of lengths. */
function isTwo(text: string): boolean {
  return [...text.matchAll(BETWEEN)].some(({ 0: sign, index }) => {
    const [first, second] = [text.slice(0, index), text.slice(index + sign.length)];
    return (readTerms(first, 'in') ?? 0) > 0 && readTerms(second, 'in') !== undefined;
  });
}

function hasUnknownUnit(text: string): boolean {
  const [, number] = /^(.*\d) ?\p{L}[\p{L} ]*\.?$/u.exec(text) ?? [];
  return number !== undefined && readTerms(number, 'in') !== undefined;
}
