import type { Draft } from '../../data/draft.ts';
import type { ShownSize } from '../../data/is-size-answer.ts';
import type { LightContext } from '../../host/light-context.ts';
import type { SizeWords } from '../../text/size/source.ts';

/** All that the views are given. */
export type SizeContext = LightContext<Draft, ShownSize, { readonly size: SizeWords }>;
