import { tellKits } from './tell-kits.ts';
import { tellLayout } from './tell-layout.ts';
import { tellPlan, tellSize } from './tell-plan.ts';
import { tellStash } from './tell-stash.ts';
import { tellWash } from './tell-wash.ts';
import { tellYardage } from './tell-yardage.ts';
import type { Telling } from './telling.ts';

/** One thing that can be looked at: as an element, in a frame, and without scripts. */
export interface View {
  /** Last part of its frame's address; with `ragbloom-` before it the tag of its element. */
  readonly name: string;
  /** The endpoint that answers it. */
  readonly asks: `/${string}`;
  /** The whole page that shows the same, where there is one. */
  readonly page?: `/${string}`;
  /** What is shown where nothing is asked for; of the small views the element has the same. */
  readonly example: string;
  /** Fields of the form that are there even where the query does not name them. */
  readonly always: readonly string[];
  /** Other ways to ask, each by name, with a query to begin with. */
  readonly ways?: readonly (readonly [name: string, query: string])[];
  /** Height in pixels of a frame 700 wide, measured; at most 1000, as blogs clamp it, and the rest scrolls. */
  readonly height: number;
  /** Reads the body that the endpoint answers. */
  readonly tell: (body: string) => Telling;
}

/** Cloth of an invented shop. */
const SWATCHES =
  'swatches.0.fabric=flannel&swatches.0.direction=length&swatches.0.before=18&swatches.0.after=16.875' +
  '&swatches.1.fabric=flannel&swatches.1.direction=width&swatches.1.before=18&swatches.1.after=17.375';
const ROLL =
  'fabrics.0.id=cloth&fabrics.0.width=42&fabrics.0.pieces.0.id=A' +
  '&fabrics.0.pieces.0.width=8.5&fabrics.0.pieces.0.length=8.5&fabrics.0.pieces.0.count=20';
const PIECES =
  'pieces.0.id=Oat%20sprig&pieces.0.role=top&pieces.0.width=21.5&pieces.0.length=18&pieces.0.count=6';
const BOLTS =
  'plan.target.columns=4&plan.target.rows=5&plan.block.cut=8&bolts.0.id=Heron%20dot&bolts.0.role=top' +
  '&bolts.0.width=44&bolts.0.length=288&bolts.1.id=Fog%20flannel&bolts.1.role=backing' +
  '&bolts.1.width=42&bolts.1.length=360';

const WAYS = [
  ['by name', 'target.size=throw'],
  ['by width and height', 'target.width=40&target.height=50'],
  ['for a bed', 'target.bed.width=60&target.bed.length=80&target.bed.drop=12'],
  ['in blocks', 'target.columns=5&target.rows=6'],
] as const;

/** Every view; where a new one is added. */
export const VIEWS: readonly View[] = [
  {
    name: 'plan',
    asks: '/v1/plan',
    page: '/',
    example: 'target.size=throw',
    always: ['unit', 'block.cut', 'washes'],
    ways: WAYS,
    height: 1000,
    tell: (body) => tellPlan(JSON.parse(body)),
  },
  {
    name: 'size',
    asks: '/v1/plan',
    example: 'target.size=throw',
    always: ['unit'],
    ways: WAYS,
    height: 780,
    tell: (body) => tellSize(JSON.parse(body)),
  },
  {
    name: 'yardage',
    asks: '/v1/yardage',
    example: ROLL,
    always: ['unit', 'fabrics.0.lengthLeft'],
    height: 820,
    tell: (body) => tellYardage(JSON.parse(body)),
  },
  {
    name: 'wash',
    asks: '/v1/wash-shrinkage',
    page: '/wash',
    example: SWATCHES,
    always: ['unit', 'wanted.width', 'wanted.height'],
    height: 1000,
    tell: (body) => tellWash(JSON.parse(body)),
  },
  {
    name: 'layout',
    asks: '/v1/layout',
    page: '/layout',
    example: 'columns=5&rows=6&prints.0.id=A&prints.1.id=B&prints.2.id=C&prints.3.id=D',
    always: ['seed'],
    height: 1000,
    tell: (body) => tellLayout(JSON.parse(body)),
  },
  {
    name: 'stash',
    asks: '/v1/stash',
    page: '/stash',
    example: PIECES,
    always: ['unit'],
    height: 1000,
    tell: (body) => tellStash(JSON.parse(body)),
  },
  {
    name: 'kits',
    asks: '/v1/kits',
    page: '/kits',
    example: BOLTS,
    always: ['unit', 'kits'],
    height: 1000,
    tell: (body) => tellKits(JSON.parse(body)),
  },
];
