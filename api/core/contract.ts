/**
 * What goes over the wire: the one definition of every request and answer, types only.
 * Lengths are in the request's unit unless a field says otherwise; percentages are percent numbers.
 */

export type Unit = 'in' | 'cm';
/** A length as people write it: a number in the request's unit, or text such as `8 1/2`, `21,5`, `0.75 yd`. */
export type Length = number | string;
export type Role = 'top' | 'middle' | 'backing';
export type Grain = 'alternating' | 'aligned';
export type Region = 'us' | 'uk' | 'eu';
export type SizeName =
  | 'cot'
  | 'lap'
  | 'throw'
  | 'twin'
  | 'single'
  | 'full'
  | 'double'
  | 'queen'
  | 'king'
  | 'california-king'
  | 'super-king';
export type FabricName =
  | 'quilting-cotton'
  | 'flannel'
  | 'denim'
  | 'plush'
  | 'fleece'
  | 'linen-cotton'
  | 'cotton-batting'
  | 'blend-batting'
  | 'polyester-batting'
  | 'bamboo-batting';

// ---------------------------------------------------------------- shared parts

export interface Pair {
  readonly width: number;
  readonly height: number;
}

export interface Assumption {
  /** Dotted path of the field that was left out. */
  readonly path: string;
  readonly value: string | number | boolean;
  readonly why: string;
  readonly source?: string;
}

export type CautionCode =
  | 'rotary-cutter'
  | 'repetitive-snipping'
  | 'needle-at-crossings'
  | 'snip-near-seam'
  | 'infant-sleep'
  | 'dryer-lint'
  | 'washer-load'
  | 'flammability'
  | 'selling-children'
  | 'label-rules'
  | 'dye-bleed'
  | 'unmeasured-shrink';

export interface Caution {
  readonly code: CautionCode;
  readonly severity: 'note' | 'care' | 'danger';
  readonly text: string;
  readonly source?: string;
}

/** One figure's derivation: `formula` in plain arithmetic over `numbers` gives `value`. */
export interface Derivation {
  readonly path: string;
  readonly formula: string;
  readonly numbers: Readonly<Record<string, number>>;
  readonly value: number;
  readonly source: string;
}

export interface Links {
  /**
   * The canonical address of this answer, from the root of the host; where its query is longer than
   * the service reads, the endpoint that takes the input as a body.
   */
  readonly self: string;
  readonly image?: string;
}

/** Links of an answer that a page shows too. */
export interface PageLinks extends Links {
  /** The page that shows the same. */
  readonly page: string;
}

/** What the core adds to every answer; `links` are added where addresses are known. */
export interface AnswerParts<Input> {
  readonly engine: string;
  readonly input: Input;
  readonly assumptions: readonly Assumption[];
  readonly cautions: readonly Caution[];
  readonly links: Links;
}

// ---------------------------------------------------------------- /v1/plan

export interface Print {
  readonly id: string;
  /** Weight among the prints, default 1. */
  readonly share?: number;
  /** Blocks of this print; where one print has it, all must. */
  readonly count?: number;
  readonly directional?: boolean;
  /** Width on its own roll, where it differs from the layer's. */
  readonly width?: Length;
  /** Lightness, 0 dark to 100 light. */
  readonly value?: number;
  /** `#rrggbb`, for drawings. */
  readonly color?: string;
}

export interface ShrinkRates {
  /** Percent along the roll, positive when it gets smaller. */
  readonly length: number;
  /** Percent across the roll. */
  readonly width: number;
}

export interface Layer {
  readonly role: Role;
  readonly fabric?: FabricName;
  readonly prints?: number | readonly Print[];
  readonly width?: Length;
  readonly selvage?: Length;
  readonly shrink?: ShrinkRates;
  readonly shrinkWashes?: number;
  readonly prewashed?: boolean;
  /** g/m², whatever the unit. */
  readonly gsm?: number;
  /** Millimetres, whatever the unit. */
  readonly thickness?: number;
}

/** A layer of a plan: what its cloth is sold as, too. */
export interface PlanLayer extends Layer {
  /**
   * What each print of the layer is sold as; off the roll by the usual step where left out. Each print
   * is bought by itself: a pack is of one print.
   */
  readonly offers?: readonly ClothOffer[];
}

export type Target =
  | { readonly width: Length; readonly height: Length; readonly at?: 'washed' | 'sewn' }
  | { readonly size: SizeName; readonly region?: Region }
  | {
      readonly bed: {
        readonly width: Length;
        readonly length: Length;
        readonly drop?: Length;
        readonly footDrop?: Length;
      };
    }
  | { readonly columns: number; readonly rows: number };

export interface BlockWish {
  readonly cut?: Length;
  readonly seam?: Length;
  readonly snipDepth?: Length;
  readonly snipPitch?: Length;
}

export interface StitchWish {
  readonly length?: Length;
  readonly tail?: Length;
  readonly link?: Length;
  readonly chained?: boolean;
  readonly borderPasses?: number;
  /** Thread wound on one bobbin. */
  readonly bobbin?: Length;
  /** Thread per length sewn, measured by unpicking one's own seam; replaces the model. */
  readonly ratio?: number;
}

/** Minutes of work. */
export interface Pace {
  readonly cutPiece: number;
  readonly stackBlock: number;
  readonly sewMetre: number;
  readonly handleSeam: number;
  readonly snip: number;
  readonly layBlock: number;
  readonly trimBlock: number;
}

