import type { FabricNeed, PlanAnswer } from '#core/contract.ts';
import { roundTo } from '#core/length.ts';
import { sayLength, saySides } from './say-length.ts';
import type { Row, Telling } from './telling.ts';

/** A whole plan in tables: the quilt, the cloth to buy, what else it takes, and the work in order. */
export function tellPlan(answer: PlanAnswer): Telling {
  const size = tellSize(answer);
  const { thread, bulk, weight, fringe, time } = answer;
  const rest: readonly Row[] = [
    ['Thread, at most about', `${Math.ceil(thread.used)} ${thread.unit}`],
    ['Needle', bulk.needle],
    ['Snips', `${fringe.snips}, every ${sayLength(answer.block.snipPitch, answer.input.unit)}`],
    ['Weight, dry', `${roundTo(weight.dry, 1)} ${weight.unit}`],
    ['Hours, about', `${Math.max(0.5, Math.round(time.total / 30) / 2)}`],
  ];
  return {
    ...size,
    tables: [...size.tables, { name: 'What else it takes', rows: rest }],
    steps: answer.steps.map(({ do: work }) => work),
  };
}

/** Of a plan, what somebody chooses a quilt by: blocks, sizes and the cloth to buy. */
export function tellSize(answer: PlanAnswer): Telling {
  const { grid, block, size, cautions, links } = answer;
  const { unit } = answer.input;
  const quilt: readonly Row[] = [
    ['Blocks', `${grid.blocks}: ${grid.columns} across, ${grid.rows} down`],
    ['Cut each block', `${sayLength(block.cut, unit)} square`],
    ['Seam allowance', sayLength(block.seam, unit)],
    ['Sewn', saySides(size.sewn, unit)],
    ['Washed, about', saySides(size.washed, unit)],
  ];
  return {
    title: `Rag quilt of ${grid.columns} by ${grid.rows} blocks, about ${saySides(size.washed, unit)}`,
    tables: [
      { name: 'The quilt', rows: quilt },
      { name: 'Cloth to buy', rows: answer.fabrics.filter(isNeeded).map(tellCloth) },
    ],
    cautions,
    ...(links.image !== undefined && { image: links.image }),
  };
}

function isNeeded({ pieces }: FabricNeed): boolean {
  return pieces > 0;
}

function tellCloth({ role, fabric, print, buy, purchase }: FabricNeed): Row {
  const cloth = fabric.replaceAll('-', ' ');
  const name = print === undefined ? `${role}, ${cloth}` : `${role} ${print}, ${cloth}`;
  const bought = purchase?.map(({ offer, text }) => `${offer}: ${text}`).join(' and ');
  return [name, bought ?? buy.text];
}
