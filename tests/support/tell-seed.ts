import type { TestProject } from 'vitest/node';

/** Prints the seed of the property tests once, so that any run can be repeated. */
export function setup(project: TestProject): void {
  console.log(`Property tests use the seed ${project.config.provide.seed}; SEED=… takes another.`);
}
