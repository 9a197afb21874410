import { afterEach, expect, test, vi } from 'vitest';
import { copyText } from '../../../client/maker/copy-text.ts';

const area = document.createElement('textarea');
area.value = 'a snippet';
document.body.append(area);
afterEach(() => vi.restoreAllMocks());

test('copyText writes to the clipboard where the browser lets it', async () => {
  const write = vi.spyOn(navigator.clipboard, 'writeText').mockResolvedValue();
  expect(await copyText(area)).toBe('copied');
  expect(write).toHaveBeenCalledWith('a snippet');
});

test('copyText selects all of it where the browser does not', async () => {
  vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('denied'));
  expect(await copyText(area)).toBe('selected');
  expect(document.activeElement).toBe(area);
  expect(area.value.slice(area.selectionStart, area.selectionEnd)).toBe('a snippet');
});
