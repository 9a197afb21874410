/** What the maker of snippets says; it speaks to whoever builds a page, in English alone so far. */
export const en = {
  view: 'What to show',
  views: {
    size: 'Size: a size becomes blocks and cloth to buy',
    yardage: 'Yardage: how much to buy for pieces on a roll',
    wash: 'Wash: what washing does, and what to sew for',
    layout: 'Layout: where each print goes',
    plan: 'Plan: all of it, from wish to work',
  },
  start: 'What it begins with',
  startHint: 'Leave blank what your reader should choose.',
  fields: {
    unit: 'Measured in',
    'target.size': 'Size',
    'target.width': 'Width, in place of a named size',
    'target.height': 'Height, in place of a named size',
    'block.cut': 'Cut of a block',
    'block.seam': 'Seam allowance',
    washes: 'Washes',
    'fabrics.0.id': 'Name of the cloth',
    'fabrics.0.width': 'Width of the cloth',
    'fabrics.0.pieces.0.id': 'Name of a piece',
    'fabrics.0.pieces.0.width': 'Width of a piece',
    'fabrics.0.pieces.0.length': 'Length of a piece',
    'fabrics.0.pieces.0.count': 'How many',
    'wanted.width': 'Width wanted after the wash',
    'wanted.height': 'Height wanted after the wash',
    columns: 'Blocks across',
    rows: 'Blocks down',
    'prints.0.id': 'First print',
    'prints.1.id': 'Second print',
    'prints.2.id': 'Third print',
  },
  any: 'as it comes',
  fix: (name: string) => `Fix: ${name}`,
  fixTitle: 'What your reader cannot change',
  fixHint:
    'A kit has one block: fix it, and let the size be chosen. What is left blank cannot be fixed.',
  look: 'Language and look',
  language: 'Language',
  languages: {
    '': 'that of your page',
    en: 'English',
    es: 'Español',
    de: 'Deutsch',
    fr: 'Français',
  },
  currency: 'Currency of prices, such as EUR',
  scheme: 'Light or dark',
  schemes: { '': 'as your reader has it', light: 'light', dark: 'dark' },
  colors: { ink: 'Text', sheet: 'Cards', ground: 'Behind them', madder: 'Buttons' },
  own: (name: string) => `${name}: a colour of your own`,
  preview: 'How it will be',
  previewHint:
    'It runs here as it would on the strictest of pages: in a sandbox without an origin, no script and no style of the page itself, nothing kept.',
  previewTitle: 'Preview',
  copy: 'Copy',
  copyOf: (name: string) => `Copy: ${name}`,
  copied: 'Copied.',
  selected: 'It is selected: copy it with the keys or the menu of your device.',
  snippets: {
    script: [
      'Script and tag',
      'For a page of your own, a shop theme, or any page that may have a script. It grows and shrinks with what is in it.',
    ],
    frame: [
      'Frame',
      'For a page that takes no script but a frame. It scrolls inside if it needs more room.',
    ],
    address: [
      'Address',
      'For a blog: paste it on a line of its own. A blog that knows oEmbed makes a frame of it; anywhere else it is a link.',
    ],
    picture: [
      'Picture',
      'A drawing to scale that needs no script at all, for letters and feeds too.',
    ],
  },
  notes: 'Where to put it',
  hosts: [
    [
      'A page you write yourself',
      'Put script and tag where the calculator shall be. The script may stand anywhere, and once is enough for any number of tags.',
    ],
    [
      'The theme of a shop',
      'Put the script into the head of the theme once, and the tag into the template or a block of custom HTML. Inside a form the tag sends its answer along under its name, and the event ragbloom-size tells your cart.',
    ],
    [
      'A blog that knows oEmbed',
      'Paste the address on a line of its own. If nothing but a link appears, use the frame in a block of custom HTML.',
    ],
    [
      'A page builder that strips scripts',
      'Use the frame in whatever it calls embedded code. If it takes no frame either, use the picture with its link.',
    ],
    [
      'A policy of your own',
      'A strict Content Security Policy needs the address of this service in script-src, connect-src and img-src, or in frame-src for a frame, and the style goes into your own sheet.',
    ],
  ],
} as const;

export type MakerWords = typeof en;
