import { expect, test } from 'vitest';
import { findFabric } from '../../../api/core/tables/fabrics.ts';
import { USUAL_FABRICS } from '../../../api/core/tables/usual-fabrics.ts';

test('USUAL_FABRICS are fabrics of the table', () => {
  for (const name of Object.values(USUAL_FABRICS)) expect(findFabric(name).name).toBe(name);
});
