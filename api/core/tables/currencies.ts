import { SOURCES } from '../sources.ts';

/** Currencies whose minor unit is not the hundredth, by the decimals they have instead. */
export interface CurrencyException {
  readonly decimals: number;
  readonly codes: readonly string[];
  readonly source: string;
}

/** Every other currency of ISO 4217 has two decimals. */
export const CURRENCY_EXCEPTIONS: readonly CurrencyException[] = [
  {
    decimals: 0,
    codes: [
      'BIF',
      'CLP',
      'DJF',
      'GNF',
      'ISK',
      'JPY',
      'KMF',
      'KRW',
      'PYG',
      'RWF',
      'UGX',
      'UYI',
      'VND',
      'VUV',
      'XAF',
      'XOF',
      'XPF',
    ],
    source: SOURCES.minorUnits,
  },
  {
    decimals: 3,
    codes: ['BHD', 'IQD', 'JOD', 'KWD', 'LYD', 'OMR', 'TND'],
    source: SOURCES.minorUnits,
  },
  { decimals: 4, codes: ['CLF', 'UYW'], source: SOURCES.minorUnits },
];

/**
 * How many decimals a currency has: 2 where a hundred minor units make one.
 *
 * @example
 * decimalsOf('JPY') // => 0
 * decimalsOf('KWD') // => 3
 * decimalsOf('EUR') // => 2
 */
export function decimalsOf(currency: string): number {
  return CURRENCY_EXCEPTIONS.find((row) => row.codes.includes(currency))?.decimals ?? 2;
}
