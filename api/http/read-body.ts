import { SIZE_LIMITS } from '#core/limits.ts';
import { fail, succeed } from '#core/outcome.ts';
import { scanJson } from './scan-json.ts';
import type { InputRead } from './unfold-query.ts';

/** Bytes that are let pass before a body too large is cut off. */
const LONGEST_PATIENCE = 4_194_304;
const JSON_TYPE = /^application\/(?:[\w!#$&^.+-]+\+)?json$/i;

/**
 * Reads a body of JSON. Its kind and size are checked before a byte of it is kept or parsed, and its
 * size again while it arrives, since a length told beforehand may be false or missing.
 *
 * Faults: `wrong-content-type`, `body-too-large`, `malformed-json`, `too-deep`, `repeated-key`,
 * of which the last value counts as sound.
 */
export async function readBody(request: Request): Promise<InputRead> {
  const type = request.headers.get('Content-Type') ?? '';
  const coding = request.headers.get('Content-Encoding') ?? 'identity';
  if (!JSON_TYPE.test(type.split(';')[0]?.trim() ?? '') || coding !== 'identity') {
    const received = coding === 'identity' ? type : `${type}, ${coding}`;
    await readBytes(request, 0);
    return fail([{ code: 'wrong-content-type', path: [], expected: 'application/json', received }]);
  }
  const told = Number(request.headers.get('Content-Length') ?? 0);
  const bytes = await readBytes(request, told > SIZE_LIMITS.body ? 0 : SIZE_LIMITS.body);
  if (bytes !== undefined) return parseBytes(bytes);
  return fail([{ code: 'body-too-large', path: [], expected: SIZE_LIMITS.body }]);
}

/**
 * The whole body, or nothing once it is larger than `most`. The rest is let pass unkept, up to a bound:
 * a caller that is still sending when the connection closes would not see the answer.
 */
async function readBytes(request: Request, most: number): Promise<Uint8Array | undefined> {
  const whole = new Uint8Array(most);
  const reader = request.body?.getReader();
  let size = 0;
  while (reader !== undefined) {
    const { done, value } = await reader.read();
    if (done) break;
    if (size + value.length <= most) whole.set(value, size);
    size += value.length;
    if (size > LONGEST_PATIENCE) await reader.cancel();
  }
  return size > most ? undefined : whole.subarray(0, size);
}

function parseBytes(bytes: Uint8Array): InputRead {
  try {
    const text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
    const faults = scanJson(text);
    if (faults[0]?.code === 'too-deep') return fail(faults);
    const value: unknown = JSON.parse(text);
    return faults.length > 0 ? { ok: false, faults, sound: value } : succeed(value);
  } catch {
    // What a parser says of it differs from runtime to runtime, and answers must not.
    return fail([{ code: 'malformed-json', path: [], expected: 'one JSON object in UTF-8' }]);
  }
}
