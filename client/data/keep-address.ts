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
  if (way === 'push') history.pushState(null, '', query);
  else history.replaceState(null, '', query);
}
