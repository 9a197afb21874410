import { SIZE_NAMES } from '../data/names.ts';
import type { MakerWords } from '../text/maker/en.ts';

/** One value that a snippet may begin with. */
export interface MakerField {
  /** Its place in the query. */
  readonly path: keyof MakerWords['fields'];
  /** All that it may be; absent where it is typed. */
  readonly choices?: readonly string[];
  /** What stands in it first. */
  readonly first?: string;
}

/** What can be embedded, with the few values that a host may want to set. */
export interface MakerView {
  readonly name: keyof MakerWords['views'];
  /** The page that shows the same, where there is one. */
  readonly page?: `/${string}`;
  /** The drawing of the same query, where there is one. */
  readonly image?: `/${string}`;
  readonly fields: readonly MakerField[];
  /** Pixels that are kept free, so that nothing jumps while it loads. */
  readonly height: number;
}

const UNIT: MakerField = { path: 'unit', choices: ['in', 'cm'] };
const TARGET: readonly MakerField[] = [
  { path: 'target.size', choices: SIZE_NAMES, first: 'throw' },
  { path: 'target.width' },
  { path: 'target.height' },
  { path: 'block.cut' },
  { path: 'block.seam' },
];

/** Every view that can be embedded; heights are those of the service’s own frames. */
export const MAKER_VIEWS: readonly MakerView[] = [
  { name: 'size', image: '/v1/plan.svg', fields: [UNIT, ...TARGET], height: 780 },
  {
    name: 'yardage',
    image: '/v1/yardage.svg',
    fields: [
      UNIT,
      { path: 'fabrics.0.id', first: 'Fog flannel' },
      { path: 'fabrics.0.width', first: '42' },
      { path: 'fabrics.0.pieces.0.id', first: 'backing' },
      { path: 'fabrics.0.pieces.0.width', first: '8 1/2' },
      { path: 'fabrics.0.pieces.0.length', first: '8 1/2' },
      { path: 'fabrics.0.pieces.0.count', first: '42' },
    ],
    height: 820,
  },
  {
    name: 'wash',
    page: '/wash',
    fields: [UNIT, { path: 'wanted.width' }, { path: 'wanted.height' }, { path: 'block.cut' }],
    height: 1000,
  },
  {
    name: 'layout',
    page: '/layout',
    image: '/v1/layout.svg',
    fields: [
      { path: 'columns', first: '4' },
      { path: 'rows', first: '5' },
      { path: 'prints.0.id', first: 'Heron dot' },
      { path: 'prints.1.id', first: 'Oat sprig' },
      { path: 'prints.2.id' },
    ],
    height: 1000,
  },
  {
    name: 'plan',
    page: '/',
    image: '/v1/plan.svg',
    fields: [UNIT, ...TARGET, { path: 'washes' }],
    height: 1000,
  },
];
