import { createHash } from 'node:crypto';

/** Versions that are out in the world, each with the digest of its files: these never change again. */
export const RELEASED: Readonly<Record<string, string>> = {};

/** Files by their path, each with what its bytes must come to, as the attribute `integrity` has it. */
export type Signatures = Readonly<Record<string, string>>;

/** What the bytes of a file come to (W3C Subresource Integrity). */
export function signFile(contents: string | Uint8Array): string {
  return `sha384-${createHash('sha384').update(contents).digest('base64')}`;
}

/** One digest of many files; their order does not matter. */
export function signAll(files: Signatures): string {
  return signFile(JSON.stringify(Object.entries(files).toSorted()));
}

/** What keeps the files of a version from being served: a sentence, or nothing. */
export function findBreach(
  version: string,
  files: Signatures,
  released: Readonly<Record<string, string>> = RELEASED,
): string | undefined {
  const digest = released[version];
  if (digest === undefined || digest === signAll(files)) return undefined;
  return `The files of version ${version} would change, but it is released: raise VERSION in client/embed/version.ts.`;
}
