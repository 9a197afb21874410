import type { RollFabric, YardageAnswer } from '#core/contract.ts';
import { resolveYardage } from '#core/wish/resolve-yardage.ts';
import { planYardage } from '#core/yardage.ts';

/** The answer to a yardage that is right. */
export function cutFabrics(...fabrics: readonly RollFabric[]): YardageAnswer {
  const resolved = resolveYardage({ fabrics });
  if (!resolved.ok) throw new Error(JSON.stringify(resolved.faults));
  return planYardage(resolved.value);
}

/** Squares and borders off one bolt: some of them turned, some trimmed. */
export const mixedBolt: RollFabric = {
  id: 'Heron dot',
  width: 44,
  pieces: [
    { id: 'block', width: 8.5, length: 8.5, count: 42 },
    { id: 'border', width: 4, length: 40, count: 4 },
    { id: 'label', width: 3, length: 5, count: 7, directional: true },
  ],
};

/** Boxes of path data that goes around rectangles. */
export function readBoxes(d: string) {
  return [...d.matchAll(/M(\S+) (\S+?)h(\S+?)v(\S+?)h/g)].map(([, x, y, width, height]) => ({
    x: Number(x),
    y: Number(y),
    width: Number(width),
    height: Number(height),
  }));
}
