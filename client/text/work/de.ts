import { makeCount } from '../make-count.ts';
import type { WorkWords } from './source.ts';

const count = makeCount('de');

/** Was die Ansicht eines Schritts und das Blatt für einen Kurs sagen, auf Deutsch. */
export const de: WorkWords = {
  focus: {
    title: 'Die Arbeit, Schritt für Schritt',
    step: (at, all) => `Schritt ${at} von ${all}`,
    close: 'Zum Plan',
    back: 'Zurück',
    next: 'Fertig, weiter',
    last: 'Alles fertig',
    done: 'Dieser Schritt ist erledigt',
    keys: 'Auf der Tastatur blättern die Pfeile und lassen die Häkchen, wie sie sind.',
  },
  handOut: {
    title: 'Blatt für einen Kurs',
    explain:
      'Zwei Seiten zum Drucken: was mitzubringen ist, und die Schritte mit den Maßen dieses Quilts.',
    heading: 'Überschrift',
    headingExample: 'Nähabend Rag-Quilt, Dienstag um sechs',
    usual: 'Kurs Rag-Quilt',
    pupils: 'Teilnehmende',
    note: 'Eine eigene Notiz, wenn du magst',
    noteExample: 'Bring deine Maschine, ihr Pedal und etwas zu trinken mit.',
    print: 'Zwei Seiten drucken',
    cancel: 'Zum Plan',
    fault: (most) => `Gib eine ganze Zahl an, 1 bis ${most}.`,
    busy: 'Es wird ausgerechnet, was der Kurs braucht.',
  },
  sheet: {
    cloth: 'Stoff',
    squares: (cut) => `Quadrate von ${cut}`,
    each: 'Jede Person kauft',
    ofEach: '(je Stoff)',
    all: (pupils) => `Der Kurs kauft, ${count(pupils, 'Person', 'Personen')}`,
    list: 'Was mitzubringen ist',
    thread: 'Garn, höchstens etwa',
    bobbins: 'Spulen, voll gewickelt',
    needles: (size) => `Maschinennadeln, Stärke ${size}`,
    blades: 'Klingen für den Rollschneider, neu',
    also: 'Und für jede Person: eine Nähmaschine, mit Obertransportfuß, wenn es einen gibt, Rollschneider mit Lineal und Matte, eine Federschere, Stecknadeln, eine Brille.',
    bought: 'Für den Kurs wird jeder Stoff in einem Stück gekauft und gemeinsam zugeschnitten.',
    lacking: (squares) => `es fehlen ${count(squares, 'Quadrat', 'Quadrate')}`,
    sizes: 'Maße',
    blocks: 'Blöcke',
    blocksText: (across, down, all) => `${across} quer, ${down} längs: ${all}`,
    cut: 'Zuschnitt',
    seam: 'Nahtzugabe',
    snips: 'Einschnitte',
    snipsText: (depth, pitch) => `${depth} tief, alle ${pitch}`,
    clearance: 'Bleibt vor der Naht',
    sewn: 'Genäht',
    washed: 'Gewaschen',
    work: 'Arbeit am Tisch',
    weight: 'Gewicht, trocken',
    where: 'Wohin jedes Muster kommt',
    whereText: 'Reihe A liegt oben. Die Nadel steckt im Block oben links.',
    steps: 'Die Arbeit der Reihe nach',
    care: 'Gib acht',
  },
};
