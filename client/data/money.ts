import { decimalsOf } from '#core/tables/currencies.ts';

/**
 * Money as people type it, in whole minor units of its currency; nothing where it cannot be told what is meant, as of
 * more decimals than the currency has.
 *
 * @example
 * readMoney('11,20', 'EUR') // => 1120
 * readMoney('1120', 'JPY') // => 1120
 * readMoney('1,250', 'EUR') // => undefined
 */
export function readMoney(typed: string, currency: string): number | undefined {
  const decimals = decimalsOf(currency);
  const found = /^(\d{1,9})(?:[.,](\d*))?$/.exec(typed.replaceAll(/[\s\u00a0\u202f]/g, ''));
  const [, whole = '', part = ''] = found ?? [];
  if (found === null || part.length > decimals) return undefined;
  return Number(whole + part.padEnd(decimals, '0'));
}

/**
 * Minor units as they stand in a field.
 *
 * @example
 * writeMoneyEntry(1120, 'EUR') // => '11.20'
 * writeMoneyEntry(1120, 'JPY') // => '1120'
 */
export function writeMoneyEntry(minor: number, currency: string): string {
  const decimals = decimalsOf(currency);
  return (minor / 10 ** decimals).toFixed(decimals);
}

/**
 * Minor units as the language writes money, with the currency's own decimals.
 *
 * @example
 * writeMoney('en', 'EUR', 1120) // => '€11.20'
 */
export function writeMoney(language: string, currency: string, minor: number): string {
  const digits = decimalsOf(currency);
  const format = new Intl.NumberFormat(language, {
    style: 'currency',
    currency,
    minimumFractionDigits: digits,
    maximumFractionDigits: digits,
  });
  return format.format(minor / 10 ** digits);
}
