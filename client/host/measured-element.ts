import type { Unit } from '#core/contract.ts';
import type { AnyDraft } from '../data/draft.ts';
import type { Called } from '../fields/switch-unit.ts';
import { AskingElement } from './asking-element.ts';
import type { ShownAnswer } from './errand.ts';

/** An element whose lengths can be said in inches and in centimetres; what says them anew is fetched when it is wanted. */
export abstract class MeasuredElement<
  Kind extends AnyDraft,
  Answer extends ShownAnswer,
  Words,
  Core = unknown,
> extends AskingElement<Kind, Answer, Words, Core> {
  #called: Called = {};
  /** The unit that was chosen and is not yet measured in. */
  #wanted: Unit | undefined;

  /** Asks in another unit; where its lengths cannot be had that is told, and asking again tries again. */
  protected async measureIn(unit: Unit): Promise<void> {
    this.#wanted = unit;
    const saying = this.sayIn(unit);
    this.set({ isBusy: true });
    const draft = await saying.catch(() => undefined);
    if (draft === undefined) return this.set({ trouble: 'silent', isBusy: false });
    this.#wanted = undefined;
    this.decide(draft);
  }

  protected override ask(): void {
    if (this.#wanted === undefined) super.ask();
    else void this.measureIn(this.#wanted);
  }

  /** The draft with its lengths in another unit; they are known as numbers while the answer is to this draft. */
  protected async sayIn(unit: Unit): Promise<Kind> {
    const { draft: asked, answer, faults, isBusy } = this.status;
    const { switchUnit } = await import('../fields/switch-unit.ts');
    const { draft } = this.status;
    if (this.isLocked('unit')) return draft;
    const isKnown = draft === asked && !isBusy && faults.length === 0;
    const input = isKnown ? answer?.input : undefined;
    const next = switchUnit(draft, unit, { called: this.#called, input });
    this.#called = next.called;
    this.restate(next.draft);
    return next.draft;
  }
}
