/**
 * Gives a property that a page set before the element was defined to the element; Lit does so for what it declares.
 *
 * @example
 * const element = { early: 1 };
 * keepEarly(element, 'early');
 * element.early // => 1
 */
export function keepEarly<Name extends string>(
  element: Partial<Record<Name, unknown>>,
  name: Name,
): void {
  if (!Object.hasOwn(element, name)) return;
  const early = element[name];
  Reflect.deleteProperty(element, name);
  element[name] = early;
}