export interface Tolerance {
  /** One standard deviation of a seam. */
  readonly seam?: Length;
  /** One standard deviation of a cut side. */
  readonly cut?: Length;
  /** How far a row end may be off and still wash out. */
  readonly ease?: Length;
}

export interface PlanRequest {
  readonly unit?: Unit;
  readonly target: Target;
  readonly block?: BlockWish;
  readonly cuts?: readonly Length[];
  readonly layers?: readonly PlanLayer[];
  /** Measured swatches: of the layers' fabrics by name, or of a quilted test block (`sandwich`). */
  readonly swatches?: readonly Swatch[];
  readonly grain?: Grain;
  readonly washes?: number;
  readonly spare?: number;
  readonly stitch?: StitchWish;
  readonly pace?: Partial<Pace>;
  readonly tolerance?: Tolerance;
  /** Meant for a child under twelve months. */
  readonly infant?: boolean;
  /** Makers of the same quilt in a class; with it the answer lists the supplies of them all. */
  readonly pupils?: number;
  readonly explain?: boolean;
}

export interface PrintInput {
  readonly id: string;
  readonly share?: number;
  readonly count?: number;
  readonly directional: boolean;
  readonly width: number;
  readonly value?: number;
  readonly color?: string;
}

export interface LayerInput {
  readonly role: Role;
  readonly fabric: FabricName;
  readonly prints: readonly PrintInput[];
  readonly width: number;
  readonly selvage: number;
  readonly shrink: ShrinkRates;
  readonly shrinkWashes: number;
  readonly prewashed: boolean;
  readonly gsm: number;
  readonly thickness: number;
}

export interface PlanLayerInput extends LayerInput {
  readonly offers?: readonly ClothOfferInput[];
}

export type TargetInput =
  | { readonly width: number; readonly height: number; readonly at: 'washed' | 'sewn' }
  | { readonly size: SizeName; readonly region: Region }
  | {
      readonly bed: {
        readonly width: number;
        readonly length: number;
        readonly drop: number;
        readonly footDrop: number;
      };
    }
  | { readonly columns: number; readonly rows: number };

/** The request as understood: every default filled in, every length a number in `unit`. */
export interface PlanInput {
  readonly unit: Unit;
  readonly target: TargetInput;
  readonly block: {
    /** Absent when the cut size was left to be chosen from `cuts`. */
    readonly cut?: number;
    readonly seam: number;
    readonly snipDepth: number;
    readonly snipPitch: number;
  };
  readonly cuts: readonly number[];
  readonly layers: readonly PlanLayerInput[];
  readonly swatches: readonly SwatchInput[];
  readonly grain: Grain;
  readonly washes: number;
  readonly spare: number;
  readonly stitch: {
    readonly length: number;
    readonly tail: number;
    readonly link: number;
    readonly chained: boolean;
    readonly borderPasses: number;
    readonly bobbin: number;
    readonly ratio?: number;
  };
  readonly pace: Pace;
  readonly tolerance: { readonly seam: number; readonly cut: number; readonly ease: number };
  readonly infant: boolean;
  /** Absent where no class was asked for. */
  readonly pupils?: number;
  readonly explain: boolean;
}

export interface PlanOption {
  readonly cut: number;
  readonly columns: number;
  readonly rows: number;
  readonly blocks: number;
  readonly washed: Pair;
  readonly fit: Pair;
  /** Cloth off the roll over all layers, whatever the offers, in yards (in) or metres (cm). */
  readonly fabric: number;
  readonly minutes: number;
  /** True for the option that the answer works out in full. */
  readonly chosen: boolean;
}

export interface Purchase {
  readonly amount: number;
  readonly unit: 'yd' | 'm';
  readonly text: string;
}

export interface FabricNeed {
  readonly role: Role;
  readonly fabric: FabricName;
  /** The print's id; absent for a layer that is all one cloth. */
  readonly print?: string;
  /** Blocks that this cloth goes into. */
  readonly pieces: number;
  readonly spare: number;
  readonly usableWidth: number;
  readonly perStrip: number;
  readonly strips: number;
  readonly length: number;
  /** Off the roll by the usual step; where the layer has offers, `purchase` is what to buy instead. */
  readonly buy: Purchase;
  /** Proven least length off the roll, in `unit`. */
  readonly bound: number;
  /** Percent of the cloth bought that is not in needed pieces. */
  readonly waste: number;
  /** Whole pieces that the cloth bought gives beyond `pieces` and `spare`. */
  readonly spareFree: number;
  /**
   * What is left of the cloth bought once `pieces` and `spare` are cut, in rows across: the end, the
   * edge beside the rows, the rest of the last row, and flat pieces that are not cut. Counted after a
   * prewash, without selvages and what squaring up took; rectangles narrower than a binding strip and
   * than a block are left out.
   */
  readonly left: readonly LeftRectangle[];
  /** Only with offers: the cheapest purchase that gives all pieces, or the least where nothing has a price. */
  readonly purchase?: readonly ClothBought[];
  /** Only with offers: what the purchase comes to, and a proven bound. */
  readonly cost?: ClothCost;
  /** Pieces that all there is on offer does not give; only where that is so. */
  readonly lacking?: number;
}

export interface ThreadAnswer {
  readonly quilting: number;
  readonly joins: number;
  readonly rows: number;
  readonly border: number;
  readonly seamLength: number;
  readonly ratio: number;
  readonly used: number;
  readonly singly: number;
  readonly saved: number;
  readonly bobbins: number;
  readonly unit: 'yd' | 'm';
}

