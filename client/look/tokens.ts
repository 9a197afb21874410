/**
 * The look in one place: warm undyed ground, ink nearly blue-black, one madder for the thing to do, one leaf
 * for enough. Each is for light and for dark; which of them holds is the host page's `color-scheme`.
 */
export const TOKENS = `
--ragbloom-ground: light-dark(#f1e9da, #151a24);
--ragbloom-sheet: light-dark(#fdf9f0, #1f2531);
--ragbloom-ink: light-dark(#1b2233, #ece5d6);
--ragbloom-soft: light-dark(#555b69, #b3b5ba);
--ragbloom-line: light-dark(#d8ccb6, #3c4454);
--ragbloom-edge: light-dark(#8b806c, #7e8696);
--ragbloom-madder: light-dark(#a3302c, #f0988a);
--ragbloom-on-madder: light-dark(#fff9ef, #2b0d0a);
--ragbloom-leaf: light-dark(#2a6539, #93cf9f);
`;
