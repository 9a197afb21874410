import { countFitting } from '../block/count-whole.ts';
import { usableWidth } from '../cloth/usable-width.ts';
import type { KitsInput } from '../contract.ts';
import { listPrints } from '../kits/list-prints.ts';
import { fromMillimetres, toMillimetres } from '../length.ts';
import { prewashRates } from '../wash/prewash-rates.ts';
import { usableCuts } from './check-block.ts';
import { checkIds } from './check-ids.ts';
import { isSound, type Reading } from './reading.ts';

/**
 * Checks bolts against the plan.
 * Faults: `repeated-id`; `not-one-of` for a role that the plan does not have, and for a print that is
 * not among those it names; `roll-too-narrow` where not even the smallest block goes across;
 * `counts-do-not-sum` for spare squares where the plan counts the blocks of each print.
 */
export function checkKits(reading: Reading, input: KitsInput): void {
  checkIds(reading, input.bolts, ['bolts']);
  const roles = [...new Set(input.plan.layers.map(({ role }) => role))];
  const named = listPrints(input.plan);
  for (const [index, bolt] of input.bolts.entries()) {
    if (!roles.includes(bolt.role)) {
      const path = ['bolts', index, 'role'];
      reading.faults.push({ code: 'not-one-of', path, expected: roles, received: bolt.role });
    } else if (bolt.role === 'top' && named !== undefined) {
      const ids = named.map(({ id }) => id);
      const path = ['bolts', index, 'print'];
      if (ids.includes(bolt.print)) continue;
      reading.faults.push({ code: 'not-one-of', path, expected: ids, received: bolt.print });
    }
  }
  checkWidths(reading, input);
  const isCounted = named?.some(({ count }) => count !== undefined);
  if (isCounted === true && input.perKit.spare > 0) {
    const path = ['perKit', 'spare'];
    const expected = 'none, since the plan counts the blocks of each print';
    reading.faults.push({
      code: 'counts-do-not-sum',
      path,
      expected,
      received: input.perKit.spare,
    });
  }
}

function checkWidths(reading: Reading, { unit, plan, bolts }: KitsInput): void {
  const cuts = plan.block.cut === undefined ? usableCuts(plan) : [plan.block.cut];
  const cut = toMillimetres(Math.min(...cuts), plan.unit);
  for (const [index, bolt] of bolts.entries()) {
    const layer = plan.layers.find(({ role }) => role === bolt.role);
    const places = ['width', 'selvage'].map((name) => ['bolts', index, name]);
    if (layer === undefined || !isSound(reading, ...places)) continue;
    const usable = usableWidth({
      width: toMillimetres(bolt.width, unit),
      selvage: toMillimetres(bolt.selvage, unit),
      prewash: prewashRates(layer),
    });
    if (countFitting(usable, cut) > 0) continue;
    const expected = `${fromMillimetres(cut, unit)} ${unit}`;
    const received = `${fromMillimetres(Math.max(0, usable), unit)} ${unit}`;
    const path = ['bolts', index, 'width'];
    reading.faults.push({ code: 'roll-too-narrow', path, expected, received });
  }
}
