import type { Fault } from '#core/outcome.ts';
import type { AnyDraft } from '../data/draft.ts';
import type { Loaded, Source, Trouble } from '../data/load-answer.ts';

/** What every answer has of which an element makes use whatever it asks for. */
export interface ShownAnswer {
  readonly input: object;
  readonly links: { readonly self: string; readonly page?: string | undefined };
}

/** What one element asks for, and how. */
export interface Errand<Kind extends AnyDraft, Answer extends ShownAnswer, Core> {
  /** Tag and event, such as `ragbloom-size`; what is kept on a device is kept under it too. */
  readonly name: string;
  /** First parts of the paths that have a place in its requests. */
  readonly keys: readonly string[];
  /** Puts in what the fields need to show something. */
  readonly complete: (draft: Kind) => Kind;
  /** What must be filled in before it is worth asking. */
  readonly findBlank: (draft: Kind) => readonly Fault[];
  /** Whether a field says what is wrong there, so that it is kept to be mended; else it is left out at the start. */
  readonly isMendable?: (fault: Fault) => boolean;
  readonly load: (
    query: string,
    source: Source<Core>,
    signal: AbortSignal,
  ) => Promise<Loaded<Answer>>;
}

/** What an element knows of its question and of what came of it; views only read it. */
export interface AskStatus<Kind extends AnyDraft, Answer> {
  readonly draft: Kind;
  /** What is wrong with the draft. */
  readonly faults: readonly Fault[];
  /** What the host or the address asked for and could not be had. */
  readonly hostFaults: readonly Fault[];
  /** The last good answer. */
  readonly answer?: Answer | undefined;
  readonly from: 'service' | 'device';
  readonly isBusy: boolean;
  /** Why there is no answer to this draft, where it is not the draft's fault. */
  readonly trouble?: Trouble | undefined;
}
