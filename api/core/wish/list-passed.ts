/** Words that ask for nothing by themselves, in the languages of the pages. */
const FILLERS: ReadonlySet<string> = new Set(
  [
    'a an the this that some my our your his her their its me us i we it is be are in on of for to from at as with and or',
    'by about around roughly approx circa please want wants need needs would like make made making size sized bed mattress',
    'quilt quilts throw throws rag blanket piece one made-up something drop hanging hangs finished cut sewn seam seams block blocks square squares tell',
    'un una unos unas el la los las mi para de del con y o por favor quiero colcha manta cama tamaño unos cerca aproximadamente',
    'ein eine einen einem einer der die das den mein meine meinen für von mit und oder bitte etwa ungefähr circa decke bett größe aus ich möchte',
    'le les des du mon ma mes pour avec et ou s’il vous plaît environ plaid lit taille je veux voudrais couette couverture patchwork',
  ].flatMap((line) => line.split(' ')),
);
/** Between two things that are said: what was understood leaves a dot behind. */
const BREAK = /[\s·,;:!?()]+/u;
/** What may stand at the edge of a word and says nothing. */
const EDGE = /^[\s.·'"“”„«»’~=&+*–—-]+|[\s.·“„«»’'~=&+*–—-]+$/gu;

/**
 * The words of a wish that nothing was made of, in their order: what stood side by side stays together,
 * words that ask for nothing are left out.
 *
 * @param rest the words of the wish, with a `·` where something was understood
 *
 * @example
 * listPassed('a ·  · for the reading room, scalloped') // => ['reading room', 'scalloped']
 */
export function listPassed(rest: string): readonly string[] {
  return rest
    .split(/[·,;:!?()]+|\.(?=\s|$)/u)
    .flatMap(groupWords)
    .filter((phrase, at, all) => all.indexOf(phrase) === at);
}

function groupWords(part: string): readonly string[] {
  const groups: string[][] = [[]];
  for (const spelt of part.split(BREAK)) {
    const word = spelt.replace(EDGE, '');
    if (FILLERS.has(word.toLowerCase())) groups.push([]);
    else if (word !== '') groups.at(-1)?.push(word);
  }
  return groups.filter(({ length }) => length > 0).map((words) => words.join(' '));
}
