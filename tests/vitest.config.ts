import { fileURLToPath } from 'node:url';
import { playwright } from '@vitest/browser-playwright';
import { defineConfig } from 'vitest/config';
import { prepareChromium } from './support/chromium.ts';

const seed = Number(process.env['SEED'] ?? 20_260_401);
const inBrowser = 'tests/**/*.browser.test.ts';
const onPages = ['tests/pages/**/*.test.ts', 'tests/embedding/**/*.test.ts'];

export default defineConfig({
  root: fileURLToPath(new URL('..', import.meta.url)),
  cacheDir: '.build/vite',
  // Without `development`: what is tested is the code that ships.
  resolve: { conditions: ['module', 'browser', 'production'] },
  test: {
    allowOnly: false,
    maxWorkers: 2,
    // What is waited for comes late on a busy machine; what never comes fails all the same.
    expect: { poll: { timeout: 8000 } },
    provide: { seed },
    globalSetup: ['tests/support/tell-seed.ts', 'tests/support/build-once.ts'],
    setupFiles: ['tests/support/fix-seed.ts'],
    projects: [
      {
        extends: true,
        test: {
          name: 'node',
          include: ['tests/**/*.test.ts'],
          exclude: [inBrowser, ...onPages],
          testTimeout: 20_000,
        },
      },
      {
        extends: true,
        // Pages mostly wait, so one more worker than cores; after the rest, which would disturb what they time.
        test: {
          name: 'pages',
          include: onPages,
          testTimeout: 30_000,
          maxWorkers: 3,
          sequence: { groupOrder: 1 },
        },
      },
      {
        extends: true,
        // The bundler warns of an import inside vitest itself, which nobody here can mend.
        logLevel: 'error',
        // Named beforehand, so that a first run does not reload in the middle of a test.
        optimizeDeps: { include: ['lit', 'valibot', 'axe-core', 'fast-check'] },
        test: {
          name: 'browser',
          include: [inBrowser],
          testTimeout: 20_000,
          browser: {
            enabled: true,
            headless: true,
            screenshotFailures: false,
            provider: playwright({ launchOptions: await prepareChromium() }),
            instances: [{ browser: 'chromium' }],
          },
        },
      },
    ],
  },
});
