/**
 * Which needle goes through the thickest place, by its metric size (blade diameter in hundredths
 * of a millimetre) and its older number. Common practice, no source: up to 1.5 mm 80/12, up to
 * 3 mm 90/14, up to 6 mm 100/16, above 110/18.
 *
 * @param thickness at a crossing, mm
 *
 * @example
 * chooseNeedle(3.6) // => '100/16'
 */
export function chooseNeedle(thickness: number): string {
  if (thickness <= 1.5) return '80/12';
  if (thickness <= 3) return '90/14';
  if (thickness <= 6) return '100/16';
  return '110/18';
}
