import * as v from 'valibot';
import { alike } from './alike.ts';
import { list, within } from './bounded.ts';

/** Every number has its bounds, since JSON can write one that reads as infinite. */
export const number = within({ least: -1e12, most: 1e12 });
export const text = v.string();
export const maybeText = v.exactOptional(text);
export const pair = alike(number, 'width', 'height');
export const role = v.picklist(['top', 'middle', 'backing']);
export const unit = v.picklist(['in', 'cm']);

/** A list of an answer, none of which is long without end. */
export const many = <Item extends v.GenericSchema>(item: Item) =>
  list(item, { least: 0, most: 10_000 });

export const assumptions = many(
  v.object({ path: text, value: v.unknown(), why: text, source: maybeText }),
);
export const cautions = many(
  v.object({
    code: text,
    severity: v.picklist(['note', 'care', 'danger']),
    text,
    source: maybeText,
  }),
);
export const links = alike(text, 'self', 'page');
