import type { Role, Unit } from '../../contract.ts';
import { toMillimetres } from '../../length.ts';
import type { Middle } from '../../sewing/find-middle.ts';
import type { StepScene } from './step-scene.ts';

/** As much of a plan's answer as the drawings of its steps need. */
export interface DrawnWork {
  readonly input: {
    readonly unit: Unit;
    readonly stitch: { readonly chained: boolean; readonly borderPasses: number };
    readonly layers: readonly {
      readonly role: Role;
      readonly prints: readonly { readonly color?: string }[];
    }[];
  };
  readonly grid: { readonly columns: number; readonly rows: number };
  readonly block: {
    readonly cut: number;
    readonly seam: number;
    readonly snipDepth: number;
    readonly snipPitch: number;
  };
  readonly fabrics: readonly {
    readonly role: Role;
    readonly usableWidth: number;
    readonly perStrip: number;
  }[];
  readonly layout: { readonly cells: readonly string[] };
  readonly work: { readonly middle: Middle };
}

/** What the drawings show, from the answer of a plan in whatever unit. */
export function readScene(answer: DrawnWork): StepScene {
  const { input, grid, block, fabrics, layout, work } = answer;
  const mm = (value: number) => toMillimetres(value, input.unit);
  const backing = fabrics.find(({ role }) => role === 'backing');
  const prints = input.layers.find(({ role }) => role === 'top')?.prints ?? [];
  return {
    unit: input.unit,
    cut: mm(block.cut),
    seam: mm(block.seam),
    snipDepth: mm(block.snipDepth),
    snipPitch: mm(block.snipPitch),
    columns: grid.columns,
    rows: grid.rows,
    cells: layout.cells,
    middle: work.middle,
    layers: input.layers.length,
    chained: input.stitch.chained,
    borderPasses: input.stitch.borderPasses,
    usableWidth: mm(backing?.usableWidth ?? 0),
    perStrip: backing?.perStrip ?? 0,
    colorOf: (print) => prints[print]?.color,
  };
}
