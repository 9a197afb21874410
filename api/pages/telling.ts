import type { Caution } from '#core/contract.ts';

/** One line of a table: what it is, and how much. */
export type Row = readonly [name: string, value: string];

/** An answer as a page without scripts tells it: plain text, escaped by whoever writes it into HTML. */
export interface Telling {
  /** What it is, in one line. */
  readonly title: string;
  readonly tables: readonly { readonly name: string; readonly rows: readonly Row[] }[];
  /** What to do, in order. */
  readonly steps?: readonly string[];
  readonly cautions: readonly Caution[];
  /** Address of its drawing, from the root of the host. */
  readonly image?: string;
}
