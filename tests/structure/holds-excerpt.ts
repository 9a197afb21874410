/**
 * Whether an answer holds an excerpt of it: each field of the excerpt with its value, at every depth;
 * of a list some entries in their order.
 */
export function holdsExcerpt(answer: unknown, excerpt: unknown): boolean {
  if (Array.isArray(excerpt)) return Array.isArray(answer) && holdsInOrder(answer, excerpt);
  if (!isRecord(excerpt)) return Object.is(answer, excerpt);
  return (
    isRecord(answer) &&
    Object.entries(excerpt).every(
      ([key, value]) => key in answer && holdsExcerpt(answer[key], value),
    )
  );
}

function holdsInOrder(answer: readonly unknown[], excerpt: readonly unknown[]): boolean {
  let from = 0;
  return excerpt.every((wanted) => {
    const at = answer.findIndex((item, index) => index >= from && holdsExcerpt(item, wanted));
    from = at + 1;
    return at >= 0;
  });
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
