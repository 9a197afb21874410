/** What the documents say of an endpoint beside what the endpoint says of itself. */
export interface EndpointWords {
  /** Name in the contract of the type that its answer has; none for a picture. */
  readonly answer?: string;
  /** Requests that the documents show, each with the answer it really gets. */
  readonly examples: Readonly<Record<string, EndpointExample>>;
}

export interface EndpointExample {
  readonly summary: string;
  readonly input: object;
}

const throwWish = { target: { width: 40, height: 50 } };

const flannel = {
  fabrics: [
    {
      id: 'Fog flannel',
      width: 42,
      lengthLeft: '2 yd',
      pieces: [{ id: 'backing', width: '8 1/2', length: '8 1/2', count: 42 }],
    },
  ],
};

const offered = {
  fabrics: [
    {
      id: 'Blue sprig',
      width: 42,
      offers: [
        { kind: 'roll', id: 'bolt', price: 1250 },
        { kind: 'pieces', id: 'fat quarter', width: 21, length: 18, count: 1, price: 350 },
      ],
      pieces: [
        { id: 'block', width: '8 1/2', length: '8 1/2', count: 20 },
        { id: 'border', width: 6, length: 20, count: 5 },
        { id: 'label', width: 4, length: 3, count: 1, directional: true },
      ],
    },
  ],
};

const diagonal = {
  columns: 5,
  rows: 6,
  prints: [{ id: 'Blue sprig' }, { id: 'Red dots' }, { id: 'Moss' }, { id: 'Straw' }],
  pattern: 'diagonal',
  fixed: ['A....', '.....', '.....', '.....', '.....', '.....'],
};

/** A row for each endpoint; a test keeps the two tables together. */
export const ENDPOINT_WORDS: Readonly<Record<string, EndpointWords>> = {
  '/v1/plan': {
    answer: 'PlanAnswer',
    examples: {
      throw: { summary: 'A throw of 40 by 50 inches', input: throwWish },
      bed: {
        summary: 'A bed in centimetres, with measured flannel, derivations included',
        input: {
          unit: 'cm',
          target: { bed: { width: 140, length: 200, drop: 30 } },
          block: { cut: '21,5' },
          layers: [
            { role: 'top', prints: [{ id: 'Blue sprig' }, { id: 'Red dots', share: 2 }] },
            { role: 'backing', fabric: 'flannel', shrink: { length: 6, width: 3.5 } },
          ],
          washes: 3,
          explain: true,
        },
      },
    },
  },
  '/v1/plan.svg': {
    examples: { throw: { summary: 'A throw of 40 by 50 inches', input: throwWish } },
  },
  '/v1/yardage': {
    answer: 'YardageAnswer',
    examples: {
      squares: { summary: 'Squares of flannel, with two yards left on the bolt', input: flannel },
      offers: { summary: 'Three sizes, off a bolt or from fat quarters', input: offered },
    },
  },
  '/v1/yardage.svg': {
    examples: { squares: { summary: 'Squares of flannel, strip by strip', input: flannel } },
  },
  '/v1/layout': {
    answer: 'LayoutAnswer',
    examples: {
      diagonal: { summary: 'Four prints along diagonals, one block pinned', input: diagonal },
    },
  },
  '/v1/layout.svg': {
    examples: { diagonal: { summary: 'Four prints along diagonals', input: diagonal } },
  },
  '/v1/stash': {
    answer: 'StashAnswer',
    examples: {
      'fat-quarters': {
        summary: 'Six fat quarters and two yards of flannel',
        input: {
          pieces: [
            { id: 'Quarters', role: 'top', width: 22, length: 18, count: 6 },
            { id: 'Fog flannel', role: 'backing', width: 42, length: '2 yd' },
          ],
          cuts: [6, 8],
        },
      },
    },
  },
  '/v1/kits': {
    answer: 'KitsAnswer',
    examples: {
      shelf: {
        summary: 'Kits for a throw from two bolts of print and one of flannel',
        input: {
          plan: { target: { columns: 4, rows: 5 }, block: { cut: 8 } },
          bolts: [
            { id: 'Blue sprig', role: 'top', width: 44, length: '6 yd', cost: 900 },
            { id: 'Red dots', role: 'top', width: 44, length: '5 yd', cost: 850 },
            { id: 'Fog flannel', role: 'backing', width: 42, length: '12 yd', cost: 700 },
          ],
          perKit: { distinctPrints: 2 },
          costs: { packaging: 150, labour: 400, margin: 40 },
          currency: 'USD',
        },
      },
    },
  },
  '/v1/wash-shrinkage': {
    answer: 'WashAnswer',
    examples: {
      swatches: {
        summary: 'Three swatches, and the size to sew for 50 by 60 inches',
        input: {
          swatches: [
            { fabric: 'sandwich', direction: 'length', before: 10, after: '9 5/8' },
            { fabric: 'sandwich', direction: 'length', before: 10, after: '9 1/2' },
            { fabric: 'sandwich', direction: 'width', before: 10, after: '9 3/4' },
          ],
          wanted: { width: 50, height: 60 },
        },
      },
    },
  },
};
