import { tellHeight } from './tell-height.ts';

/* The script of a page for frames; beside the one that brings its element it is all that there is. */
if (parent !== window) {
  if (document.readyState !== 'loading') tellHeight(parent);
  else document.addEventListener('DOMContentLoaded', () => tellHeight(parent), { once: true });
}
