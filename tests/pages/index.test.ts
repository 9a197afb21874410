import { expect, test } from 'vitest';
import { findViolations } from '../support/axe.ts';
import { usePages } from '../support/browser.ts';

const open = usePages();

test('the page / opens on a phone in the dark, with nothing that axe finds wrong', async () => {
  const page = await open('/', { width: 360, dark: true });
  expect(await page.title()).toBe('Plan a rag quilt – Ragbloom');
  expect(await findViolations(page)).toEqual([]);
});
