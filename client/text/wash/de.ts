import type { LayerPull, Role, SwatchNote } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { WashWords } from './source.ts';

const count = makeCount('de');

const few: Readonly<Record<number, string>> = { 1: 'eine Wäsche', 2: 'zwei Wäschen' };
const times = (washes: number) => few[washes] ?? count(washes, 'Wäsche', 'Wäschen');
const along = { length: 'Längs', width: 'Quer' } as const;
const layers: Readonly<Record<Role, string>> = {
  top: 'Die Oberseite',
  middle: 'Die Zwischenlage',
  backing: 'Die Rückseite',
};

const cures: Readonly<Record<Role, string>> = {
  top: 'wasch den Stoff der Oberseite vor',
  middle: 'nimm eine andere Zwischenlage oder wasche einen Probeblock',
  backing: 'wasch den Stoff der Rückseite vor',
};

const notes: Readonly<Record<SwatchNote, string>> = {
  'one-specimen':
    'Ein einziges Paar Marken: Über die Streuung sagt das nichts. Eine zweite Probe täte es.',
  'coarse-reading':
    'Die Änderung ist so klein, dass das Lineal sie verwischt. Setz die Marken weiter auseinander oder lies feiner ab.',
  'grew-back':
    'Sie ist weniger eingelaufen als nach weniger Wäschen. Das tut Stoff selten; miss lieber noch einmal.',
};

const pulls: Readonly<Record<LayerPull['says'], string>> = {
  tight: 'spannt: Sie will mehr einlaufen, als der Quilt sie lässt.',
  even: 'liegt glatt.',
  puckers: 'wird sich kräuseln: Der Quilt läuft mehr ein als sie allein.',
};

