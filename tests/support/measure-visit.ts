import type { CDPSession, Page } from 'playwright-core';

/** How a network and a device are slowed down. */
export interface Slowness {
  /** Milliseconds until the first byte of each answer. */
  readonly latency: number;
  /** Bits a second. */
  readonly rate: number;
  /** How many times slower than this machine. */
  readonly cpu: number;
}

/** What the web’s measuring tools call slow 4G, on a phone four times slower than this machine. */
export const SLOW_4G: Slowness = { latency: 150, rate: 1_638_400, cpu: 4 };
/** A store aisle. */
export const AISLE: Slowness = { latency: 400, rate: 400_000, cpu: 4 };

/** What one visit came to. */
export interface Visit {
  /** Bytes of what was sent, compressed as it was sent. */
  readonly bytes: number;
  /** The same with the headers as HTTP/1.1 writes them, at length in every answer; later versions compress them. */
  readonly wire: number;
  readonly requests: number;
  /** Milliseconds to the largest thing seen. */
  readonly lcp: number;
  /** Sum of unexpected shifts. */
  readonly cls: number;
  /** Milliseconds from the slowest press to its paint; 0 where all were quicker than can be told. */
  readonly interaction: number;
}

/** What gathers in the page. */
interface Vitals {
  lcp: number;
  cls: number;
  interaction: number;
}

/** A visit that is under way. */
export interface Measuring {
  readonly read: () => Promise<Visit>;
  /** Counts from now on only. */
  readonly forget: () => Promise<void>;
}

/**
 * Begins to measure a page; call it before the page goes anywhere.
 *
 * @param slowness none: as quick as this machine is.
 */
export async function measureVisit(page: Page, slowness?: Slowness): Promise<Measuring> {
  const session = await page.context().newCDPSession(page);
  await session.send('Network.enable');
  if (slowness !== undefined) await slowDown(session, slowness);
  let bytes = 0;
  let wire = 0;
  let requests = 0;
  session.on('Network.dataReceived', ({ encodedDataLength }) => {
    bytes += encodedDataLength;
  });
  session.on('Network.loadingFinished', ({ encodedDataLength }) => {
    wire += encodedDataLength;
    if (encodedDataLength > 0) requests += 1;
  });
  await page.addInitScript(observe);
  return {
    read: async () => ({ bytes, wire, requests, ...(await page.evaluate(readVitals)) }),
    forget: async () => {
      bytes = 0;
      wire = 0;
      requests = 0;
      await page.evaluate(() => {
        const { vitals } = globalThis as unknown as { vitals: Vitals };
        Object.assign(vitals, { cls: 0, interaction: 0 });
      });
    },
  };
}

async function slowDown(session: CDPSession, { latency, rate, cpu }: Slowness): Promise<void> {
  await session.send('Network.emulateNetworkConditions', {
    offline: false,
    latency,
    downloadThroughput: rate / 8,
    uploadThroughput: rate / 8,
  });
  await session.send('Emulation.setCPUThrottlingRate', { rate: cpu });
}

/** Runs in the page before anything of its own. */
function observe(): void {
  const vitals: Vitals = { lcp: 0, cls: 0, interaction: 0 };
  Object.assign(globalThis, { vitals });
  const watch = (type: string, take: (entry: never) => void, more: object = {}) =>
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) take(entry as never);
    }).observe({ type, buffered: true, ...more });
  watch('largest-contentful-paint', ({ startTime }: PerformanceEntry) => {
    vitals.lcp = startTime;
  });
  watch('layout-shift', (shift: { readonly value: number; readonly hadRecentInput: boolean }) => {
    if (!shift.hadRecentInput) vitals.cls += shift.value;
  });
  const slowest = ({ duration, interactionId }: { duration: number; interactionId: number }) => {
    if (interactionId > 0) vitals.interaction = Math.max(vitals.interaction, duration);
  };
  watch('event', slowest, { durationThreshold: 16 });
}

/** What has gathered, once what was pressed is painted. */
async function readVitals(): Promise<Vitals> {
  await new Promise((done) => requestAnimationFrame(() => setTimeout(done, 50)));
  return (globalThis as unknown as { vitals: Vitals }).vitals;
}
