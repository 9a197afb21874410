/** One request and the answer that it has for as long as the engine stays. */
export interface Vector {
  readonly input: object;
  readonly answer: object;
}

/** All pairs of one endpoint. */
export interface Vectors {
  readonly engine: string;
  readonly path: string;
  readonly vectors: readonly Vector[];
}

/** Each file of pairs and the address that it asks. */
export const GOLDEN_FILES = {
  plan: '/v1/plan',
  yardage: '/v1/yardage',
  'wash-shrinkage': '/v1/wash-shrinkage',
  layout: '/v1/layout',
  stash: '/v1/stash',
  kits: '/v1/kits',
} as const;

export type GoldenName = keyof typeof GOLDEN_FILES;
export type GoldenPath = (typeof GOLDEN_FILES)[GoldenName];

/** The text of a file: a line a pair, so that what changed can be seen. */
export function writeVectors({ engine, path, vectors }: Vectors): string {
  const lines = vectors.map((vector) => JSON.stringify(vector));
  const head = JSON.stringify({ engine, path }).slice(0, -1);
  return `${head},"vectors":[\n${lines.join(',\n')}\n]}\n`;
}
