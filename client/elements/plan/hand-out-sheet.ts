import { html, type TemplateResult } from 'lit';
import { ref } from 'lit/directives/ref.js';
import type { ShownClass, ShownWork } from '../../data/holds-work.ts';
import { printAlone } from '../../look/print-alone.ts';
import { wearStyles } from '../../look/wear-styles.ts';
import type { WorkWords } from '../../text/work/source.ts';
import { fitLeaves } from './fit-leaves.ts';
import type { ClassWish } from './hand-out.ts';
import { bringLeaf } from './hand-out-bring.ts';
import { stepsLeaf } from './hand-out-steps.ts';
import { SHEET_STYLES } from './hand-out-styles.ts';
import type { MakingContext } from './plan-context.ts';

/** What is printed. */
export interface HandOut {
  readonly words: WorkWords;
  readonly wish: ClassWish;
  readonly plan: ShownWork;
  readonly all: ShownClass;
  readonly onDone: () => void;
}

/** Sheets that were printed already: a template may be drawn again before the printer is done. */
const printed = new WeakSet<HandOut>();

/** The two pages of the hand-out. They are never shown: as soon as they stand and fit, they are printed. */
export function handOutSheet(context: MakingContext, handOut: HandOut): TemplateResult {
  const print = (element?: Element) => {
    if (element === undefined || printed.has(handOut)) return;
    printed.add(handOut);
    // A template is told of its element just before that stands on the page.
    queueMicrotask(() => {
      const root = element.getRootNode();
      if (!(root instanceof ShadowRoot)) return;
      wearStyles(root, SHEET_STYLES);
      fitLeaves(element);
      printAlone(root.host, handOut.onDone);
    });
  };
  return html`<section class="hand-out" aria-hidden="true" ${ref(print)}>
    ${bringLeaf(context, handOut)}${stepsLeaf(context, handOut)}
  </section>`;
}