export interface FringeAnswer {
  readonly snipsPerSide: number;
  readonly snips: number;
  readonly snipsJoined: number;
  readonly minutes: number;
  readonly minutesJoined: number;
}

export interface BulkAnswer {
  readonly seamLayers: number;
  readonly crossingLayers: number;
  /** Millimetres, whatever the unit. */
  readonly crossingThickness: number;
  /** Metric size and its older number, such as `90/14`. */
  readonly needle: string;
}

export interface WeightAnswer {
  readonly dry: number;
  readonly wet: number;
  readonly unit: 'lb' | 'kg';
  readonly washer: {
    readonly machine: 'household' | 'large' | 'laundry';
    /** Drum volume in litres that holds the dry quilt by the cautious rule of 10 L per kg. */
    readonly drumLitres: number;
  };
}

export interface MismatchAnswer {
  /** Standard deviation of one row's length. */
  readonly rowDeviation: number;
  readonly perEndFromOneEnd: number;
  readonly perEndFromCentre: number;
  /** Percent of row ends inside the ease when rows are joined from the middle outwards. */
  readonly within: number;
  /** The same when they are joined from one end. */
  readonly withinFromOneEnd: number;
  /** Half of all row ends miss by less than this, joined from the middle outwards. */
  readonly half: number;
  /** 95 of 100 miss by less than this, joined from the middle outwards. */
  readonly most: number;
  /** 95 of 100 miss by less than this, joined from one end. */
  readonly mostFromOneEnd: number;
  /** Row ends that may miss, joined from the middle outwards: two a seam between rows. */
  readonly ends: number;
  /** How many of them are likely to be off by more than the ease, and so to be unpicked. */
  readonly unpick: number;
  /** The same when rows are joined from one end, and only the other end of each seam can miss. */
  readonly unpickFromOneEnd: number;
}

/** Minutes of work by stage; machine time of washing and drying is not counted. */
export interface TimeAnswer {
  readonly cut: number;
  readonly stack: number;
  readonly quilt: number;
  readonly snip: number;
  readonly layout: number;
  readonly joins: number;
  readonly rows: number;
  readonly border: number;
  readonly trim: number;
  readonly total: number;
}

export type Stage =
  | 'prepare'
  | 'cut'
  | 'stack'
  | 'quilt'
  | 'snip'
  | 'layout'
  | 'join'
  | 'border'
  | 'wash';

export interface Step {
  readonly id: string;
  readonly stage: Stage;
  /** What to do, one sentence. */
  readonly do: string;
  readonly count: number;
  readonly detail: string;
  /** Of `time.total`; nothing for what is mostly waiting, such as a wash. The steps sum to the total. */
  readonly minutes: number;
  /** What the sentences name, as plain data: lengths in `unit`, counts, names. With `id` they say the step in any language. */
  readonly figures: Readonly<Record<string, StepFigure>>;
  readonly cautions: readonly CautionCode[];
}

export type StepFigure = number | string | readonly string[];

/** The steps in which something is sewn. */
export type SewingStep = 'quilt-first' | 'quilt-second' | 'join' | 'join-rows' | 'border';

/** Blocks of one print, to be stacked and kept together. */
export interface BlockStack {
  /** As in `layout.cells`. */
  readonly letter: string;
  /** The print's id; absent where the top is all one cloth. */
  readonly print?: string;
  readonly blocks: number;
}

/** The runs of stitching of one step, all alike. */
export interface ChainGroup {
  readonly step: SewingStep;
  /** Runs of stitching without a cut of the thread. */
  readonly chains: number;
  /** Seams in each of them; one where nothing is chained. */
  readonly seams: number;
  /** Thread of each of them, needle and bobbin together, in `thread.unit`. */
  readonly thread: number;
}

/** Where bobbins run out. */
export interface BobbinChange {
  readonly step: SewingStep;
  /** The row that is joined or, in `join-rows`, joined on; absent where blocks are sewn one by one. */
  readonly row?: string;
  /** Bobbins that run out in it. */
  readonly changes: number;
  /**
   * After how many blocks they run out, counted along the chain: blocks quilted, blocks joined on, blocks
   * that a seam between rows or round the quilt has passed. 0 is before the first, between chains.
   */
  readonly after: readonly number[];
}

export interface WorkRow {
  /** A is the top row, as on the floor sheet; AA follows Z. */
  readonly name: string;
  /** Its blocks from the left, a print's letter each. */
  readonly blocks: string;
}

/** What the work needs, beside its steps. */
export interface WorkAnswer {
  /** One stack a print, of those that have blocks. */
  readonly stacks: readonly BlockStack[];
  /** By step, in the order of the work; only steps with something to sew. */
  readonly chains: readonly ChainGroup[];
  /** Bobbin changes at their chain, in the order of the work; one fewer in all than there are bobbins. */
  readonly bobbins: readonly BobbinChange[];
  /** From the top. */
  readonly rows: readonly WorkRow[];
  /** The block that is marked: its name by row and column, and its print. */
  readonly topLeft: { readonly block: string; readonly letter: string };
  /** Where the middle of a row falls: between two blocks, or on one, which then is both. */
  readonly middle: { readonly from: number; readonly to: number };
  /** Once round the stitch line. */
  readonly perimeter: number;
}

/** One cloth for all pupils together, cut and bought as one. */
export interface ClassCloth {
  readonly role: Role;
  readonly fabric: FabricName;
  readonly print?: string;
  /** Pieces of all pupils, their spare ones included. */
  readonly pieces: number;
  readonly strips: number;
  readonly length: number;
  readonly buy: Purchase;
  /** Only with offers. */
  readonly purchase?: readonly ClothBought[];
  readonly cost?: ClothCost;
  readonly lacking?: number;
}

