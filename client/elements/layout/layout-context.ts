import type { Meeting } from '#core/layout/list-touching.ts';
import type { Fault } from '#core/outcome.ts';
import type { ShownLayout } from '../../data/is-layout-answer.ts';
import type { LayoutDraft } from '../../data/layout-draft.ts';
import type { AskStatus } from '../../host/errand.ts';
import type { LayoutWords } from '../../text/layout/source.ts';
import type { LightWords } from '../../text/light/source.ts';
import type { Memo } from './if-changed.ts';
import type { BoardState, TapMode } from './layout-state.ts';

/** What the event `ragbloom-layout` carries. */
export interface LayoutDetail {
  /** The answer of the API, whole. */
  readonly answer: ShownLayout;
  /** `device` where the service gave no answer. */
  readonly from: 'service' | 'device';
  /** The grid as it was laid by hand since, where it was. */
  readonly cells?: readonly string[];
}

/** What a person can do to a layout. */
export interface LayoutActions {
  /** Types into one place of the question. */
  readonly type: (path: string, draft: LayoutDraft) => void;
  /** Types a name or chooses a colour, by which nothing moves. */
  readonly name: (path: string, draft: LayoutDraft) => void;
  /** Asks for something else. */
  readonly choose: (draft: LayoutDraft) => void;
  readonly another: () => void;
  readonly tap: (place: number) => void;
  readonly pin: (place: number) => void;
  /** Puts the keyboard on another block. */
  readonly go: (place: number) => void;
  readonly letGo: () => void;
  /** Is told in which element the grid lies. */
  readonly fit: (element: Element | undefined) => void;
  readonly turnTo: (mode: TapMode) => void;
  readonly showLarge: (isLarge: boolean) => void;
  readonly undo: () => void;
  readonly redo: () => void;
  readonly retry: () => void;
  readonly print: () => void;
}

/** A grid that is on the table: as it was worked out, or as it was laid by hand. */
export interface ShownGrid {
  /** Another one where names or colours are others. */
  readonly key: string;
  readonly cells: readonly string[];
  readonly meetings: readonly Meeting[];
  readonly pins: readonly string[];
  /** The names of the prints, A the first. */
  readonly names: readonly string[];
  readonly colorOf: (print: number) => string | undefined;
}

/** All that the views are given. */
export interface LayoutContext {
  readonly status: AskStatus<LayoutDraft, ShownLayout>;
  readonly words: { readonly light: LightWords; readonly layout: LayoutWords };
  readonly board: BoardState;
  readonly grid: ShownGrid | undefined;
  /** Where the figures of this very grid are to be had. */
  readonly address: string;
  /** Width that the grid may take before it slides, CSS pixels. */
  readonly room: number;
  /** What the rows of the grid were last made of. */
  readonly memo: Memo;
  /** The floor sheet is wanted. */
  readonly isPrinting: boolean;
  readonly isLocked: (path: string) => boolean;
  readonly tell: (fault: Fault) => string;
  readonly act: LayoutActions;
}

/** The sentence for what is wrong at one place of the question. */
export function tellAt({ status, tell }: LayoutContext, place: string): string | undefined {
  const fault = status.faults.find(({ path }) => path.join('.') === place);
  return fault && tell(fault);
}
