import { startMaker } from './start-maker.ts';

/* The script of the page that makes snippets. */
const root = document.querySelector<HTMLElement>('#maker');
if (root !== null) startMaker(root, location.origin);