/** What a class of pupils needs who all make this quilt. */
export interface ClassAnswer {
  readonly pupils: number;
  /** In the order of `fabrics`. */
  readonly fabrics: readonly ClassCloth[];
  /** Thread and bobbins of all pupils; each winds her own bobbins. */
  readonly thread: { readonly used: number; readonly bobbins: number; readonly unit: 'yd' | 'm' };
  /** Machine needles and rotary blades for one pupil and for all. */
  readonly needles: { readonly each: number; readonly all: number };
  readonly blades: { readonly each: number; readonly all: number };
}

export interface PlanAnswer extends AnswerParts<PlanInput> {
  readonly links: PageLinks;
  readonly grid: { readonly columns: number; readonly rows: number; readonly blocks: number };
  readonly block: {
    readonly cut: number;
    readonly seam: number;
    readonly face: number;
    readonly snipDepth: number;
    readonly snipPitch: number;
    readonly clearance: number;
  };
  readonly size: {
    readonly sewn: Pair;
    readonly stitchLine: Pair;
    readonly washed: Pair & { readonly low: Pair; readonly high: Pair };
    /** Dimensional change in the wash, percent; negative is shrinkage. */
    readonly change: Pair;
  };
  /** What was wished for, in the sense of `target.at`; the plan's own size when a grid was given. */
  readonly wish: Pair & { readonly at: 'washed' | 'sewn' };
  readonly fit: Pair;
  readonly options: readonly PlanOption[];
  readonly fabrics: readonly FabricNeed[];
  readonly thread: ThreadAnswer;
  readonly fringe: FringeAnswer;
  readonly bulk: BulkAnswer;
  readonly weight: WeightAnswer;
  readonly mismatch: MismatchAnswer;
  readonly time: TimeAnswer;
  readonly steps: readonly Step[];
  readonly work: WorkAnswer;
  /** Only where `pupils` was given. */
  readonly class?: ClassAnswer;
  /** Where each print goes: a string a row from the top, a letter a block, A the first print. */
  readonly layout: {
    readonly cells: readonly string[];
    readonly touching: { readonly sides: number; readonly corners: number };
  };
  readonly why?: readonly Derivation[];
}

// ---------------------------------------------------------------- /v1/yardage

export interface RollPiece {
  readonly id: string;
  /** Across the roll. */
  readonly width: Length;
  /** Along the roll. */
  readonly length: Length;
  readonly count: number;
  readonly directional?: boolean;
}

/** What a cloth is sold as: a length off the roll, or packs of flat pieces. */
export type ClothOffer =
  | {
      readonly kind: 'roll';
      readonly id: string;
      /** Sold in whole steps; the fabric's own `step` where left out. */
      readonly step?: Length;
      /** The least that is sold; one step where left out. */
      readonly least?: Length;
      /** Of a yard (in) or a metre (cm), in whole minor units of the currency. */
      readonly price?: number;
    }
  | {
      /** Fat quarters, packs of pre-cut squares, remnants; all of their cloth can be used. */
      readonly kind: 'pieces';
      readonly id: string;
      /** Across; strips are cut this way, as they are across a roll. */
      readonly width: Length;
      readonly length: Length;
      /** Pieces in one pack. */
      readonly count: number;
      /** Packs to be had; as many as are wanted where left out. */
      readonly most?: number;
      /** Of a pack, in whole minor units of the currency. */
      readonly price?: number;
    };

export interface RollFabric {
  readonly id: string;
  readonly width: Length;
  readonly selvage?: Length;
  readonly prewash?: ShrinkRates;
  readonly squaring?: Length;
  /** The step the shop sells by. */
  readonly step?: Length;
  /** What is left on the bolt. */
  readonly lengthLeft?: Length;
  /** What it is sold as; off the roll alone where left out. */
  readonly offers?: readonly ClothOffer[];
  readonly pieces: readonly RollPiece[];
}

export interface YardageRequest {
  readonly unit?: Unit;
  readonly fabrics: readonly RollFabric[];
}

export type ClothOfferInput =
  | {
      readonly kind: 'roll';
      readonly id: string;
      readonly step: number;
      readonly least: number;
      readonly price?: number;
    }
  | {
      readonly kind: 'pieces';
      readonly id: string;
      readonly width: number;
      readonly length: number;
      readonly count: number;
      readonly most?: number;
      readonly price?: number;
    };

export interface YardageInput {
  readonly unit: Unit;
  readonly fabrics: readonly {
    readonly id: string;
    readonly width: number;
    readonly selvage: number;
    readonly prewash: ShrinkRates;
    readonly squaring: number;
    readonly step: number;
    readonly lengthLeft?: number;
    readonly offers?: readonly ClothOfferInput[];
    readonly pieces: readonly {
      readonly id: string;
      readonly width: number;
      readonly length: number;
      readonly count: number;
      readonly directional: boolean;
    }[];
  }[];
}

/** Strips cut alike. */
export interface StripGroup {
  readonly count: number;
  /** As tall as its tallest piece. */
  readonly length: number;
  /** What lies in one strip, side by side. */
  readonly pieces: readonly {
    readonly id: string;
    readonly count: number;
    readonly turned: boolean;
  }[];
  /** Width left over in each. */
  readonly left: number;
}

