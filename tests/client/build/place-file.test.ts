import { mkdtemp, readdir, readFile, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { placeFile } from '../../../client/build/place-file.ts';

test('placeFile(path, contents) makes the folder, writes the file and leaves nothing else', async () => {
  const home = await mkdtemp(join(tmpdir(), 'ragbloom-'));
  try {
    await placeFile(join(home, 'a', 'b.txt'), 'old');
    await placeFile(join(home, 'a', 'b.txt'), 'new');
    expect(await readFile(join(home, 'a', 'b.txt'), 'utf8')).toBe('new');
    expect(await readdir(join(home, 'a'))).toEqual(['b.txt']);
  } finally {
    await rm(home, { recursive: true, force: true });
  }
});
