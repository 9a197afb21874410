import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { VIEWS } from '../../../api/pages/views.ts';
import { layoutErrand } from '../../../client/elements/layout/layout-errand.ts';
import { sizeErrand } from '../../../client/elements/size/size-errand.ts';
import { yardageErrand } from '../../../client/elements/yardage/yardage-errand.ts';
import { see } from '../../support/tell-answer.ts';

describe('VIEWS', () => {
  test.each(VIEWS)(
    '$name is answered, with its example and in every other way',
    ({ name, ways = [] }) => {
      for (const query of ['', ...ways.map(([, way]) => way)]) {
        const seen = see(name, query);
        expect(seen.ok, query).toBe(true);
      }
    },
  );
  test.each(VIEWS)(
    '$name has an endpoint, a name for an address and a height that blogs keep',
    (view) => {
      expect(ENDPOINTS.map(({ path }) => path)).toContain(view.asks);
      expect(view.name).toMatch(/^[a-z]+$/);
      expect(view.height).toBeGreaterThanOrEqual(200);
      expect(view.height).toBeLessThanOrEqual(1000);
    },
  );
  test.each([
    ['size', sizeErrand.complete({})],
    ['yardage', yardageErrand.complete({})],
    ['layout', layoutErrand.complete({})],
  ])('%s begins without scripts as its element does', (name, draft) => {
    const query = new URLSearchParams(Object.entries(draft as Record<string, string>));
    expect(see(name, `${query}`)).toEqual({ ...see(name), isExample: false });
  });
  test('no two have one name or one page', () => {
    const pages = VIEWS.flatMap(({ page }) => page ?? []);
    expect(new Set(VIEWS.map(({ name }) => name)).size).toBe(VIEWS.length);
    expect(new Set(pages).size).toBe(pages.length);
  });
});