/** One line of a shopping list; `price` is the line's, in minor units. */
export type ClothBought =
  | (Purchase & { readonly offer: string; readonly price?: number })
  | {
      readonly offer: string;
      /** Packs. */
      readonly count: number;
      readonly unit: 'pack';
      readonly text: string;
      readonly price?: number;
    };

/** What a purchase comes to, and what no purchase is below. */
export interface ClothCost {
  /** Minor units of the currency; or square yards (in) or metres (cm) where nothing has a price. */
  readonly of: 'price' | 'area';
  readonly total: number;
  readonly bound: number;
}

export interface RollAnswer {
  readonly id: string;
  readonly usableWidth: number;
  /** Length off the roll that is cut into, before rounding to the step sold. */
  readonly length: number;
  /** What to buy, by the offer's id; `roll` where no offers were given. */
  readonly buy: readonly ClothBought[];
  /** Cut off the roll: exactly the pieces wanted that are not on sheets. */
  readonly strips: readonly StripGroup[];
  /** Sheets cut alike, of which offer; only where pieces are bought flat. */
  readonly sheets?: readonly {
    readonly offer: string;
    readonly count: number;
    /** In one sheet. */
    readonly strips: readonly StripGroup[];
  }[];
  /** Percent of the cloth bought that is in no piece. */
  readonly waste: number;
  /** Proven: no plan takes less off the roll; 0 where flat pieces could replace it. */
  readonly bound: number;
  /** Proven: no plan is shorter; with `offers`, no purchase is cheaper. */
  readonly optimal: boolean;
  /** Only with `offers`: what the purchase comes to, and a proven bound. */
  readonly cost?: ClothCost;
  /** Only with `lengthLeft`, or where the offers do not give all pieces. */
  readonly enough?: boolean;
  /** What the cloth there is gives, per piece id; only when it is not enough. */
  readonly fits?: readonly { readonly id: string; readonly count: number }[];
}

export interface YardageAnswer extends AnswerParts<YardageInput> {
  readonly fabrics: readonly RollAnswer[];
}

// ---------------------------------------------------------------- /v1/wash-shrinkage

export interface Swatch {
  /** The name the person gives the cloth; `sandwich` for a quilted test block. Default `cloth`. */
  readonly fabric?: string;
  readonly direction: 'length' | 'width';
  readonly before: Length;
  readonly after: Length;
  readonly washes?: number;
  /** Both diagonals of a marked square after the wash, to tell its skew. */
  readonly diagonals?: { readonly ac: Length; readonly bd: Length };
}

export interface WashRequest {
  readonly unit?: Unit;
  readonly swatches?: readonly Swatch[];
  readonly layers?: readonly Layer[];
  readonly grain?: Grain;
  readonly sewn?: { readonly width: Length; readonly height: Length };
  readonly wanted?: { readonly width: Length; readonly height: Length };
  /** The block that a wanted size is sewn from; its cut size is chosen from `cuts` where it is left out. */
  readonly block?: { readonly cut?: Length; readonly seam?: Length };
  readonly cuts?: readonly Length[];
  /** How near the wanted size must come. */
  readonly fit?: Length;
  readonly washes?: readonly number[];
  readonly confidence?: 90 | 95 | 99;
}

/** A swatch as understood, lengths in the unit of the request. */
export interface SwatchInput {
  readonly fabric: string;
  readonly direction: 'length' | 'width';
  readonly before: number;
  readonly after: number;
  readonly washes: number;
  readonly diagonals?: { readonly ac: number; readonly bd: number };
}

export interface WashInput {
  readonly unit: Unit;
  readonly swatches: readonly SwatchInput[];
  readonly layers: readonly LayerInput[];
  readonly grain: Grain;
  readonly sewn?: Pair;
  readonly wanted?: Pair;
  readonly block: { readonly cut?: number; readonly seam: number };
  readonly cuts: readonly number[];
  readonly fit?: number;
  readonly washes: readonly number[];
  readonly confidence: 90 | 95 | 99;
}

export interface SwatchResult {
  readonly fabric: string;
  readonly direction: 'length' | 'width';
  readonly washes: number;
  /** Mean dimensional change in percent; negative is shrinkage. */
  readonly change: number;
  readonly n: number;
  /** Percent points; absent with one specimen, of whose spread nothing is known. */
  readonly sd?: number;
  /** Student t interval of the mean, percent. */
  readonly low?: number;
  readonly high?: number;
  /** Interval for one new piece of the same cloth, percent. */
  readonly nextLow?: number;
  readonly nextHigh?: number;
  /** Percent points by which reading the ruler alone blurs one specimen. */
  readonly reading: number;
  /** Mean skew of the specimens whose diagonals were given, and what it does to one block. */
  readonly skew?: {
    /** Percent; the sign tells which way the square leans. */
    readonly mean: number;
    readonly n: number;
    /** How far one side of a block leans out of true. */
    readonly lean: number;
    /** Side of that block. */
    readonly side: number;
  };
  readonly notes: readonly SwatchNote[];
}

/**
 * What a reader should know of a result: nothing is known of the spread; the ruler is too coarse for
 * so small a change; the cloth shrank less than after fewer washes, which is worth measuring again.
 */
export type SwatchNote = 'one-specimen' | 'coarse-reading' | 'grew-back';

export interface Course {
  readonly fabric: string;
  readonly direction: 'length' | 'width';
  /** Dimensional change that repeated washing tends to, percent. */
  readonly limit: number;
  /** Share of what is left that stays after each wash, 0 to 1. */
  readonly rate: number;
  /** Root mean square error of the fit, percent points; absent when one wash count was measured. */
  readonly error?: number;
  readonly points: readonly { readonly washes: number; readonly change: number }[];
}

