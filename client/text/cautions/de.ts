import type { CautionCode } from '#core/contract.ts';
import { makeCount } from '../make-count.ts';
import type { CautionFigures, SaidCaution } from './en.ts';
import type { CautionsWords } from './source.ts';

type Say = (severity: SaidCaution['severity'], figures: CautionFigures) => string;

const count = makeCount('de');

const sentences: Readonly<Record<CautionCode, Say>> = {
  'rotary-cutter': () =>
    'Ein Rollschneider ist eine Klinge: Schneide von dir weg, halte die Finger von der Kante des Lineals fern und schließ die Klinge jedes Mal, wenn du ihn ablegst.',
  'repetitive-snipping': (_, { snips }) =>
    `In diesem Quilt sind ${snips === undefined ? 'viele Einschnitte' : count(snips, 'Einschnitt', 'Einschnitte')}. Nimm eine scharfe Schere, die von selbst aufspringt, wechsle die Hand und ruh dich aus, bevor es wehtut.`,
  'needle-at-crossings': (_, { thickness, needle }) =>
    `Wo sich vier Ecken treffen, liegt ${thickness === undefined ? 'viel' : `etwa ${thickness}`} Stoff unter dem Nähfuß. Nimm ${needle === undefined ? 'eine starke Nadel' : `eine Nadel ${needle}`}, näh dort langsam oder dreh das Handrad, und trag eine Brille: Nadeln brechen.`,
  'snip-near-seam': (severity, { clearance }) => {
    const left = clearance === undefined ? 'wenig' : clearance;
    if (severity === 'danger') {
      return `Zwischen Einschnitt und Naht bleibt hier nur ${left}: Ein Ausrutscher zerschneidet die Naht, und der Quilt geht in der Wäsche auf. Schneide weniger tief ein oder nimm mehr Nahtzugabe.`;
    }
    if (severity === 'care') {
      return `Zwischen Einschnitt und Naht bleibt ${left}. Mach langsam, und näh jede Naht nach, die du triffst.`;
    }
    return `${clearance === undefined ? '' : `Zwischen Einschnitt und Naht bleiben ${clearance}. `}Hör mit jedem Einschnitt ein gutes Stück vor der Naht auf.`;
  },
  'infant-sleep': (severity) =>
    severity === 'danger'
      ? 'Nicht für ein schlafendes Baby. In den ersten zwölf Monaten gehört kein Quilt, keine Decke und kein anderes loses Bettzeug an seinen Schlafplatz: eine feste, flache Matratze, ein straffes Spannbetttuch, das Baby auf dem Rücken. Nimm diesen Quilt zum Spielen auf dem Boden, solange du dabei bist, und für später. Lose Fäden und Fransen gehören nicht in den Mund eines Babys.'
      : 'Kein Quilt gehört an den Schlafplatz eines Babys unter zwölf Monaten.',
  'dryer-lint': () =>
    'Frische Fransen lassen sehr viele Flusen. Reinige das Flusensieb des Trockners nach jeder Ladung und auch das der Waschmaschine; lass nie einen Trockner mit verstopftem Sieb laufen. In den USA wurden von 2008 bis 2010 jedes Jahr etwa 2900 Brände von Trocknern in Wohnhäusern gemeldet, an erster Stelle, weil nicht gereinigt war.',
  'washer-load': (_, { machine }) =>
    `Dieser Quilt ist schwer für eine Haushaltswaschmaschine, vor allem nass. Bring ihn ${machine === 'laundry' ? 'in einen Waschsalon mit gewerblichen Maschinen' : 'zu einer großen Maschine'}, und vergleich sein trockenes Gewicht mit der Ladung, für die sie gebaut ist.`,
  flammability: () =>
    'Gerauter und gefranster Stoff fängt leichter Feuer als glatter. Halt ihn von offenen Flammen und Heizgeräten fern, und frag die Behörde bei dir, bevor du verkaufst.',
  'selling-children': () =>
    'Was für Kinder verkauft wird, braucht in vielen Ländern eine Prüfung, eine Erklärung und ein Etikett, das die Herkunft nachweist. Frag die Behörde dort, wo du verkaufst.',
  'label-rules': (_, { isDraftLabel }) =>
    isDraftLabel === true
      ? 'Dieses Etikett ist ein Entwurf. Die Regeln zur Faserangabe sind von Land zu Land verschieden, und die Fasern hier sind die, die solcher Stoff meist hat: Richte dich nach dem Ballen, und frag die Behörde dort, wo du verkaufst.'
      : 'Angaben zu Fasern und Pflege sind von Land zu Land anders geregelt. Sieh nach, was dort gilt, wo du verkaufst.',
  'dye-bleed': () =>
    'Dunkler und roter Stoff kann in der ersten Wäsche ausfärben. Mach einen Rest nass, drück ihn auf weißen Stoff, und wasch vor, was abfärbt.',
  'unmeasured-shrink': () =>
    'Einiges am Einlaufen beruht auf einer Tabelle von Stoffen und nicht auf deinem Stoff. Quilte und wasche einen Probeblock aus deinem eigenen Stoff, dann weißt du mehr.',
};

/** Wie Vorsicht auf Deutsch gesagt wird. */
export const de: CautionsWords = {
  language: 'de',
  say: ({ code, severity, text }, figures) =>
    (Object.hasOwn(sentences, code) && sentences[code as CautionCode](severity, figures)) || text,
};
