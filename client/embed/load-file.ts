/**
 * Loads a script as a module and runs it, once in a page however often it is asked for.
 *
 * @param integrity what its bytes must come to (W3C Subresource Integrity); one that comes to something else never runs,
 *   and the promise rejects. Left out where it does not matter.
 */
export function loadFile(address: string, integrity?: string): Promise<unknown> {
  if (integrity !== undefined) {
    const link = document.createElement('link');
    Object.assign(link, { rel: 'modulepreload', crossOrigin: '', integrity, href: address });
    document.head.append(link);
  }
  return import(address);
}