export interface WashedSize extends Pair {
  readonly washes: number;
  readonly low: Pair;
  readonly high: Pair;
}

export interface LayerPull {
  readonly layer: Role;
  /** Percent by which the layer wants to shrink beyond the quilt: above zero tight, below zero it puckers. */
  readonly length: number;
  readonly width: number;
  /** What it does where it pulls hardest; within half a percent point it lies even. */
  readonly says: 'tight' | 'even' | 'puckers';
}

/** The size to sew for a wanted size, and the nearest that whole blocks come to. */
export interface SewFor extends Pair {
  /** Absent where no grid within the limits comes near. */
  readonly nearest?: {
    readonly cut: number;
    readonly columns: number;
    readonly rows: number;
    readonly sewn: Pair;
    readonly washed: Pair;
    /** Washed size less the wanted one, signed. */
    readonly fit: Pair;
  };
}

export interface WashAnswer extends AnswerParts<WashInput> {
  readonly links: PageLinks;
  readonly swatches: readonly SwatchResult[];
  readonly courses: readonly Course[];
  /** Dimensional change of the whole sandwich after each wash count, percent; low is the smaller quilt. */
  readonly sandwich: readonly {
    readonly washes: number;
    readonly change: Pair;
    readonly low: Pair;
    readonly high: Pair;
  }[];
  readonly sizes: readonly WashedSize[];
  /** Sewn size that gives `wanted` after the first of `washes`. */
  readonly sewFor?: SewFor;
  readonly pull: readonly LayerPull[];
  /** How far the quilt may come out from what is expected after the first of `washes`. */
  readonly doubt: {
    /** Half the width of the interval each way, percent points. */
    readonly percent: Pair;
    /** Quilted test blocks, washed once, that would halve it; absent where thirty would not. */
    readonly blocks?: number;
  };
  readonly prewash: {
    readonly advised: boolean;
    readonly why: string;
    readonly reasons: readonly ('pull' | 'doubt')[];
  };
}

// ---------------------------------------------------------------- /v1/stash

export interface StashPiece {
  readonly id: string;
  readonly role: Role;
  /** The print it shows, so that several pieces can be of one print; its own id unless told. */
  readonly print?: string;
  /** Across the roll it came from. */
  readonly width: Length;
  readonly length: Length;
  /** Pieces alike, default 1. */
  readonly count?: number;
  /** Squares come out alike whichever way they are cut, so this changes no count. */
  readonly directional?: boolean;
  /** Cut away at each edge across; where the piece is as wide as a bolt the usual, else nothing. */
  readonly selvage?: Length;
}

/** A layer of the sandwich as far as it shrinks and weighs; its cloth is among the pieces. */
export type StashLayer = Omit<Layer, 'prints' | 'width' | 'selvage'>;

/** How wide for its height the quilt should be, or the size to stop at. */
export type StashShape = { readonly ratio: number } | { readonly target: Target };

/** What counts as touching: sides alone, or corners too. */
export type Touch = 'sides' | 'corners';

export interface StashRequest {
  readonly unit?: Unit;
  readonly pieces: readonly StashPiece[];
  readonly block?: { readonly cut?: Length; readonly seam?: Length };
  readonly cuts?: readonly Length[];
  readonly layers?: readonly StashLayer[];
  readonly shape?: StashShape;
  /** Where given, no print touches itself in any plan offered. */
  readonly touch?: Touch;
  readonly grain?: Grain;
  readonly washes?: number;
  /** Cut away along the length of each piece to straighten it. */
  readonly squaring?: Length;
  /** Least shorter side of a rectangle that is worth keeping. */
  readonly usable?: Length;
}

export interface StashInput {
  readonly unit: Unit;
  readonly pieces: readonly {
    readonly id: string;
    readonly role: Role;
    readonly print: string;
    readonly width: number;
    readonly length: number;
    readonly count: number;
    readonly directional: boolean;
    readonly selvage: number;
  }[];
  readonly block: { readonly cut?: number; readonly seam: number };
  readonly cuts: readonly number[];
  readonly layers: readonly Omit<LayerInput, 'prints' | 'width' | 'selvage'>[];
  readonly shape: { readonly ratio: number } | { readonly target: TargetInput };
  readonly touch?: Touch;
  readonly grain: Grain;
  readonly washes: number;
  readonly squaring: number;
  readonly usable: number;
}

/**
 * What keeps a plan from being larger: cloth of a role; `touch`, that no larger layout was found in
 * which like prints do not meet; `target` or `shape`, the wish itself; `greatest`, the limits.
 */
export type StashLimit = Role | 'touch' | 'target' | 'shape' | 'greatest';

/** A rectangle left whole. */
export interface LeftRectangle {
  readonly width: number;
  readonly length: number;
  /** Rectangles alike. */
  readonly count: number;
}

