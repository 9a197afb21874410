/** What the plan says beside the words that all elements share, in English. */
export const en = {
  language: 'en',
  kinds: { own: 'My own size', bed: 'My own mattress', grid: 'So many blocks' },
  states: { sewn: 'Sewn', washed: 'Washed' },
  side: (name: string, state: string) => `${name}, ${state.toLowerCase()}`,
  entries: {
    width: 'Width',
    height: 'Length',
    'bed.width': 'Mattress width',
    'bed.length': 'Mattress length',
    'bed.drop': 'Hang at the sides',
    'bed.footDrop': 'Hang at the foot',
    columns: 'Blocks across',
    rows: 'Blocks down',
  },
  wish: {
    title: 'Your wish',
    label: 'In your own words',
    example: 'a throw, 40 by 50 inches',
    go: 'Plan it',
    kind: 'Size',
    region: 'Region',
    blocks: (columns: number, rows: number) => `${columns} × ${rows} blocks`,
    at: 'This size is',
    read: (what: string) => `Read as ${what}. Blocks and cloth are set below.`,
    passed: (words: string) => `Passed over: ${words}.`,
  },
  plan: 'Your plan',
  drawing: (across: number, down: number, size: string) =>
    `The quilt to scale: ${across} blocks across, ${down} down, ${size}.`,
  figures: { blocks: 'Blocks', each: 'cut', cloth: 'Cloth', work: 'Work' },
  fit: {
    width: ['wider than your wish', 'narrower than your wish', 'As wide as your wish'],
    height: ['longer', 'shorter', 'as long'],
  } as Readonly<Record<'width' | 'height', readonly [string, string, string]>>,
  between: (from: string, to: string) => `Cloth varies: ${from} to ${to}.`,
  others: 'Other plans that fit',
  moreOthers: 'More',
  stale: 'The plan shown is the one from before.',
  ready: (across: number, down: number, figures: string) =>
    `Planned: ${across} by ${down} blocks, ${figures}.`,
};
