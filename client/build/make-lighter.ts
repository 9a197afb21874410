import { readFile } from 'node:fs/promises';
import { fileURLToPath } from 'node:url';
import { type Plugin, type PluginBuild, transform } from 'esbuild';

const root = fileURLToPath(new URL('../..', import.meta.url));

/**
 * What is used of Lit: its templates and, of its ways to give an element styles, the one that our browsers use; whoever
 * knows `light-dark()` knows constructed style sheets. Its own base of elements stays out, `DrawnElement` being ours.
 */
const LIT = `
export { html, noChange, nothing, render, svg } from 'lit-html';
export const unsafeCSS = (text) => {
  const styleSheet = new CSSStyleSheet();
  styleSheet.replaceSync(text);
  return { styleSheet };
};`;

/** What is set as a block, so that white space beside it does not show. */
const BLOCKS =
  'div|section|p|ul|ol|li|dl|dt|dd|table|thead|tbody|tr|th|td|details|summary|h2|header|fieldset|legend|label|select|option|svg';
const BLANK_AFTER = new RegExp(`(</?(?:${BLOCKS})\\b[^<>\`]*>)\\s*\\n\\s*`, 'g');
const BLANK_BEFORE = new RegExp(`\\s*\\n\\s*(</?(?:${BLOCKS})\\b)`, 'g');

/**
 * Leaves of Lit what is used, and takes the indentation out of our templates and style sheets, which the bundler
 * leaves as it finds it. Once the code around them is minified a line end stands nowhere but in a template, where a
 * space does as well and none beside a block, and in a style sheet nothing at all.
 */
function setup(bundler: PluginBuild): void {
  bundler.onResolve({ filter: /^lit$/ }, () => ({ path: 'lit', namespace: 'used' }));
  bundler.onLoad({ filter: /^lit$/, namespace: 'used' }, () => ({
    contents: LIT,
    resolveDir: root,
  }));
  bundler.onLoad({ filter: /[\\/]client[\\/].*\.ts$/ }, async ({ path }) => {
    const source = await readFile(path, 'utf8');
    const options = { loader: 'ts', minifyWhitespace: true, charset: 'utf8' } as const;
    const { code } = await transform(source, { ...options, target: 'es2022' });
    const isStyle = /[\\/]look[\\/]|-styles\.ts$/.test(path);
    const plain = code.trim().replace(BLANK_AFTER, '$1').replace(BLANK_BEFORE, '$1');
    const contents = isStyle
      ? plain.replace(/\s*\n\s*/g, '').replace(/(?<=[:,]) /g, '')
      : plain.replace(/\s*\n\s*>/g, '>').replace(/\s*\n\s*/g, ' ');
    return { contents, loader: 'js' };
  });
}

/** What the scripts of elements are made lighter by. */
export const makeLighter: Plugin = { name: 'make-lighter', setup };
