import { describe, expect, test, vi } from 'vitest';

const made = vi.hoisted((): string[] => []);

/** The schema library, each of whose functions says that it was called. */
vi.mock('zod/mini', async (load) => {
  const real = await load<Readonly<Record<string, unknown>>>();
  const told = Object.entries(real).map(([name, value]) => {
    if (typeof value !== 'function' || !/^[a-z]/.test(name)) return [name, value];
    const call = (...given: readonly unknown[]): unknown => {
      made.push(name);
      return Reflect.apply(value, undefined, given);
    };
    return [name, call];
  });
  return Object.fromEntries(told);
});

const { app } = await import('../../api/app.ts');
const madeByLoading = [...made];

const PATH = '/v1/plan?target.width=40&target.height=50';

describe('a worker that wakes up', () => {
  test('has made no schema', () => {
    expect(madeByLoading).toEqual([]);
  });

  test('makes the schema of what it is asked, and no second time', async () => {
    expect((await app.request(PATH)).status).toBe(200);
    expect(made).toContain('strictObject');
    const before = made.length;
    expect((await app.request(PATH)).status).toBe(200);
    expect(made).toHaveLength(before);
  });
});
