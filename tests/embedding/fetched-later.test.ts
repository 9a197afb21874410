import { expect, test } from 'vitest';
import { usePages } from '../support/browser.ts';
import { useHostPage } from '../support/host-page.ts';

const open = usePages();
const host = useHostPage();
const PHONE = { width: 360, height: 740, touch: true } as const;

/** A size on a foreign page, seen on a phone, and the scripts that it has asked for. */
async function openSize(expected?: RegExp) {
  const page = await open('/health', { ...PHONE, ...(expected && { expected }) });
  const home = new URL(page.url()).origin;
  const asked: string[] = [];
  page.on('request', (request) => asked.push(request.url().replace(/^.*\//, '')));
  const viewport = '<meta name="viewport" content="width=device-width">';
  await page.goto(
    host.serve(
      `<ragbloom-size preset="target.width=40&target.height=50"></ragbloom-size><script src="${home}/embed/v1.js" async></script>`,
      viewport,
    ),
  );
  await page.locator('ragbloom-size [part=figures]').waitFor();
  return { page, has: (name: string) => asked.some((file) => file.startsWith(name)) };
}

test('eighths come when a finger touches an entry, and are typed into it', async () => {
  const { page, has } = await openSize();
  expect(has('size-')).toBe(true);
  for (const name of ['fields-draw-fractions', 'fields-switch-unit', 'host-read-start']) {
    expect(has(name)).toBe(false);
  }
  await page.locator('#width').tap();
  await page.getByRole('group', { name: 'Fractions' }).first().getByText('½').tap();
  expect(await page.locator('#width').inputValue()).toBe('40½');
  expect(has('fields-draw-fractions')).toBe(true);
  await page.locator('[part=figures]:not(.busy *)', { hasText: 'in' }).waitFor();
});

test('what says lengths in centimetres comes when they are chosen, and again where it failed', async () => {
  const { page } = await openSize(/ERR_FAILED|fetch/);
  await page.route('**/fields-switch-unit-*', (route) => route.abort());
  await page.locator('.chip', { hasText: 'cm' }).tap();
  await page.locator('.notice', { hasText: 'no connection' }).waitFor();
  expect(await page.locator('#width').inputValue()).toBe('40');
  await page.unroute('**/fields-switch-unit-*');
  await page.getByRole('button', { name: 'Try again' }).tap();
  await page.locator('[part=figures]', { hasText: 'cm' }).waitFor();
  expect(await page.locator('#width').inputValue()).toBe('101.6');
  expect(await page.locator('.notice').count()).toBe(0);
});

test('a question in the address is read by what comes then, and a cost by what writes a currency', async () => {
  const page = await open('/health');
  const home = new URL(page.url()).origin;
  const offer = (layer: number, role: string) =>
    `layers.${layer}.role=${role}&layers.${layer}.offers.0.kind=roll&layers.${layer}.offers.0.id=bolt&layers.${layer}.offers.0.price=1000`;
  const preset = `${offer(0, 'top')}&${offer(1, 'backing')}`;
  const address = host.serve(
    `<ragbloom-size address currency="usd" preset="${preset.replaceAll('&', '&amp;')}"></ragbloom-size><script src="${home}/embed/v1.js" async></script>`,
  );
  await page.goto(`${address}?target.width=44&target.height=55&${preset}`);
  await page.locator('ragbloom-size [part=cost]', { hasText: '$' }).waitFor();
  expect(await page.locator('#width').inputValue()).toBe('44');
});
