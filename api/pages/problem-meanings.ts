import type { ProblemKind } from '../http/problem-kinds.ts';

/** What each kind of problem means and what to do about it, in plain words. */
export const PROBLEM_MEANINGS: Readonly<Record<ProblemKind, string>> = {
  'malformed-json':
    'The body of the request is not JSON in UTF-8. Look for a missing bracket, quote or comma, and send one JSON object.',
  'malformed-query':
    'What stands after the question mark cannot be read. Write each part as its dotted name, as in target.width=40; count the places of a list from 0 with none left out; percent-encode signs that are not letters or digits. A request with a body takes no query at all.',
  'wrong-content-type':
    'Input is taken as JSON alone and uncompressed. Send it with the header Content-Type: application/json.',
  'body-too-large':
    'The body is larger than any input needs to be. The detail says how many bytes are taken.',
  'too-deep':
    'Lists and groups stand in one another deeper than any input needs to. The detail says how deep they may.',
  'not-found': 'No page, picture or calculation has this address. Look for a slip in its spelling.',
  'wrong-method':
    'The address is right, but it does not take this method. The header Allow names those that it takes.',
  internal:
    'The service made a mistake of its own, which no input should bring about. Try again later; the id in the answer finds the mistake in our log.',
  'unknown-key':
    'The input has a part that means nothing here. It is refused and not passed over, so that a slip in a name does not go unseen. Look at the spelling, or leave it out.',
  'repeated-key':
    'One part is given twice, and which of the two counts would be a guess. Give it once.',
  missing: 'A part is left out that has no default. Give it.',
  'wrong-type':
    'A value is of another kind than is wanted, such as text where a number belongs. Numbers are plain decimals: 0x10, 1e3 and NaN are text in a query.',
  'not-one-of': 'The value is not in the short list of those known. The detail lists them.',
  empty: 'A value is there but says nothing. Give one, or leave the part out to have its default.',
  'too-short':
    'A list has too few entries, or a text too few letters. The detail says how many it needs.',
  'too-long':
    'A list has too many entries, or a text too many letters. The detail says how many there may be.',
  'not-whole': 'Things that are counted cannot be broken: give a whole number.',
  'too-small': 'The value is below what can be worked with. The detail says the least.',
  'too-large': 'The value is above what can be worked with. The detail says the most.',
  'bad-name':
    'A name takes any letters and signs on one line; a colour is a hash and six digits from 0 to f, as in #c04030.',
  'not-a-length':
    'A length is a number, or text such as 8 1/2, 8½, 21,5, 21.5 cm, 0.75 yd or 8 1/2". This is none of them.',
  'unclear-comma':
    'In 1,250 the comma may set off thousands or decimals, and the two differ a thousandfold. Write 1250 or 1.25.',
  'negative-length':
    'Nothing is shorter than nothing. Leave out the minus; a dash between whole number and fraction, as in 8-1/2, is no minus.',
  'zero-parts':
    'The lower figure of a fraction says into how many parts a whole is cut, and 0 parts are none. Write it as in 8 1/2.',
  'two-lengths':
    'Where one length belongs stand two numbers, as in 40 x 50 or 1 250. Give one. A length in two terms names both units, the larger first: 4 ft 2 in.',
  'unknown-unit':
    'After the number stands a word that is no unit of length here. Known are in, ft, yd, mm, cm and m, written out too, in English, German, Spanish and French.',
  'target-unclear':
    'A plan needs the size wished for, said in one way and no more: width and height, the name of a size, the measures of a bed, or columns and rows.',
  'size-not-in-region':
    'Beds of the same name differ between regions, and not every name is sold in each. The detail lists those that are.',
  'seam-eats-face':
    'Each block loses its seam allowance at both sides. If two allowances are as wide as the block, nothing of it can be seen. Cut larger blocks or sew narrower seams.',
  'snips-reach-stitching':
    'Snips cut into the seam allowance to make fringe. As deep as the allowance, they cut the stitching too and the quilt falls apart. Snip less deep.',
  'roll-too-narrow':
    'A piece is wider than the cloth between its selvages, after prewashing. Choose a wider cloth or cut smaller.',
  'layers-unfit':
    'A quilt has one top, one backing, and at most two layers between. Give the layers so.',
  'repeated-id':
    'Two things have the same name, so an answer could not tell them apart. Give each its own.',
  'counts-do-not-sum':
    'Where the blocks of a print are counted, all prints must be, and together they must make all the blocks of the quilt.',
  'quilt-too-large':
    'The quilt would have more blocks or longer sides than can be planned. The detail says how large it may be.',
  'after-unlikely':
    'A size after washing is so far from the size before that it is more likely misread than true. Measure again.',
  'wish-unclear':
    'The sentence names no size that can be understood. Say one as 40 by 50 inches, or as queen.',
  'mixed-currencies':
    'Sums of money can only be added in one currency. Change the prices over first, or leave some of them out.',
  'price-unclear':
    'A price follows from a margin, from a markup, or is given outright. Two of them at once would contradict each other. Give one.',
  'percents-do-not-sum':
    'The parts of a whole must make 100 percent together. Look for a part left out or counted twice.',
  'too-many-requests':
    'More requests came from one address in a minute than the service answers. Wait as long as the header Retry-After says. Whoever needs much can ask for many things at once at /v1/batch, keep answers (they never change while the engine stays), or run the service itself.',
  'unknown-format':
    'What may be embedded is described as JSON or as XML and in no other format. Ask with format=json, with format=xml, or leave it out.',
  'several-faults':
    'More than one thing is wrong. All are told in one answer: each entry of errors names its place and what would make it right.',
};
