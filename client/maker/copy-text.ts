/**
 * Copies what stands in a text area. Where the browser does not let a page write to the clipboard, it is selected, so
 * that one press of keys copies it.
 *
 * @returns what came of it.
 */
export async function copyText(area: HTMLTextAreaElement): Promise<'copied' | 'selected'> {
  try {
    await navigator.clipboard.writeText(area.value);
    return 'copied';
  } catch {
    area.focus();
    area.select();
    return 'selected';
  }
}
