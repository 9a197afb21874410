/** Classes of ever smaller type. */
const TIGHT = [1, 2, 3, 4, 5, 6].map((step) => `tight-${step}`);

/** Sets each page of a hand-out in the largest type in which all of it fits. */
export function fitLeaves(handOut: Element): void {
  for (const leaf of handOut.querySelectorAll('.leaf')) {
    for (const [at, tight] of TIGHT.entries()) {
      if (leaf.scrollHeight <= leaf.clientHeight) break;
      leaf.classList.remove(TIGHT[at - 1] ?? tight);
      leaf.classList.add(tight);
    }
  }
}
