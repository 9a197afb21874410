import { describe, expect, test } from 'vitest';
import { MILLIMETRES } from '#core/length.ts';
import { LENGTH_LIMITS, SIZE_LIMITS } from '#core/limits.ts';
import { SOUND_ENTRIES, WRONG_ENTRIES } from '../support/entry-table.ts';
import { useWorker } from '../support/worker.ts';

const worker = useWorker();
const { least, most } = LENGTH_LIMITS.lengthLeft;

/** The field of the widest range: what is left on a bolt. */
function write(lengthLeft: string, unit: string) {
  const pieces = [{ id: 'a', width: 8, length: 8, count: 1 }];
  return { unit, fabrics: [{ id: 'f', width: 42, lengthLeft, pieces }] };
}

async function post(typed: string, unit: string) {
  const body = JSON.stringify(write(typed, unit));
  const headers = { 'Content-Type': 'application/json' };
  return worker.fetch('/v1/yardage', { method: 'POST', headers, body });
}

async function get(typed: string, unit: string) {
  const query = new URLSearchParams({
    unit,
    'fabrics.0.id': 'f',
    'fabrics.0.width': '42',
    'fabrics.0.lengthLeft': typed,
    'fabrics.0.pieces.0.id': 'a',
    'fabrics.0.pieces.0.width': '8',
    'fabrics.0.pieces.0.length': '8',
    'fabrics.0.pieces.0.count': '1',
  });
  return worker.fetch(`/v1/yardage?${query}`);
}

interface Body {
  readonly input: { readonly fabrics: readonly { readonly lengthLeft: number }[] };
  readonly errors: readonly { readonly code: string }[];
}

/** The length understood, or the codes of what is wrong. */
async function read(response: Pick<Response, 'json' | 'ok'>): Promise<unknown> {
  const { input, errors } = (await response.json()) as Body;
  return response.ok ? input.fabrics[0]?.lengthLeft : errors.map(({ code }) => code);
}

/** What the service must say of a length in millimetres: itself in the unit, or that it is out of range. */
function expectLength(millimetres: number, unit: 'in' | 'cm'): unknown {
  if (millimetres < least) return ['too-small'];
  if (millimetres > most) return ['too-large'];
  return expect.closeTo(millimetres / MILLIMETRES[unit], 4);
}

describe('the table of entries through the service', () => {
  test.each(SOUND_ENTRIES)(
    '%j in %s is %d mm, posted and asked alike',
    async (typed, unit, millimetres) => {
      const told = expectLength(millimetres, unit);
      expect(await read(await post(typed, unit))).toEqual(told);
      expect(await read(await get(typed, unit))).toEqual(told);
    },
  );

  test.each(WRONG_ENTRIES)('%j is refused as %s, posted and asked alike', async (typed, code) => {
    const told = [typed.length > SIZE_LIMITS.lengthText ? 'too-long' : code];
    const posted = await post(typed, 'in');
    expect(posted.status).toBe(422);
    expect(await read(posted)).toEqual(told);
    // A query has numbers without quotes, so that figures which no number holds are no text there.
    const asked = /^\d{310,}$/.test(typed) ? ['wrong-type'] : told;
    expect(await read(await get(typed, 'in'))).toEqual(asked);
  });
});
