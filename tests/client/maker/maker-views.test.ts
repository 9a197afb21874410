import { describe, expect, test } from 'vitest';
import { ENDPOINTS } from '../../../api/app.ts';
import { VIEWS } from '../../../api/pages/views.ts';
import { startState } from '../../../client/maker/maker-state.ts';
import { MAKER_VIEWS } from '../../../client/maker/maker-views.ts';
import { writeSnippets } from '../../../client/maker/write-snippets.ts';

describe('MAKER_VIEWS', () => {
  test.each(MAKER_VIEWS)(
    '$name is a view of the service, as high and with the same page',
    (view) => {
      const served = VIEWS.find(({ name }) => name === view.name);
      expect([served?.height, served?.page]).toEqual([view.height, view.page]);
      if (view.image !== undefined) expect(ENDPOINTS.map(({ path }) => path)).toContain(view.image);
    },
  );
  test.each(MAKER_VIEWS)('$name begins with what its endpoint answers', ({ name }) => {
    const { preview } = writeSnippets(startState(name), 'https://a.test');
    const served = VIEWS.find((one) => one.name === name);
    const endpoint = ENDPOINTS.find(({ path }) => path === served?.asks);
    const query = preview.split('?')[1] ?? served?.example ?? '';
    expect(endpoint?.understandQuery(query)).toMatchObject({ ok: true });
  });
});
