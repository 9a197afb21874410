import 'vitest';

declare module 'vitest' {
  interface ProvidedContext {
    /** Seed of the property tests. */
    seed: number;
  }
}
