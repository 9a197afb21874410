import { readFileSync } from 'node:fs';
import { expect, inject, test } from 'vitest';
import { OPENAPI_FILE } from '../../api/docs/write-openapi.ts';
import type { OpenapiDocument } from '../support/ajv.ts';
import { FUZZED, judgeService } from './judge-service.ts';

const document = JSON.parse(readFileSync(OPENAPI_FILE, 'utf8')) as OpenapiDocument;

/** A share of what `npm run fuzz` asks. */
const COUNT = 100;

test.each(FUZZED)(
  '%s answers whatever the document allows, and what it does not, as described',
  async (path) => {
    const tally = await judgeService(document, path, { count: COUNT, seed: inject('seed') });
    expect(tally.wrong.slice(0, 5)).toEqual([]);
    expect(tally.asked).toBe(COUNT);
  },
  60_000,
);
