import type { YardageWords } from './source.ts';

/** Was der Stoffbedarf außer dem sagt, was alle kleinen Elemente sagen, auf Deutsch. */
export const de: YardageWords = {
  title: 'Wie viel Stoff?',
  width: 'Stoffbreite',
  selvage: 'Webkante, je Seite ab',
  left: 'Rest auf dem Ballen',
  unknown: 'unbekannt',
  pieces: 'Teile zum Zuschneiden',
  across: (name) => `${name}, quer`,
  along: (name) => `${name}, längs`,
  count: (name) => `${name}, wie viele`,
  size: (name, size, pieces) => `${name}: ${pieces} zu ${size}`,
  add: 'Noch ein Maß',
  remove: (name) => `${name} weglassen`,
  buy: 'Kaufen',
  cutInto: (length) => `${length} davon werden zugeschnitten`,
  enough: 'Der Rest auf dem Ballen reicht.',
  short: 'Der Rest auf dem Ballen reicht nicht. Er gibt:',
  strips: 'Quer in Streifen geschnitten',
  strip: (strips, height) => `${strips} × ${height} hoch`,
  turned: 'gedreht',
  rest: (width) => `${width} bleiben übrig`,
  cost: 'Kosten des Stoffs',
  drawn: 'Die Schnitte im Maßstab',
  drawing: (strip) => `Ein Streifen: ${strip}.`,
  ready: (amount) => `Kauf ${amount}.`,
};