export interface StashOption {
  readonly cut: number;
  readonly columns: number;
  readonly rows: number;
  readonly blocks: number;
  readonly sewn: Pair;
  readonly washed: Pair;
  /** Size less the wish, signed, in the sense of its `at`; only with `shape.target`. */
  readonly fit?: Pair;
  /** Squares cut from each piece, summing to the blocks in each layer; pieces not cut are left out. */
  readonly uses: readonly { readonly id: string; readonly role: Role; readonly blocks: number }[];
  /** What each piece leaves in rectangles whose shorter side is at least `usable`. */
  readonly left: readonly { readonly id: string; readonly rectangles: readonly LeftRectangle[] }[];
  /** Squares to buy for roles of which there is no piece. */
  readonly buy: readonly { readonly role: Role; readonly blocks: number }[];
  readonly limitedBy: readonly StashLimit[];
  /** An arrangement that proves the plan: a letter a block, `prints` in the order of the letters. */
  readonly layout: {
    readonly prints: readonly string[];
    readonly cells: readonly string[];
    readonly touching: { readonly sides: number; readonly corners: number };
  };
}

export interface StashAnswer extends AnswerParts<StashInput> {
  readonly links: PageLinks;
  /** Blocks that the pieces of each role give at each cut size, the most there are. */
  readonly supply: readonly {
    readonly cut: number;
    readonly roles: readonly { readonly role: Role; readonly blocks: number }[];
  }[];
  /** What keeps the first option from being larger, or from being at all. */
  readonly limitedBy: readonly StashLimit[];
  /** Largest first; none that another beats in size, shape and number of blocks. */
  readonly options: readonly StashOption[];
}

// ---------------------------------------------------------------- /v1/kits

export interface KitBolt {
  readonly id: string;
  readonly role: Role;
  /** The print it shows, so that several bolts can be of one print; its own id unless told. */
  readonly print?: string;
  readonly width: Length;
  readonly length: Length;
  readonly selvage?: Length;
  /** Spent on a straight edge. */
  readonly squaring?: Length;
  /** Of a yard (in) or a metre (cm), in whole minor units of the currency. */
  readonly cost?: number;
  /** ISO 4217; must be the one of the whole request. */
  readonly currency?: string;
}

/** Money of one kit in whole minor units; margin and markup in percent; one of the last three at most. */
export interface KitCosts {
  readonly packaging?: number;
  readonly labour?: number;
  readonly overhead?: number;
  readonly margin?: number;
  readonly markup?: number;
  readonly price?: number;
}

export interface Fibre {
  readonly fibre: string;
  readonly percent: number;
}

export interface KitsRequest {
  readonly unit?: Unit;
  readonly plan: PlanRequest;
  /** Kits wanted; as many as can be made unless told. */
  readonly kits?: number;
  readonly bolts: readonly KitBolt[];
  readonly perKit?: {
    /** Fewest prints in each kit. */
    readonly distinctPrints?: number;
    /** Most blocks of one print in each kit. */
    readonly mostOfOne?: number;
    /** Extra squares of each layer in each kit, default none. */
    readonly spare?: number;
  };
  readonly costs?: KitCosts;
  /** ISO 4217. */
  readonly currency?: string;
  /** What the cloth of a role is made of, by mass, summing to 100 percent. */
  readonly fibres?: Readonly<Partial<Record<Role, readonly Fibre[]>>>;
}

export interface KitsInput {
  readonly unit: Unit;
  readonly plan: PlanInput;
  readonly kits?: number;
  readonly bolts: readonly {
    readonly id: string;
    readonly role: Role;
    readonly print: string;
    readonly width: number;
    readonly length: number;
    readonly selvage: number;
    readonly squaring: number;
    readonly cost?: number;
  }[];
  readonly perKit: {
    readonly distinctPrints: number;
    /** Absent where there is no such limit. */
    readonly mostOfOne?: number;
    readonly spare: number;
  };
  readonly costs: {
    readonly packaging: number;
    readonly labour: number;
    readonly overhead: number;
    readonly margin?: number;
    readonly markup?: number;
    readonly price?: number;
  };
  readonly currency: string;
  /** Of every role that the plan has. */
  readonly fibres: Readonly<Partial<Record<Role, readonly Fibre[]>>>;
}

/** What keeps one more kit from being made. */
export type KitLimit = Role | 'mostOfOne' | 'distinctPrints';

export interface BoltCutting {
  readonly id: string;
  readonly role: Role;
  readonly print: string;
  /** Squares across the bolt. */
  readonly perStrip: number;
  /** Strips that the whole bolt gives. */
  readonly strips: number;
  /** Strips to cut for the kits made, squares that go into kits, and cloth that it takes. */
  readonly cut: number;
  readonly used: number;
  readonly length: number;
}

export interface BoltLeft {
  readonly id: string;
  /** Full width, not yet straightened again. */
  readonly length: number;
  /** Squares cut and in no kit. */
  readonly squares: number;
}

export interface KitPurchase {
  readonly role: Role;
  /** A print among the bolts; absent where it must be one that is not yet there, or where the role has no prints. */
  readonly print?: string;
  readonly squares: number;
  readonly strips: number;
  readonly width: number;
  readonly length: number;
  readonly buy: Purchase;
}

/** Money of one kit in whole minor units. */
export interface KitMoney {
  readonly currency: string;
  /** Decimals of the currency: 2 where 100 minor units make one. */
  readonly decimals: number;
  /** Cloth cut for the kits made, shared among them. */
  readonly materials: number;
  readonly labour: number;
  readonly packaging: number;
  readonly overhead: number;
  readonly cost: number;
  /** Absent where neither margin, markup nor price was given. */
  readonly price?: number;
  /** Of the price as rounded; absent without a price. */
  readonly marginPercent?: number;
}

export interface KitLabel {
  /** Face and back by mass, largest first, whole percent; thread left out. */
  readonly covering: readonly Fibre[];
  /** A middle layer, which is there for warmth. */
  readonly filling?: readonly Fibre[];
  readonly content: string;
  readonly care: string;
  readonly source: string;
}

