/**
 * Tells when the page is printed and when that is over: not every browser tells it in the same way.
 *
 * @param tell is called in time to change what is printed.
 */
export function watchPrint(tell: (isPrinting: boolean) => void): {
  readonly start: () => void;
  readonly stop: () => void;
} {
  const media = matchMedia('print');
  const before = () => tell(true);
  const after = () => tell(false);
  const change = () => tell(media.matches);
  return {
    start: () => {
      media.addEventListener('change', change);
      globalThis.addEventListener('beforeprint', before);
      globalThis.addEventListener('afterprint', after);
    },
    stop: () => {
      media.removeEventListener('change', change);
      globalThis.removeEventListener('beforeprint', before);
      globalThis.removeEventListener('afterprint', after);
    },
  };
}
