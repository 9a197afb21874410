import { expect, test } from 'vitest';
import { z } from 'zod';
import { chooseBranch, isOfOtherName } from '../../../api/http/choose-branch.ts';

const forms = z.union([
  z.strictObject({ width: z.number(), height: z.number(), at: z.string().exactOptional() }),
  z.strictObject({ size: z.string() }),
  z.strictObject({ columns: z.int(), rows: z.int() }),
]);
const kinds = z.union([z.int().max(9), z.array(z.number()).min(1)]);

/** Which branch was meant, by its place. */
function choose(schema: z.ZodType, value: unknown): number | undefined {
  const issue = schema.safeParse(value).error?.issues[0];
  if (issue?.code !== 'invalid_union') throw new Error('not a union');
  const branch = chooseBranch(issue.errors, value);
  const at = branch === undefined ? -1 : issue.errors.findIndex((one) => Object.is(one, branch));
  return at < 0 ? undefined : at;
}

test('chooseBranch takes the group that claims all known keys', () => {
  expect(choose(forms, { width: 'x' })).toBe(0);
  expect(choose(forms, { columns: 2 })).toBe(2);
  expect(choose(forms, { size: 3, colour: 1 })).toBe(1);
});

test('chooseBranch leaves it open for keys of two groups, of none, and for no keys', () => {
  expect(choose(forms, { width: 1, height: 'x', columns: 2 })).toBeUndefined();
  expect(choose(forms, { width: 1, size: 2 })).toBeUndefined();
  expect(choose(forms, { colour: 1 })).toBeUndefined();
  expect(choose(forms, {})).toBeUndefined();
});

test('chooseBranch takes the only branch of the right kind, and none for a kind of its own', () => {
  expect(choose(kinds, 2.5)).toBe(0);
  expect(choose(kinds, ['x'])).toBe(1);
  expect(choose(kinds, true)).toBeUndefined();
  expect(choose(forms, 'x')).toBeUndefined();
});

const named = z.union([
  z.strictObject({ kind: z.literal('roll'), price: z.int() }),
  z.strictObject({ kind: z.literal('pieces'), price: z.int(), count: z.int() }),
]);

test('chooseBranch takes the form that a part of the input names, whatever else is wrong with it', () => {
  expect(choose(named, { kind: 'roll', price: 2.5 })).toBe(0);
  expect(choose(named, { kind: 'pieces', price: 2.5 })).toBe(1);
  expect(choose(named, { kind: 'pieces', colour: 1 })).toBe(1);
});

test('isOfOtherName knows a name from a choice of several values', () => {
  const issueOf = (schema: z.ZodType, value: unknown) => schema.safeParse(value).error?.issues[0];
  const name = issueOf(z.object({ kind: z.literal('a') }), { kind: 'b' });
  const choice = issueOf(z.object({ kind: z.enum(['a', 'b']) }), { kind: 'c' });
  expect(name && isOfOtherName(name)).toBe(true);
  expect(choice && isOfOtherName(choice)).toBe(false);
});