export interface KitsAnswer extends AnswerParts<KitsInput> {
  readonly links: PageLinks;
  readonly grid: { readonly columns: number; readonly rows: number; readonly blocks: number };
  readonly cut: number;
  /** Squares of each layer in a kit, spare ones included. */
  readonly squares: number;
  readonly mostOfOne: number;
  /** Kits that can be cut from the bolts, proven to be the most. */
  readonly most: number;
  readonly limitedBy: readonly KitLimit[];
  /** Kits made up below: those wanted, or the most. */
  readonly made: number;
  /** Kits alike together, the largest group first; each holds `squares` blocks of the top. */
  readonly kits: readonly {
    readonly count: number;
    readonly prints: readonly { readonly id: string; readonly blocks: number }[];
  }[];
  readonly cutting: readonly BoltCutting[];
  readonly left: readonly BoltLeft[];
  /** Only where more kits are wanted than can be made. */
  readonly buyMore?: readonly KitPurchase[];
  /** Only where every bolt has a cost and at least one kit is made. */
  readonly money?: KitMoney;
  /** Cloth of one kit. */
  readonly weight: { readonly dry: number; readonly unit: 'lb' | 'kg' };
  readonly label: KitLabel;
}

// ---------------------------------------------------------------- /v1/batch

export interface BatchRequest {
  readonly requests: readonly {
    /** Address of the endpoint that is asked. */
    readonly path: string;
    /** What its own body would say. */
    readonly input: Readonly<Record<string, unknown>>;
  }[];
}

/** What one request of a batch was answered; `etag` and `query` are those of its own endpoint. */
export interface BatchSuccess {
  readonly status: 200;
  readonly path: string;
  readonly etag: string;
  /** The canonical query. */
  readonly query: string;
  /** To the byte what the endpoint itself answers; a picture stands as text. */
  readonly answer: unknown;
}

/** What was wrong with one request; its pointers lead into that request's own input. */
export interface BatchFailure {
  readonly status: number;
  /** A problem of RFC 9457, as the endpoint itself would answer. */
  readonly problem: Readonly<Record<string, unknown>>;
}

export interface BatchAnswer {
  readonly engine: string;
  /** Points that the batch came to, each about a tenth of a millisecond. */
  readonly cost: number;
  /** One for each request, in the same order. */
  readonly answers: readonly (BatchSuccess | BatchFailure)[];
}

// ---------------------------------------------------------------- /v1/layout

export type LayoutPattern = 'scattered' | 'checkerboard' | 'diagonal' | 'rings';

export interface LayoutPrint {
  readonly id: string;
  /** Blocks of this print; where one print has it, all must. */
  readonly count?: number;
  /** Lightness, 0 dark to 100 light. */
  readonly value?: number;
  /** `#rrggbb`, for drawings. */
  readonly color?: string;
}

/** A grid is written a string a row from the top, a letter a block: A the first print, `.` a free cell. */
export interface LayoutRequest {
  readonly columns: number;
  readonly rows: number;
  readonly prints: readonly LayoutPrint[];
  readonly pattern?: LayoutPattern;
  readonly touch?: Touch;
  /** Blocks that must lie where they are; a grid without a free cell is only judged. */
  readonly fixed?: readonly string[];
  /** Another number, another layout of the same kind. */
  readonly seed?: number;
}

export interface LayoutInput {
  readonly columns: number;
  readonly rows: number;
  readonly prints: readonly (LayoutPrint & { readonly count: number })[];
  readonly pattern: LayoutPattern;
  readonly touch: Touch;
  readonly fixed?: readonly string[];
  readonly seed: number;
}

/** How one print lies, in blocks. */
export interface PrintSpread {
  readonly id: string;
  readonly count: number;
  /** The most by which any row has more or less than the print's fair share. */
  readonly rows: number;
  /** The same of columns. */
  readonly columns: number;
  /** From the middle of the print's blocks to the middle of the quilt; absent without blocks. */
  readonly centre?: number;
}

/** Pairs of neighbours that both show one print, beside what chance would give. */
export interface PrintJoins {
  readonly id: string;
  readonly observed: number;
  /** Mean over all ways to lay the same blocks. */
  readonly expected: number;
  /** Over all ways to lay the same blocks. */
  readonly variance: number;
  /** Standard deviations from the mean; absent where nothing varies. */
  readonly z?: number;
}

/** How like the values of neighbours are: above the expected they cluster, below it they mix. */
export interface ValueMix {
  /** Moran's I. */
  readonly moran: number;
  readonly expected: number;
  /** Over all ways to lay the same blocks; absent with fewer than four. */
  readonly variance?: number;
  readonly z?: number;
}

export interface LayoutAnswer extends AnswerParts<LayoutInput> {
  readonly cells: readonly string[];
  /** Pairs of blocks of one print that share a side, and that meet at a corner only. */
  readonly touching: { readonly sides: number; readonly corners: number };
  /**
   * Proven lower bound on the pairs that count under `touch`, with these counts and pins; pins left
   * aside where the whole grid was given.
   */
  readonly fewest: number;
  /** No layout touches less. */
  readonly optimal: boolean;
  readonly spread: readonly PrintSpread[];
  /** Neighbours under `touch`. */
  readonly joinCount: readonly PrintJoins[];
  /** Only where every print that is laid has a value, and not all the same. */
  readonly value?: ValueMix;
  readonly seed: number;
}
