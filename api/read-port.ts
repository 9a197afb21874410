/**
 * Reads a port as the environment gives it.
 *
 * @param text digits, or undefined for the usual port.
 * @returns 0 to 65535, or undefined where the text is no port.
 */
export function readPort(text = '8787'): number | undefined {
  return /^\d{1,5}$/.test(text) && Number(text) <= 65_535 ? Number(text) : undefined;
}
