/**
 * Names of properties that stay among the scripts of one build, and that are written there over and over. None is on
 * the wire, in an attribute, an event, a template or a text between quotes; nothing that is
 * fetched later is given out under one, and no object of the browser has one.
 */
const NAMES = [
  // Ours: elements, their state, what their views are given.
  ...['cutInto', 'decide', 'errand', 'findBlank', 'hasUpdated', 'hostFaults', 'isAhead'],
  ...['isAnswer', 'isBusy', 'isDisabled', 'isLocked', 'isMendable', 'isOld', 'isWrong'],
  ...['keepsDraft', 'loadCore', 'lockedPlaces', 'measureIn', 'oddPlaces', 'onChoose', 'onInput'],
  ...['patience', 'performUpdate', 'renderRoot', 'restate', 'sayCaution', 'sayIn'],
  ...['sayLength', 'sayMoney', 'sentences', 'severities', 'tellForm', 'unitQuestion', 'welcome'],
  ...['stale', 'whom', 'willUpdate'],
  // Lit's, which its directives know as well.
  ...['_$AA', '_$AB', '_$AC', '_$AD', '_$AH', '_$AI', '_$AM', '_$AN', '_$AO', '_$AP', '_$AR'],
  ...['_$AS', '_$AT', '_$AU', '_$AV', '_$Cl', '_$Co', '_$Cv'],
  ...['_$litDirective$', '_$litPart$', '_$litType$'],
];

/** By name, what stands for it in every script of a build: no other name begins so. */
export const SHORT_NAMES: Readonly<Record<string, string>> = Object.fromEntries(
  NAMES.map((name, at) => [name, `$${at.toString(36)}`]),
);

const escaped = NAMES.map((name) => name.replaceAll('$', '\\$'));

/** What the bundler is told so that it writes them. */
export const shortNames = {
  mangleProps: new RegExp(`^(?:${escaped.join('|')})$`),
  mangleCache: { ...SHORT_NAMES },
};
