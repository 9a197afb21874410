/** One request in three languages, each a whole program. */
export interface Samples {
  readonly curl: string;
  readonly typescript: string;
  readonly python: string;
}

/** Where the samples ask. */
export const SAMPLE_ORIGIN = 'http://localhost:8787';

/**
 * Programs that ask one address and print what it answers.
 *
 * @param path such as `/v1/plan`
 * @param input the body
 */
export function writeSamples(path: string, input: object): Samples {
  const json = JSON.stringify(input, null, 2);
  return {
    curl: `curl -s '${SAMPLE_ORIGIN}${path}' \\\n  -H 'Content-Type: application/json' \\\n  -d '${json.replaceAll("'", "'\\''")}'`,
    typescript: writeTypescript(path, json),
    python: `import json
from urllib.request import Request, urlopen

request = Request(
    "${SAMPLE_ORIGIN}${path}",
    data=json.dumps(${writePython(input)}).encode(),
    headers={"Content-Type": "application/json"},
)
with urlopen(request) as answer:
    print(answer.read().decode())`,
  };
}

function writeTypescript(path: string, json: string): string {
  const head = `import { makeClient } from 'ragbloom/client';\n\nconst client = makeClient({ origin: '${SAMPLE_ORIGIN}' });\n`;
  if (!path.endsWith('.svg')) {
    return `${head}const answer = await client.ask('${path}', ${json});\nconsole.log(JSON.stringify(answer));`;
  }
  return `${head}const picture = await fetch(client.address('${path}', ${json}));\nconsole.log(await picture.text());`;
}

/** A value as Python writes it. */
function writePython(value: unknown): string {
  if (value === true) return 'True';
  if (value === false) return 'False';
  if (Array.isArray(value)) return `[${value.map(writePython).join(', ')}]`;
  if (typeof value !== 'object' || value === null) return JSON.stringify(value);
  const parts = Object.entries(value).map(([key, part]) => `"${key}": ${writePython(part)}`);
  return `{${parts.join(', ')}}`;
}
