/** What a plan does to the history of the page. */
export type HistoryWay = 'leave' | 'push' | 'replace';

/**
 * Puts a plan into the page's address. A choice is a step that the back button undoes; what is typed on in one field is
 * one step together; a plan that the address led to leaves it alone.
 *
 * @param query canonical, with its question mark.
 */
export function keepAddress(query: string, way: HistoryWay): void {
  if (way === 'leave' || query === location.search) return;
  putAddress(query, way);
}

/**
 * Puts an address into the bar of the browser. Some browsers take about a hundred in half a minute and throw at the next:
 * then it stays as it is until another comes, and whoever called goes on.
 *
 * @param address relative to the page.
 */
export function putAddress(address: string, way: Exclude<HistoryWay, 'leave'>): void {
  try {
    if (way === 'push') history.pushState(null, '', address);
    else history.replaceState(null, '', address);
  } catch {
    // Nothing but the address is behind.
  }
}
