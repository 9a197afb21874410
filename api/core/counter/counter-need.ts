import type { Roll } from '../cloth/usable-width.ts';
import type { FabricName, Role, Unit } from '../contract.ts';

/** One cloth to ask for at the cutting counter; lengths in millimetres. */
export interface CounterNeed {
  /** What the cloth is for; absent where somebody typed squares and said nothing of a quilt. */
  readonly cloth?: {
    readonly role: Role;
    readonly fabric: FabricName;
    /** Absent where its layer is all one cloth. */
    readonly print?: string;
  };
  /** Side of a square. */
  readonly cut: number;
  /** To be cut, spare ones included. */
  readonly squares: number;
  readonly spare: number;
  /** The bolt that was reckoned with; at the counter another width may lie there. */
  readonly roll: Roll;
  /** Spent on a straight edge once. */
  readonly squaring: number;
  /** The step that the shop sells by. */
  readonly step: number;
  /** Yards are bought with inches, metres with centimetres. */
  readonly unit: Unit;
}
