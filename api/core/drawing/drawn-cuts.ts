import type { StripGroup, Unit } from '../contract.ts';

/** What was bought: a length of cloth, or packs. */
interface Bought {
  readonly unit: 'yd' | 'm' | 'pack';
  readonly amount?: number;
  readonly text: string;
}

/** What a cloth is sold as: flat pieces have two sides. */
interface Offered {
  readonly id: string;
  readonly width?: number;
  readonly length?: number;
}

/** As much of an answer of `/v1/yardage` as its drawing needs. */
export interface DrawnCuts {
  readonly input: {
    readonly unit: Unit;
    readonly fabrics: readonly {
      readonly squaring: number;
      readonly prewash: { readonly length: number };
      readonly offers?: readonly Offered[];
      readonly pieces: readonly {
        readonly id: string;
        readonly width: number;
        readonly length: number;
        readonly count: number;
      }[];
    }[];
  };
  readonly fabrics: readonly {
    readonly id: string;
    readonly usableWidth: number;
    readonly buy: readonly Bought[];
    readonly strips: readonly StripGroup[];
    readonly sheets?: readonly {
      readonly offer: string;
      readonly count: number;
      readonly strips: readonly StripGroup[];
    }[];
  }[];
}
