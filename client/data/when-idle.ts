/** Does something when the page has nothing better to do; soon, where the browser cannot tell when that is. */
export function whenIdle(task: () => void): void {
  (globalThis.requestIdleCallback ?? setTimeout)(() => task());
}
