import { expect, test } from 'vitest';
import { answerWish, loadScenario } from '../../demo-data/load-scenario.ts';
import { usePages } from '../support/browser.ts';

const open = usePages();

test.each(loadScenario().wishes)('the page plans $title when it is chosen', async (wish) => {
  const page = await open('/');
  await page.getByRole('link', { name: wish.title }).click();
  const cloth = page.locator('ragbloom-plan [part="shopping"]');
  await cloth.waitFor();
  const shown = (await cloth.textContent()) ?? '';
  const prints = answerWish(wish.file).fabrics.flatMap(({ print }) => print ?? []);
  expect(prints.filter((print) => !shown.includes(print))).toEqual([]);
});
