import * as v from 'valibot';
import type { StashAnswer } from '#core/contract.ts';
import { alike } from './alike.ts';
import {
  assumptions,
  cautions,
  links,
  many,
  number,
  pair,
  role,
  text,
  unit,
} from './answer-parts.ts';
import type { Frozen } from './same-shape.ts';

const limits = many(
  v.picklist(['top', 'middle', 'backing', 'touch', 'target', 'shape', 'greatest']),
);

/** What the page reads of an answer of `/v1/stash`; the rest passes unread. */
export const stashAnswerSchema = v.object({
  input: v.object({
    unit,
    pieces: many(
      v.object({
        id: text,
        role,
        print: text,
        width: number,
        length: number,
        count: number,
        selvage: number,
      }),
    ),
    block: alike(number, 'seam'),
    grain: text,
    squaring: number,
    usable: number,
  }),
  assumptions,
  cautions,
  links,
  limitedBy: limits,
  options: many(
    v.object({
      cut: number,
      columns: number,
      rows: number,
      blocks: number,
      sewn: pair,
      washed: pair,
      fit: v.exactOptional(pair),
      uses: many(v.object({ id: text, role, blocks: number })),
      left: many(
        v.object({ id: text, rectangles: many(alike(number, 'width', 'length', 'count')) }),
      ),
      buy: many(v.object({ role, blocks: number })),
      limitedBy: limits,
      layout: v.object({
        prints: many(text),
        cells: many(text),
        touching: alike(number, 'sides', 'corners'),
      }),
    }),
  ),
});

/** A stash as the page knows it: no view can read what was not checked. */
export type ShownStash = Frozen<v.InferOutput<typeof stashAnswerSchema>>;

export type ShownStashOption = ShownStash['options'][number];

/** Does not compile once the contract no longer gives what the page reads. */
export const stashAnswerIsBound: StashAnswer extends ShownStash ? true : false = true;
