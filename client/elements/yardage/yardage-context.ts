import type { ShownYardage } from '../../data/is-yardage-answer.ts';
import type { YardageDraft } from '../../data/piece-rows.ts';
import type { LightContext } from '../../host/light-context.ts';
import type { YardageWords } from '../../text/yardage/source.ts';

/** All that the views are given. */
export type YardageContext = LightContext<
  YardageDraft,
  ShownYardage,
  { readonly yardage: YardageWords }
>;
