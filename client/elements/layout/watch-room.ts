/**
 * Tells how wide an element is, and again whenever that is another; made for `ref` of lit, which hands over the element
 * that there is now.
 *
 * @param tell receives CSS pixels.
 */
export function watchRoom(tell: (width: number) => void): (element: Element | undefined) => void {
  const observer = new ResizeObserver((entries) => {
    const width = entries.at(-1)?.contentRect.width;
    if (width !== undefined) tell(width);
  });
  return (element) => {
    observer.disconnect();
    if (element !== undefined) observer.observe(element);
  };
}
