import { globSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

/** The folder of the project. */
export const root = fileURLToPath(new URL('../..', import.meta.url));

/** Paths from the project's folder, with forward slashes, that match a pattern; sorted. */
export function listFiles(...patterns: readonly string[]): readonly string[] {
  const found = globSync([...patterns], { cwd: root, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => join(entry.parentPath, entry.name).slice(root.length).replaceAll('\\', '/'));
  return [...new Set(found)].toSorted();
}

/** The text of a file of the project. */
export function readText(path: string): string {
  return readFileSync(join(root, path), 'utf8');
}
