import { makeCount } from '../make-count.ts';
import type { StepWords } from './en.ts';
import { readFigures, type StepFigures } from './read-figures.ts';
import type { StepsWords } from './source.ts';

const count = makeCount('de');
const list = new Intl.ListFormat('de');
const { format } = new Intl.NumberFormat('de');

const bobbins = ({ number }: StepFigures) =>
  number('bobbins') > 0 ? ` Die Spule läuft dabei ${number('bobbins')}-mal leer.` : '';

const chain = ({ number }: StepFigures) =>
  number('links') > 0
    ? 'Schieb einen Block nach dem anderen unter die Nadel, ohne den Faden abzuschneiden.'
    : 'Schneide den Faden nach jedem Block ab.';

const often = (within: number) =>
  within > 99 ? 'fast alle' : `etwa ${Math.round(within)} von 100`;

const ends = ({ number, length, above }: StepFigures) => {
  const expected =
    number('most') > 0
      ? ` Die Hälfte der Enden verfehlt sich um weniger als ${above('half')}, 95 von 100 um weniger als ${above('most')}; von einem Ende aus wären es ${above('mostFromOneEnd')}.`
      : '';
  if (number('ease') <= 0) return `${expected} Trenn auf, was sich nicht trifft.`;
  return `${expected} Auf ${length('ease')} genau treffen sich ${often(number('within'))}, und so viel wäscht sich aus. Trenn auf, was weiter danebenliegt.`;
};

const steps: Readonly<Record<string, (figures: StepFigures) => StepWords>> = {
  swatch: () => [
    'Einen Probeblock nähen, messen, waschen, wieder messen',
    'Er sagt besser als jede Tabelle, wie dein eigener Stoff einläuft.',
  ],
  prewash: ({ roles }) => [
    `Vorwaschen: ${list.format(roles('roles'))}`,
    'Wasch und trockne den Stoff, wie der Quilt gewaschen werden soll, und bügle ihn glatt.',
  ],
  cut: ({ number, length }) => [
    `${count(number('pieces'), 'Quadrat', 'Quadrate')} von ${length('cut')} zuschneiden`,
    `Schneide quer zum Ballen Streifen von ${length('cut')} und daraus die Quadrate. ${count(number('layers'), 'Lage', 'Lagen')}, Reserve mitgezählt.`,
  ],
  stack: ({ number, fabrics }) => [
    `${count(number('blocks'), 'Block', 'Blöcke')} aus ${count(number('layers'), 'Lage', 'Lagen')} stapeln`,
    `Von unten nach oben: ${fabrics('fabrics').join(', ')}; oben liegt die schöne Seite nach oben. Dreh jeden zweiten Block des Stapels ein wenig, damit sie sich leicht trennen.${number('prints') > 1 ? ` Mach für jedes der ${number('prints')} Muster einen Stapel.` : ''}`,
  ],
  'quilt-first': (figures) => [
    'Die Blöcke von Ecke zu Ecke quilten',
    `Nadel ${figures.text('needle')}. ${chain(figures)}${bobbins(figures)}`,
  ],
  part: () => ['Die Kette trennen', 'Schneide die Fäden zwischen den Blöcken durch.'],
  'quilt-second': (figures) => [
    'Die andere Diagonale quilten',
    `Nun hat jeder Block sein X. ${chain(figures)}${bobbins(figures)}`,
  ],
  snip: (figures) => {
    const { number, length, gap, minutes } = figures;
    const fewer = number('snips') - number('snipsJoined');
    const saved = Math.round(minutes - number('minutesJoined'));
    const later =
      number('blocks') > 1
        ? `Vor dem Zusammennähen geht es leichter; danach ist es der Brauch: beide Nahtzugaben zugleich, ${count(fewer, 'Einschnitt', 'Einschnitte')} weniger${saved > 0 ? `, etwa ${count(saved, 'Minute', 'Minuten')} gespart` : ''}, dafür jeder durch doppelt so viel Stoff.`
        : 'Hör mit jedem Einschnitt ein gutes Stück vor der Naht auf.';
    return [
      `Alle vier Seiten einschneiden: ${count(number('snips'), 'Einschnitt', 'Einschnitte')}`,
      `${length('depth')} tief, im Abstand von ${length('pitch')}, bis zur künftigen Naht bleiben ${gap('clearance')}. ${later}`,
    ];
  },
  layout: ({ number, text }) => [
    `${number('columns')} mal ${number('rows')} Blöcke auslegen und fotografieren`,
    `Steck eine Nadel in den Block oben links${number('prints') > 1 ? `, Muster ${text('topLeft')}` : ''}. Leg gleiche Muster auseinander.`,
  ],
  join: (figures) => [
    `Die Blöcke jeder Reihe verbinden: ${count(figures.number('rows'), 'Reihe', 'Reihen')} zu ${figures.number('columns')}`,
    `Rückseite an Rückseite, mit ${figures.length('seam')} Nahtzugabe, damit die offenen Kanten vorne hochstehen.${bobbins(figures)}`,
  ],
  'join-rows': (figures) => {
    const { number } = figures;
    const [from, to] = [number('from'), number('to')];
    const middle = from < to ? `zwischen Block ${from} und ${to}` : `an Block ${from}`;
    return [
      'Reihe an Reihe nähen',
      `Fang in der Mitte an, ${middle}: Leg sie genau aufeinander und steck nach beiden Seiten.${ends(figures)}${bobbins(figures)}`,
    ];
  },
  border: (figures) => [
    'Einmal um den ganzen Quilt nähen',
    `${figures.length('seam')} neben der Kante, ${figures.number('passes')}-mal, jede Runde ${figures.length('perimeter')}. Schneide dann ein, was am Rand noch ganz ist.${bobbins(figures)}`,
  ],
  trim: () => ['Lose Fäden abschneiden', 'Vorne und hinten, vor der ersten Wäsche.'],
  wash: ({ mass, text }) => [
    'Waschen, ausschütteln, trocknen, Flusen wegputzen',
    `Nass wiegt er etwa ${format(mass('wet'))} ${text('unit')}. Schüttle ihn zwischen Waschmaschine und Trockner draußen aus. Die Fransen werden mit jeder Wäsche weicher.`,
  ],
};

/** Wie die Arbeitsschritte auf Deutsch gesagt werden. */
export const de: StepsWords = {
  language: 'de',
  say: (step, manner) =>
    (Object.hasOwn(steps, step.id) && steps[step.id]?.(readFigures(step, manner))) || [
      step.do,
      step.detail,
    ],
};
