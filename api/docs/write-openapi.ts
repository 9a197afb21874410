import { readFile, writeFile } from 'node:fs/promises';
import { app, batch, ENDPOINTS, version } from '../app.ts';
import { describeApi } from './describe-api.ts';

/** Where the document stands; it is served as it is. */
export const OPENAPI_FILE = new URL('../../client/pages/openapi.json', import.meta.url);

const CONTRACT_FILE = new URL('../core/contract.ts', import.meta.url);

/** The text of the OpenAPI document, as the sources are now. */
export async function writeOpenapi(): Promise<string> {
  const contract = await readFile(CONTRACT_FILE, 'utf8');
  const ask = (path: string, init: RequestInit) => app.request(path, init);
  const document = await describeApi({ version, endpoints: ENDPOINTS, batch, contract, ask });
  return `${JSON.stringify(document)}\n`;
}

if (import.meta.main) await writeFile(OPENAPI_FILE, await writeOpenapi());
