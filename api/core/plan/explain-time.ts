import type { Derivation } from '../contract.ts';
import { roundTo } from '../length.ts';
import { SOURCES } from '../sources.ts';
import { derive, type Numbers } from './derive.ts';
import type { Explained } from './explained.ts';

/**
 * Derivations of the minutes of work, stage by stage: counts and metres of seam times the paces.
 */
export function explainTime(explained: Explained): readonly Derivation[] {
  const { plan, figures } = explained;
  const { total: _total, ...stages } = plan.time;
  const exact = Object.entries(stages).map(([name, minutes]) => [name, roundTo(minutes, 9)]);
  return [
    ...explainStages(explained),
    derive('time.total', SOURCES.practice, [
      Object.keys(stages).join(' + '),
      Object.fromEntries(exact),
      figures.time.total,
    ]),
  ];
}

function explainStages({ input, plan, figures }: Explained): readonly Derivation[] {
  const { pace, stitch } = input;
  const { columns, rows } = plan.grid;
  const { blocks } = plan;
  const metres = (length: number) => roundTo(length / 1000, 12);
  const say = (name: keyof typeof figures.time, formula: string, numbers: Numbers) =>
    derive(`time.${name}`, SOURCES.practice, [formula, numbers, figures.time[name]]);
  const sew = (name: 'joins' | 'rows' | 'border', seams: string, counts: Numbers) =>
    say(name, `metres * sewMetre + ${seams} * handleSeam`, {
      metres: metres(plan.thread.seams[name]),
      sewMetre: pace.sewMetre,
      ...counts,
      handleSeam: pace.handleSeam,
    });
  const pieces = plan.cloth.reduce((sum, need) => sum + need.pieces + need.spare, 0);
  return [
    say('cut', 'pieces * cutPiece', { pieces, cutPiece: pace.cutPiece }),
    say('stack', 'blocks * stackBlock', { blocks, stackBlock: pace.stackBlock }),
    say('quilt', 'metres * sewMetre + 2 * blocks * handleSeam', {
      metres: metres(plan.thread.seams.quilting),
      sewMetre: pace.sewMetre,
      blocks,
      handleSeam: pace.handleSeam,
    }),
    say('snip', 'snips * snip', { snips: figures.fringe.snips, snip: pace.snip }),
    say('layout', 'laid * layBlock', { laid: blocks > 1 ? blocks : 0, layBlock: pace.layBlock }),
    sew('joins', 'rows * (columns - 1)', { rows, columns }),
    sew('rows', '(rows - 1) * columns', { rows, columns }),
    sew('border', '4 * passes', { passes: stitch.borderPasses }),
    say('trim', 'blocks * trimBlock', { blocks, trimBlock: pace.trimBlock }),
  ];
}
