/** Written as a plain decimal, so that it may stand for a number. */
const DECIMAL = /^-?\d{1,15}(\.\d{1,12})?$/;
/** Fields that are text even when they look like a number. */
const NAMES = /\.(id|print|fibre)$/;
/** Deeper or longer than any plan: kept from building what nobody will read. */
const DEEPEST = 6;
const MOST_ITEMS = 64;

interface Branch {
  [key: string]: unknown;
}

/**
 * Unfolds a flat query of dotted paths into the object it stands for; plain decimals become numbers,
 * `true` and `false` truth values, all else stays as written. Whether it is a plan is for the schema to say.
 *
 * @param query with or without the question mark.
 *
 * @example
 * readQuery('?target.width=40&target.height=8%201%2F2') // => { target: { width: 40, height: '8 1/2' } }
 * readQuery('layers.0.role=top&layers.1.role=backing') // => { layers: [{ role: 'top' }, { role: 'backing' }] }
 */
export function readQuery(query: string): unknown {
  const root: Branch = Object.create(null);
  for (const [path, value] of new URLSearchParams(query)) {
    const parts = path.split('.');
    if (parts.length <= DEEPEST) plant(root, parts, NAMES.test(path) ? value : readLeaf(value));
  }
  return settle(root);
}

function readLeaf(value: string): string | number | boolean {
  if (DECIMAL.test(value)) return Number(value);
  return value === 'true' ? true : value === 'false' ? false : value;
}

function plant(branch: Branch, [key = '', ...rest]: readonly string[], value: unknown): void {
  if (rest.length === 0) {
    branch[key] = value;
    return;
  }
  const inner = branch[key];
  const next: Branch =
    typeof inner === 'object' && inner !== null ? (inner as Branch) : Object.create(null);
  branch[key] = next;
  plant(next, rest, value);
}

/** Turns branches whose keys count up from 0 into lists. */
function settle(value: unknown): unknown {
  if (typeof value !== 'object' || value === null) return value;
  const entries = Object.entries(value).map(([key, inner]) => [key, settle(inner)] as const);
  const isList =
    entries.length > 0 &&
    entries.length <= MOST_ITEMS &&
    entries.every(([key], index) => key === String(index));
  return isList ? entries.map(([, inner]) => inner) : Object.fromEntries(entries);
}
