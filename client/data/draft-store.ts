/** Before the name of a draft among what is kept on this device. */
const PREFIX = 'ragbloom-draft ';

/**
 * What was typed on this device and not yet in any address; empty where storage throws or knows nothing of it.
 *
 * @param name whose draft.
 */
export function readDraft(name: string): string {
  try {
    return localStorage.getItem(PREFIX + name) ?? '';
  } catch {
    return '';
  }
}

/** Keeps what was typed on this device; an empty text keeps nothing. */
export function keepDraft(name: string, text: string): void {
  try {
    if (text === '') localStorage.removeItem(PREFIX + name);
    else localStorage.setItem(PREFIX + name, text);
  } catch {
    // A page in a sandbox has no storage, and a full one refuses: the draft lasts as long as the page.
  }
}
