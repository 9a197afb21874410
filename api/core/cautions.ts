import type { Caution, CautionCode, LayerInput, Unit } from './contract.ts';
import { SOURCES } from './sources.ts';
import { writeGap, writeLength } from './write-length.ts';

/** What decides which cautions a plan shows; lengths in millimetres. */
export interface CautionFacts {
  readonly unit: Unit;
  /** The quilt as it will lie: washed. */
  readonly size: { readonly width: number; readonly height: number };
  /** The size asked for. */
  readonly wish: { readonly width: number; readonly height: number };
  /** The mattress it was asked for, where it was one. */
  readonly mattress?: { readonly width: number; readonly height: number };
  /** Whether it is meant for a child under twelve months. */
  readonly infant?: boolean;
  readonly clearance: number;
  /** Where row seams cross joins, mm; absent in a quilt without crossings. */
  readonly crossingThickness?: number;
  readonly snips: number;
  readonly needle: string;
  readonly machine: 'household' | 'large' | 'laundry';
  readonly layers: readonly Pick<LayerInput, 'fabric' | 'prewashed' | 'prints' | 'role'>[];
  /** Least and most of the washed size; absent when every layer was measured. */
  readonly doubt?: {
    readonly width: number;
    readonly height: number;
    /** Quilted test blocks that would halve it. */
    readonly blocks?: number;
  };
}

/** A cot quilt is at most this large: 36 by 54 in, common practice; a full-size crib is 28 by 52 3/8 in. */
const COT_QUILT = { short: 36.05 * 25.4, long: 54.05 * 25.4 };

const RANK = { danger: 0, care: 1, note: 2 } as const;

/**
 * The cautions of a plan, the gravest first.
 * Rules differ from country to country; these say what is usual and point to who decides.
 */
export function listCautions(facts: CautionFacts): readonly Caution[] {
  const cautions = [
    infantSleep(facts),
    snipNearSeam(facts),
    rotaryCutter(),
    ...snipping(facts),
    ...needle(facts),
    dryerLint(),
    ...washerLoad(facts),
    ...unmeasured(facts),
    ...dyeBleed(facts),
    caution(
      'flammability',
      'note',
      'Napped and fringed cloth catches fire more readily than smooth cloth. Keep it from open flames and heaters, and ask your local authority before you sell.',
      SOURCES.flammability,
    ),
    caution(
      'selling-children',
      'note',
      'Goods sold for children need testing, a certificate and a tracking label in many countries. Ask the authority where you sell.',
      SOURCES.children,
    ),
    caution(
      'label-rules',
      'note',
      'Fibre content and care labels are ruled differently from country to country. Check the rules where you sell.',
      SOURCES.labels,
    ),
  ];
  return cautions.toSorted((one, other) => RANK[one.severity] - RANK[other.severity]);
}

function caution(
  code: CautionCode,
  severity: Caution['severity'],
  text: string,
  source: string,
): Caution {
  return { code, severity, text, source };
}

/** What every cutting list says. */
export function rotaryCutter(): Caution {
  return caution(
    'rotary-cutter',
    'care',
    'A rotary cutter is a blade: cut away from yourself, keep your fingers off the edge of the ruler, and close the guard each time you put it down.',
    SOURCES.practice,
  );
}

/** What a wash says where some rate came from a table. */
export function unmeasuredShrink(): Caution {
  return caution(
    'unmeasured-shrink',
    'care',
    'Some of this rests on a table of fabrics, not on your cloth. Wash a swatch of your own to know better.',
    SOURCES.practice,
  );
}

/** What every wash says. */
export function dryerLint(): Caution {
  return caution(
    'dryer-lint',
    'care',
    'Fresh fringe sheds a great deal of lint. Clean the dryer screen after every load and the washer filter too; never run a dryer on a clogged screen. About 2,900 home dryer fires were reported each year in the US from 2008 to 2010, failure to clean being the first cause.',
    SOURCES.dryer,
  );
}

/**
 * Whether a quilt is of cot size or smaller.
 *
 * @param size mm
 *
 * @example
 * isCotSize({ width: 711.2, height: 1330.3 }) // => true
 * isCotSize({ width: 1270, height: 1524 }) // => false
 */
export function isCotSize(size: { readonly width: number; readonly height: number }): boolean {
  const short = Math.min(size.width, size.height);
  const long = Math.max(size.width, size.height);
  return short <= COT_QUILT.short && long <= COT_QUILT.long;
}

