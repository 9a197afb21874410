/** What must never be loaded by a page: the packages of the service, and its rooms beside the core. */
const FORBIDDEN: readonly RegExp[] = [
  /(^|\/)node_modules\/(?!(lit|lit-html|lit-element|@lit\/reactive-element|valibot|papaparse|lean-qr)\/)/,
  /^api\/(?!core\/)/,
  /^tests\//,
  /^demo-data\/(?!wishes\/)/,
];

/** What of a bundle's inputs has no place in a page. */
export function findForbidden(inputs: readonly string[]): readonly string[] {
  return inputs.filter((input) => FORBIDDEN.some((pattern) => pattern.test(input)));
}

/** Words that only stand in a bundle where dead code was kept, or code meant for making, not for use. */
export function findLeftovers(script: string): readonly string[] {
  const words = ['Lit is in dev mode', 'Multiple versions of Lit loaded', 'sourceMappingURL'];
  return words.filter((word) => script.includes(word));
}
