import type { KitsInput, KitsRequest } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { keep, type Reading, readPlain } from './reading.ts';

/** The ways to say a price, of which one will do. */
const PRICE_WAYS = ['margin', 'markup', 'price'] as const;

/**
 * Reads the costs of a kit. Faults: `price-unclear` for more than one of margin, markup and price;
 * `missing` for a bolt without a cost where any money is given.
 */
export function resolveCosts(reading: Reading, request: KitsRequest): KitsInput['costs'] {
  const given = request.costs ?? {};
  const isCosted = hasMoney(request);
  const sum = (name: 'packaging' | 'labour' | 'overhead') =>
    readPlain(reading, {
      path: ['costs', name],
      given: given[name],
      fallback: 0,
      ...(isCosted && { why: `No ${name} is counted unless told` }),
    });
  const sums = { packaging: sum('packaging'), labour: sum('labour'), overhead: sum('overhead') };
  const ways = PRICE_WAYS.filter((name) => given[name] !== undefined);
  const price = Object.fromEntries(ways.map((name) => [name, roundTo(given[name] ?? 0, 9)]));
  for (const name of ways) keep(reading, ['costs', name], price[name] ?? 0);
  if (ways.length > 1) {
    const received = ways.join(' and ');
    reading.faults.push({ code: 'price-unclear', path: ['costs'], expected: PRICE_WAYS, received });
  }
  for (const [index, { cost }] of request.bolts.entries()) {
    if (!isCosted || cost !== undefined) continue;
    const expected = 'what a yard or a metre of it costs, as other money is given';
    reading.faults.push({ code: 'missing', path: ['bolts', index, 'cost'], expected });
  }
  return { ...sums, ...price };
}

/**
 * Reads the currency: that of the request, else of the bolts, else the usual one.
 * Fault: `mixed-currencies` for each bolt in another.
 */
export function resolveCurrency(reading: Reading, request: KitsRequest): string {
  const usual = reading.unit === 'in' ? 'USD' : 'EUR';
  const first = request.bolts.find((bolt) => bolt.currency !== undefined)?.currency;
  const currency = readPlain(reading, {
    path: ['currency'],
    given: request.currency ?? first,
    fallback: usual,
    source: SOURCES.model,
    ...(hasMoney(request) && { why: 'Money of where lengths are measured so' }),
  });
  for (const [index, bolt] of request.bolts.entries()) {
    if (bolt.currency === undefined || bolt.currency === currency) continue;
    const path = ['bolts', index, 'currency'];
    const received = bolt.currency;
    reading.faults.push({ code: 'mixed-currencies', path, expected: currency, received });
  }
  return currency;
}

/** Sums of nothing are no money: they are what is understood where nothing is told. */
function hasMoney({ bolts, costs = {} }: KitsRequest): boolean {
  const { packaging = 0, labour = 0, overhead = 0 } = costs;
  const isPriced = PRICE_WAYS.some((name) => costs[name] !== undefined);
  return (
    isPriced || packaging + labour + overhead > 0 || bolts.some(({ cost }) => cost !== undefined)
  );
}