/** Danger where a quilt is for an infant, is wished for or comes out of cot size, or its mattress is a cot's; else a note. */
export function infantSleep(
  facts: Pick<CautionFacts, 'size' | 'wish' | 'mattress' | 'infant'>,
): Caution {
  const sizes = [facts.size, facts.wish, ...(facts.mattress ? [facts.mattress] : [])];
  return facts.infant === true || sizes.some(isCotSize)
    ? caution(
        'infant-sleep',
        'danger',
        'Not for a sleeping baby. Under twelve months no quilt, blanket or other loose bedding belongs in the sleeping space: a firm flat mattress, a fitted sheet, on the back. Keep this quilt for play on the floor while you watch, and for later years. Loose threads and fringe are not for a baby’s mouth.',
        SOURCES.sleep,
      )
    : caution(
        'infant-sleep',
        'note',
        'No quilt belongs in the sleeping space of a baby under twelve months.',
        SOURCES.sleep,
      );
}

function snipNearSeam({ clearance, unit }: CautionFacts): Caution {
  const left = writeGap(clearance, unit);
  if (clearance < 3) {
    return caution(
      'snip-near-seam',
      'danger',
      `This leaves ${left} between snip and stitching: a slip cuts the seam and the quilt comes apart in the wash. Snip less deep or sew a wider allowance.`,
      SOURCES.practice,
    );
  }
  if (clearance < 6) {
    return caution(
      'snip-near-seam',
      'care',
      `There is ${left} between snip and stitching. Go slowly, and stitch again over any seam that you cut into.`,
      SOURCES.practice,
    );
  }
  return caution(
    'snip-near-seam',
    'note',
    `There is ${left} between snip and stitching. Stop each snip well before the seam.`,
    SOURCES.practice,
  );
}

function snipping({ snips }: CautionFacts): readonly Caution[] {
  if (snips === 0) return [];
  return [
    caution(
      'repetitive-snipping',
      'care',
      `There are ${snips} snips in this quilt. Use sharp, spring-loaded snips, change hands, and rest before it hurts.`,
      SOURCES.tools,
    ),
  ];
}

function needle({ crossingThickness, needle: size }: CautionFacts): readonly Caution[] {
  if (crossingThickness === undefined) return [];
  const severity = crossingThickness > 6 ? 'care' : 'note';
  return [
    caution(
      'needle-at-crossings',
      severity,
      `Where four corners meet, about ${Math.round(crossingThickness)} mm of cloth lies under the foot. Use a ${size} needle, sew slowly there or turn the wheel by hand, and wear glasses: needles break.`,
      SOURCES.needles,
    ),
  ];
}

function washerLoad({ machine }: CautionFacts): readonly Caution[] {
  if (machine === 'household') return [];
  const where = machine === 'large' ? 'a large machine' : 'a laundry with commercial machines';
  return [
    caution(
      'washer-load',
      'care',
      `This quilt is heavy for a household washer, wet above all. Take it to ${where}, and compare its dry weight with the load the machine is rated for.`,
      SOURCES.drum,
    ),
  ];
}

function unmeasured({ doubt, unit }: CautionFacts): readonly Caution[] {
  if (doubt === undefined) return [];
  const wide = writeLength(doubt.width, unit);
  const high = writeLength(doubt.height, unit);
  const better =
    doubt.blocks === undefined
      ? 'Quilt and wash a test block of your own cloth to know better.'
      : `${doubt.blocks} quilted test blocks, washed and measured, would halve that; even one tells more than a table.`;
  return [
    caution(
      'unmeasured-shrink',
      'care',
      `Some of the shrink rests on a table of fabrics, not on your cloth, so the washed quilt may come out anywhere within ${wide} across and ${high} down. ${better}`,
      SOURCES.practice,
    ),
  ];
}

function dyeBleed({ layers }: CautionFacts): readonly Caution[] {
  const raw = layers.some((layer) => layer.role !== 'middle' && !layer.prewashed);
  return raw
    ? [
        caution(
          'dye-bleed',
          'note',
          'Dark and red cloth may bleed in its first wash. Wet a scrap, press it on white cloth, and prewash what stains.',
          SOURCES.practice,
        ),
      ]
    : [];
}
