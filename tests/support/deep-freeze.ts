/** Freezes a value to its depth, so that a function that changes its input throws. */
export function deepFreeze<T>(value: T): T {
  if (typeof value === 'object' && value !== null && !Object.isFrozen(value)) {
    Object.freeze(value);
    for (const part of Object.values(value)) deepFreeze(part);
  }
  return value;
}