/** Was die Seite über die Wäsche außer dem sagt, was alle Elemente sagen, auf Deutsch. */
export const de: WashWords = {
  language: 'de',
  along,
  times,
  swatches: {
    title: 'Proben',
    example: 'Diese Proben sind aus einem Laden, den es nicht gibt. Überschreib sie, oder',
    clear: 'fang mit einer leeren Tabelle an',
    cloth: 'Stoff',
    own: 'Ein eigener Name',
    ownName: 'Sein Name',
    sandwich: 'Ein gequilteter Probeblock',
    washed: 'Wäschen',
    before: 'Davor',
    after: 'Danach',
    row: (index) => `Probe ${index}`,
    cell: (index, way, end) => `Probe ${index}, ${along[way].toLowerCase()}, ${end.toLowerCase()}`,
    fault: (way, end) => `${along[way]}, ${end.toLowerCase()}`,
    diagonals: 'Diagonalen, für den Verzug',
    diagonal: (index, name) => `Probe ${index}, Diagonale ${name}`,
    explainDiagonals: 'Nach der Wäsche von Ecke zu Ecke des Quadrats: A bis C, dann B bis D.',
    waits: 'Ein Paar mit einer Zahl wartet auf die zweite.',
    add: 'Noch ein Stoff',
    remove: (name) => `${name} wegnehmen`,
    unused:
      'Keine Lage des Quilts ist aus diesem Stoff: Er wird gemessen, der Quilt bleibt, wie er ist.',
  },
  ruler: {
    shrinks: 'läuft ein um',
    grows: 'wächst um',
    mean: (low, high) => `Das Mittel liegt zwischen ${low} und ${high};`,
    next: (low, high, sure) => `ein neues Stück zwischen ${low} und ${high}, ${sure}-mal von 100.`,
    count: (n, sd) => `${n} gemessen, Streuung ${sd}.`,
    reading: (blur) => `Schon das Lineal verwischt eine Messung um ${blur}.`,
    usual: 'Gestrichelt ist, was die Tabelle für die erste Wäsche annimmt:',
    usualOf: (way, usual, low, high) => `${along[way].toLowerCase()} ${usual}, ${low} bis ${high}`,
    label: (way, change) => `${way}: ${change}`,
    notes,
  },
  quilt: {
    title: 'Dein Quilt',
    kind: 'Meine Größe ist',
    kinds: { wanted: 'gewünscht, gewaschen', sewn: 'schon genäht' },
    width: 'Breite',
    height: 'Länge',
    none: 'Keine',
    prewashed: (role) => `${role} wird vor dem Zuschneiden gewaschen`,
    more: 'Wie sicher, wie genau',
    washes: 'Von diesen Wäschen erzählen',
    washesHint: 'Nach der ersten richtet sich die Größe.',
    fit: 'So nah muss es kommen',
    confidence: 'So oft richtig',
    turned: 'Jeder zweite Block gedreht, damit er in beide Richtungen gleich einläuft',
  },
  result: {
    label: 'Der Quilt vorher und nachher',
    sew: 'Nähen',
    sewn: 'Genäht',
    after: (washes) => `Nach ${times(washes).replace('eine', 'einer')}`,
    either: 'Mehr oder weniger',
    shrink: 'Läuft ein',
    drawing: (sewn, washed) => `Zwei Umrisse im Maßstab: genäht ${sewn}, gewaschen ${washed}.`,
    shown: 'Gezeichnet nach so vielen Wäschen',
    columns: (unit) => ['Wäschen', `Größe, ${unit}`, 'Kleinste', 'Größte'],
    percentColumns: ['Wäschen', 'Läuft ein, Breite und Länge', 'Mindestens', 'Höchstens'],
    nearest: (columns, rows, cut) =>
      `Am nächsten in ganzen Blöcken: ${columns} quer, ${rows} längs, Zuschnitt ${cut}.`,
    nearestSize: (sewn, washed, fit) => `Das sind genäht ${sewn} und gewaschen ${washed}: ${fit}.`,
    fit: {
      width: ['breiter', 'schmaler', 'gleich breit'],
      height: ['länger', 'kürzer', 'gleich lang'],
    },
    exact: (sewn) => `Genau wäre genäht ${sewn}.`,
    plan: 'Diesen Quilt mit diesen Proben planen',
    halve: (blocks) =>
      `${count(blocks, 'gequilteter Probeblock', 'gequiltete Probeblöcke')}, gewaschen und in beide Richtungen gemessen: So würde der Zweifel halb so groß.`,
    noHalve:
      'Keine Zahl von Probeblöcken halbiert den Zweifel: So verschieden ist der Stoff selbst.',
    keys: { sewn: 'genäht', washed: 'gewaschen', doubt: 'kleinste bis größte' },
  },
  course: {
    title: 'Wäsche für Wäsche',
    drawing: (washes) =>
      `Einlaufen in Prozent über ${count(washes, 'Wäsche', 'Wäschen')}, eine Linie je Stoff.`,
    washes: 'Wäschen',
    shrink: 'Einlaufen, %',
    quilt: 'Der Quilt',
    quiltAcross: 'Der Quilt, Breite',
    quiltDown: 'Der Quilt, Länge',
    limit: (limit) => `strebt gegen ${limit}`,
    error: (error) => `angepasst auf ${error}`,
    key: 'Punkte sind gemessen, Linien angepasst. Die Balken zeigen, wie weit der Quilt danebenliegen kann.',
  },
  advice: {
    title: 'Wie die Lagen sich vertragen',
    pull: (role, says) => `${layers[role]} ${pulls[says]}`,
    by: (length, width) => `${length} längs, ${width} quer, in Prozentpunkten`,
    prewash: 'Vorwaschen',
    noPrewash: 'Vorwaschen ist nicht nötig',
    why: ({ reasons }, tight) => {
      const pulled = reasons.includes('pull')
        ? `Die Lagen ziehen zu weit auseinander: ${cures[tight ?? 'backing']}, sonst kräuselt sich die andere Seite.`
        : '';
      const doubted = reasons.includes('doubt')
        ? 'Die gewaschene Größe ist weniger sicher, als du es brauchst: Wasch vor, oder miss mehr Proben.'
        : '';
      return [
        pulled ||
          (doubted === '' ? 'Die Lagen ziehen kaum auseinander: Sie setzen sich zusammen.' : ''),
        doubted,
      ]
        .join(' ')
        .trim();
    },
    skew: 'Verzug',
    skewText: (cloth, skew, lean, side) =>
      `${cloth}: ${skew}. Ein Block von ${side} neigt sich um ${lean}.`,
    drawing:
      'Ein Block, so gerade wie zugeschnitten und so schief wie er wird; vierfach übertrieben.',
  },
  marking: {
    title: 'Markieren, waschen, messen',
    drawing: (marks, specimen) =>
      `Eine Probe von ${specimen} im Quadrat, in jede Richtung dreimal im Abstand von ${marks} markiert, mit Abstand zu den Webkanten geschnitten.`,
    selvage: 'Webkante',
    tenth: 'ein Zehntel der Breite',
    roll: 'längs des Ballens',
    steps: (marks, specimen, far) => [
      `Schneide eine Probe von ${specimen} im Quadrat fadengerade zu, nicht aus dem Zehntel der Breite neben den Webkanten.`,
      `Markiere längs des Ballens drei Paare von Punkten im Abstand von ${marks} und quer noch einmal drei. ${far}`,
      'Notiere, in welche Richtung der Ballen läuft. Versäubere die Kanten.',
      'Wasche und trockne sie so, wie du es mit dem Quilt tun wirst. Lass sie eine Stunde flach liegen.',
      'Miss dieselben Paare noch einmal, auf einen Achtelzoll oder Millimeter, und gib sie ein.',
    ],
    far: {
      in: 'Marken mit 18 in Abstand auf 24 in lassen sich feiner ablesen.',
      cm: 'Marken mit 46 cm Abstand auf 61 cm lassen sich feiner ablesen.',
    },
    rows: 'Paare auf einer Probe sagen, wie genau du misst. Proben von anderen Stellen des Ballens sagen, wie verschieden der Stoff ist: drei sind gut.',
    source: 'Nach AATCC TM135 und ISO 5077.',
    print: 'Probenblatt drucken',
    why: (marks) =>
      `Das Blatt trägt Marken im Abstand von ${marks}, mehr passt nicht auf Letter und A4 zugleich. Die Änderung ist ein Prozentsatz, also geht jeder Abstand.`,
  },
  sheet: {
    title: 'Probenblatt',
    check: 'Druck mit 100 %. Miss zuerst diese Linie:',
    checkAfter: 'Ist sie nicht so lang, schalte „An Seite anpassen“ aus und druck noch einmal.',
    how: 'Leg das Blatt auf den Stoff. Stich mit einer Nadel durch die Mitte jedes Kreuzes, setz dort einen Punkt auf den Stoff, und markiere, wie der Ballen läuft.',
    cloth: 'Stoff',
    date: 'Datum',
    washes: 'Wäschen',
    roll: 'längs des Ballens',
    apart: (marks) => `Abstand ${marks}`,
    before: 'Vorher',
    after: 'Nachher',
    alongRow: ['Längs 1', 'Längs 2', 'Längs 3'],
    acrossRow: ['Quer 1', 'Quer 2', 'Quer 3'],
  },
  table: {
    title: 'Was die Tabelle annimmt',
    columns: ['Stoff', 'Längs', 'Quer'],
    explain: 'Prozent, die er in der ersten Wäsche einläuft, bis du misst.',
  },
  notes: { cautions: 'Bevor du wäschst', assumptions: 'Was wir angenommen haben' },
  stale: 'Zu sehen sind noch die Zahlen von vorher.',
  ready: (figures) => `Gerechnet: ${figures}.`,
};
