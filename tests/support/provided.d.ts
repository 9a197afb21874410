import 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    /** Seed of the property tests. */
    seed: number;
    /** Folder of the site, built once a run. */
    site: string;
  }
}
