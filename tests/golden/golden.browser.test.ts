import { expect, test } from 'vitest';
import { reckon } from './reckon.ts';
import { GOLDEN_FILES, type GoldenPath, type Vectors } from './vectors.ts';

test.each(Object.entries(GOLDEN_FILES))(
  'golden pairs of %s are reckoned to the byte in a browser page',
  async (name) => {
    const file = await fetch(`/tests/golden/${name}.json`);
    const { path, vectors } = (await file.json()) as Vectors;
    const wrong = vectors.filter(
      ({ input, answer }) => reckon(path as GoldenPath, input) !== JSON.stringify(answer),
    );
    expect(vectors.length).toBeGreaterThan(0);
    expect(wrong.map((vector) => vectors.indexOf(vector))).toEqual([]);
  },
);
