import { expect, test } from 'vitest';
import { writeQuery } from '../../../client/data/draft.ts';
import { computePlan } from '../../../client/data/on-device.ts';
import { readHostInput } from '../../../client/data/read-host-input.ts';
import { shareCounts } from '../../../client/data/share-counts.ts';

test('shareCounts lets counts that filled one grid lie in the same proportion in another', () => {
  const prints =
    'layers.0.role=top&layers.0.prints.0.id=Moss&layers.0.prints.0.count=15&layers.0.prints.1.id=Rust&layers.0.prints.1.count=5&layers.1.role=backing';
  const { draft } = readHostInput(`target.columns=8&target.rows=10&${prints}`);
  expect(computePlan(writeQuery(draft)).ok).toBe(false);
  const shared = computePlan(writeQuery(shareCounts(draft)));
  if (!shared.ok) throw new Error(JSON.stringify(shared.faults));
  expect(shared.value.work.stacks.map(({ blocks }) => blocks)).toEqual([60, 20]);
});
