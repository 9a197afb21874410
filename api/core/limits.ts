/** A closed range. For lengths the figures are millimetres; else the unit is named beside it. */
export interface Range {
  readonly least: number;
  readonly most: number;
}

/**
 * Every length the service takes, in millimetres. `least` is the smallest accepted value.
 * Schema, documents and the checks of the core all read this table.
 */
export const LENGTH_LIMITS = {
  targetSide: { least: 150, most: 5000 },
  bedSide: { least: 300, most: 3000 },
  drop: { least: 0, most: 1000 },
  cut: { least: 50, most: 600 },
  seam: { least: 3, most: 100 },
  snipDepth: { least: 1, most: 100 },
  snipPitch: { least: 1, most: 100 },
  rollWidth: { least: 100, most: 4000 },
  selvage: { least: 0, most: 100 },
  squaring: { least: 0, most: 300 },
  lengthLeft: { least: 1, most: 500_000 },
  rollStep: { least: 5, most: 10_000 },
  leastSold: { least: 5, most: 100_000 },
  pieceSide: { least: 5, most: 4000 },
  stitchLength: { least: 0.5, most: 8 },
  tail: { least: 0, most: 500 },
  link: { least: 0, most: 200 },
  bobbin: { least: 1000, most: 500_000 },
  trueness: { least: 0, most: 25 },
  ease: { least: 0, most: 100 },
  benchmark: { least: 10, most: 5000 },
  quiltSide: { least: 100, most: 6000 },
  /** Shorter side of what is worth keeping. */
  usable: { least: 5, most: 1000 },
} as const satisfies Record<string, Range>;

export type LengthLimit = keyof typeof LENGTH_LIMITS;

/** Every number that is not a length; its unit stands in the name or beside it. */
export const NUMBER_LIMITS = {
  columns: { least: 1, most: 100 },
  rows: { least: 1, most: 100 },
  washes: { least: 1, most: 50 },
  /** Percent of extra pieces. */
  spare: { least: 0, most: 100 },
  /** Percent; negative when the cloth grew. */
  shrink: { least: -10, most: 30 },
  /** Grams per square metre. */
  gsm: { least: 10, most: 2000 },
  /** Millimetres, whatever the unit of the request. */
  thickness: { least: 0.05, most: 20 },
  prints: { least: 1, most: 26 },
  /** Relative weight of a print among the others. */
  share: { least: 0, most: 1000 },
  /** Blocks of one print. */
  count: { least: 0, most: 10_000 },
  /** Lightness of a print, dark to light. */
  value: { least: 0, most: 100 },
  borderPasses: { least: 1, most: 6 },
  /** Makers of the same quilt in a class. */
  pupils: { least: 1, most: 60 },
  /** Blocks along one side of a layout. */
  layoutSide: { least: 1, most: 40 },
  /** Chooses one layout among those alike. */
  seed: { least: 0, most: 4_294_967_295 },
  /** Thread used per length sewn. */
  ratio: { least: 1, most: 10 },
  /** Minutes. */
  pace: { least: 0, most: 120 },
  /** Pieces of one size on a roll, and of all sizes together. */
  pieceCount: { least: 1, most: 5000 },
  /** Flat pieces in one pack. */
  packCount: { least: 1, most: 1000 },
  /** Packs to be had. */
  packs: { least: 1, most: 1000 },
  /** Pieces on hand that are alike. */
  stashCount: { least: 1, most: 1000 },
  /** Width of a quilt for its height. */
  shapeRatio: { least: 0.2, most: 5 },
  kits: { least: 1, most: 10_000 },
  distinctPrints: { least: 1, most: 60 },
  mostOfOne: { least: 1, most: 2500 },
  /** Extra squares of each layer in a kit. */
  kitSpare: { least: 0, most: 500 },
  /** Minor units of a currency. */
  money: { least: 0, most: 1_000_000_000 },
  /** Percent of the price that is not cost. */
  margin: { least: 0, most: 99.9 },
  /** Percent added to the cost. */
  markup: { least: 0, most: 1000 },
  /** Percent of a fibre by mass. */
  fibre: { least: 0.1, most: 100 },
} as const satisfies Record<string, Range>;

export type NumberLimit = keyof typeof NUMBER_LIMITS;

/** Greatest sizes of lists, texts and messages. */
export const SIZE_LIMITS = {
  /** Blocks in a quilt. */
  blocks: 2500,
  /** Cut sizes that may be considered in one request. */
  cuts: 40,
  layers: { least: 2, most: 4 },
  prints: 26,
  /** Prints of a layout at least. */
  layoutPrints: 2,
  /** Letters of one row of a layout, and its rows. */
  layoutRow: 40,
  /** Characters of a name or id. */
  name: 40,
  /** Characters of a length as written. */
  lengthText: 32,
  /** Characters of a wish in words. */
  wishText: 300,
  fabrics: 12,
  pieceKinds: 24,
  offers: 8,
  swatches: 60,
  washCounts: 12,
  stashPieces: 60,
  /** Plans offered for one stash. */
  stashOptions: 12,
  bolts: 60,
  /** Fibres of one cloth. */
  fibres: 8,
  /** Requests in one batch. */
  batch: 50,
  /** Points of cost that a batch may come to, each about a tenth of a millisecond. */
  batchCost: 500,
  /** Bytes of a request body. */
  body: 65_536,
  /** Nesting of a request body. */
  depth: 12,
  /** Characters of a query. */
  query: 8192,
} as const;
