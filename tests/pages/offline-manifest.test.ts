import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { ENGINE } from '#core/engine.ts';
import { usePages } from '../support/browser.ts';
import { useWorker } from '../support/worker.ts';
import { drawIcon, ICON_SIDES } from '../support/write-icons.ts';

const open = usePages();
const worker = useWorker();

interface Manifest {
  readonly start_url: string;
  readonly display: string;
  readonly icons: readonly { readonly src: string; readonly sizes: string }[];
}

describe('the manifest of the installed page', () => {
  test('the browser finds nothing in the way of installing it', async () => {
    const page = await open('/counter');
    await page.getByText('Kept on this device').waitFor();
    const session = await page.context().newCDPSession(page);
    const { errors } = await session.send('Page.getAppManifest');
    expect(errors).toEqual([]);
    const { installabilityErrors } = await session.send('Page.getInstallabilityErrors');
    // A profile of a test is a private one, in which nothing is installed.
    const ids = installabilityErrors.map(({ errorId }) => errorId);
    expect(ids.filter((id) => id !== 'in-incognito')).toEqual([]);
  });

  test('it starts at the counter, without a frame of the browser, and names icons that are there', async () => {
    const manifest = (await (await worker.fetch('/manifest.webmanifest')).json()) as Manifest;
    expect(manifest).toMatchObject({ start_url: '/counter', display: 'standalone' });
    for (const side of ICON_SIDES) {
      const icon = manifest.icons.find(({ sizes }) => sizes === `${side}x${side}`);
      const bytes = Buffer.from(await (await worker.fetch(icon?.src ?? '')).arrayBuffer());
      // The head of a PNG (ISO/IEC 15948): width and height stand at the bytes 16 and 20.
      expect([bytes.readUInt32BE(16), bytes.readUInt32BE(20)]).toEqual([side, side]);
    }
  });

  test('the icons are drawn from the one picture as it is now', async () => {
    for (const side of ICON_SIDES) {
      const file = await readFile(join(worker.assets(), `icon-${side}.png`));
      expect(Buffer.compare(file, Buffer.from(await drawIcon(side))), `${side}`).toBe(0);
    }
  });

  test('the page says which version it is: that of the figures, and that of what is kept', async () => {
    const page = await open('/counter');
    const kept = await page.evaluate(async () => {
      await navigator.serviceWorker.ready;
      return (await caches.keys()).map((name) => name.replace('ragbloom-', '')).join();
    });
    expect(kept).toMatch(/^[0-9a-f]{8}$/);
    await page.getByText(`Version ${ENGINE}, ${kept}`).waitFor();
  });
});
