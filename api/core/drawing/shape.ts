/** What a shape shows, so that a style sheet can reach it. */
export type Part =
  | 'shadow'
  | 'face'
  | 'motif'
  | 'quilting'
  | 'fringe'
  | 'snip'
  | 'letter'
  | 'outline'
  | 'mattress'
  | 'piece'
  | 'left'
  | 'cut'
  | 'measure'
  | 'measure-text';

/** An outline or a stroke; every figure in millimetres. */
export interface PathShape {
  readonly kind: 'path';
  readonly part: Part;
  /** Which print, 0 the first; absent for what belongs to no print. */
  readonly print?: number;
  /** SVG path data. */
  readonly d: string;
  /** Colour; `none` when left out. */
  readonly fill?: string;
  /** Colour; `none` when left out. */
  readonly stroke?: string;
  /** Breadth of the stroke. */
  readonly breadth?: number;
  /** Drawn and left lengths in turn. */
  readonly dash?: string;
  /** Round ends to the stroke. */
  readonly round?: boolean;
  /** 0 to 1. */
  readonly opacity?: number;
}

/** One line of text, centred on its point. */
export interface TextShape {
  readonly kind: 'text';
  readonly part: Part;
  readonly print?: number;
  readonly x: number;
  readonly y: number;
  /** Height of the letters' body. */
  readonly size: number;
  readonly text: string;
  readonly fill: string;
  /** Colour of a rim around the letters, so that they read on any print. */
  readonly rim?: string;
  /** Degrees clockwise about its point. */
  readonly turn?: number;
}

export type Shape = PathShape | TextShape;

/** Shapes from the back to the front and the part of the plane that they fill. */
export interface Drawing {
  readonly box: {
    readonly x: number;
    readonly y: number;
    readonly width: number;
    readonly height: number;
  };
  readonly shapes: readonly Shape[];
}

/** A rectangle in millimetres, its corner at the top left. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Rounds a place in a drawing to a tenth of a millimetre, which no eye tells from the truth.
 *
 * @example
 * place(25.44) // => 25.4
 */
export function place(millimetres: number): number {
  return Math.round(millimetres * 10) / 10;
}
