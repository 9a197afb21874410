/**
 * The currency of prices as ISO 4217 writes it, three letters; nothing of what is no currency, of which a browser would
 * make an error.
 *
 * @example
 * readCurrency('eur') // => 'EUR'
 * readCurrency('euro') // => ''
 */
export function readCurrency(named: string | null | undefined): string {
  return /^[a-z]{3}$/i.test(named ?? '') ? `${named}`.toUpperCase() : '';
}
