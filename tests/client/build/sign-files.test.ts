import { describe, expect, test } from 'vitest';
import { findBreach, signAll, signFile } from '../../../client/build/sign-files.ts';

describe('signFile', () => {
  // https://www.w3.org/TR/SRI/, section 3.1: the example of a script that says hello.
  test("signFile(contents) gives what the standard's own example gives", () => {
    expect(signFile("alert('Hello, world.');")).toBe(
      'sha384-H8BRh8j48O9oYatfu5AZzq6A9RINhZO5H16dQZngK7T62em8MUt1FLm52t+eX6xO',
    );
  });
});

describe('findBreach', () => {
  const files = { '/a.js': 'sha384-a', '/b.js': 'sha384-b' };
  const released = { '1.0.0': signAll(files) };

  test('findBreach(version, files) has nothing against a version that is not released', () => {
    expect(findBreach('1.1.0', files, released)).toBeUndefined();
  });

  test('findBreach(version, files) has nothing against files that stay as they are, in any order', () => {
    const turned = Object.fromEntries(Object.entries(files).toReversed());
    expect(findBreach('1.0.0', turned, released)).toBeUndefined();
  });

  test.each([
    { ...files, '/a.js': 'sha384-other' },
    { ...files, '/c.js': 'sha384-c' },
    { '/a.js': 'sha384-a' },
  ])('findBreach(version, files) refuses another, one more or one less: %j', (other) => {
    expect(findBreach('1.0.0', other, released)).toContain('raise VERSION');
  });
});
