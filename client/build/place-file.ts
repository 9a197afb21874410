import { mkdir, rename, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Writes a file in one go: whoever reads it meanwhile sees the old or the new one, and never half of one. */
export async function placeFile(path: string, contents: string | Uint8Array): Promise<void> {
  const draft = join(dirname(path), `.${process.pid}-${Math.random().toString(36).slice(2)}.draft`);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(draft, contents);
  await rename(draft, path);
}
