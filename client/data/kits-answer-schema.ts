import * as v from 'valibot';
import type { KitsAnswer } from '#core/contract.ts';
import { alike } from './alike.ts';
import {
  assumptions,
  cautions,
  links,
  many,
  maybeText,
  number,
  role,
  text,
  unit,
} from './answer-parts.ts';
import type { Frozen } from './same-shape.ts';

const maybeNumber = v.exactOptional(number);

/** What the page reads of an answer of `/v1/kits`; the rest passes unread. */
export const kitsAnswerSchema = v.object({
  input: v.object({
    unit,
    plan: v.object({ unit }),
    kits: maybeNumber,
    bolts: many(
      v.object({
        id: text,
        role,
        print: text,
        width: number,
        length: number,
        selvage: number,
        squaring: number,
      }),
    ),
    currency: text,
  }),
  assumptions,
  cautions,
  links,
  grid: alike(number, 'columns', 'rows', 'blocks'),
  cut: number,
  squares: number,
  most: number,
  limitedBy: many(v.picklist(['top', 'middle', 'backing', 'mostOfOne', 'distinctPrints'])),
  made: number,
  kits: many(v.object({ count: number, prints: many(v.object({ id: text, blocks: number })) })),
  cutting: many(
    v.object({
      id: text,
      role,
      print: text,
      perStrip: number,
      strips: number,
      cut: number,
      used: number,
      length: number,
    }),
  ),
  left: many(v.object({ id: text, length: number, squares: number })),
  buyMore: v.exactOptional(
    many(
      v.object({
        role,
        print: maybeText,
        squares: number,
        buy: v.object({ amount: number, unit: v.picklist(['yd', 'm']) }),
      }),
    ),
  ),
  money: v.exactOptional(
    v.object({
      currency: text,
      decimals: number,
      materials: number,
      labour: number,
      packaging: number,
      overhead: number,
      cost: number,
      price: maybeNumber,
      marginPercent: maybeNumber,
    }),
  ),
  weight: v.object({ dry: number, unit: v.picklist(['lb', 'kg']) }),
  label: alike(text, 'content', 'care'),
});

/** Kits as the page knows them: no view can read what was not checked. */
export type ShownKits = Frozen<v.InferOutput<typeof kitsAnswerSchema>>;

/** Does not compile once the contract no longer gives what the page reads. */
export const kitsAnswerIsBound: KitsAnswer extends ShownKits ? true : false = true;
