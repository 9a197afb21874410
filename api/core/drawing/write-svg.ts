import { escapeText } from './escape-text.ts';
import type { Drawing, Shape } from './shape.ts';

/**
 * A drawing as the text of an SVG file, with no script and no style sheet.
 *
 * @param drawing in millimetres.
 * @param words its name and what it shows, for those who do not see it; any text, escaped here.
 *
 * @example
 * writeSvg({ box: { x: 0, y: 0, width: 10, height: 10 }, shapes: [] }, { title: 'A < B', description: '' }).includes('A &lt; B') // => true
 */
export function writeSvg(
  { box, shapes }: Drawing,
  words: { readonly title: string; readonly description: string },
): string {
  const view = `${box.x} ${box.y} ${box.width} ${box.height}`;
  return (
    `<svg xmlns="http://www.w3.org/2000/svg" viewBox="${view}" role="img" aria-labelledby="title desc" ` +
    'font-family="system-ui,sans-serif" fill="none">' +
    `<title id="title">${escapeText(words.title)}</title><desc id="desc">${escapeText(words.description)}</desc>` +
    `${shapes.map(writeShape).join('')}</svg>\n`
  );
}

function writeShape(shape: Shape): string {
  if (shape.kind === 'text') {
    const { x, y, size, turn, rim } = shape;
    const attributes = writeAttributes({
      class: shape.part,
      x,
      y,
      fill: shape.fill,
      stroke: rim,
      'stroke-width': rim === undefined ? undefined : size / 4,
      'paint-order': rim === undefined ? undefined : 'stroke',
      'font-size': size,
      'text-anchor': 'middle',
      'dominant-baseline': 'central',
      transform: turn === undefined ? undefined : `rotate(${turn} ${x} ${y})`,
    });
    return `<text${attributes}>${escapeText(shape.text)}</text>`;
  }
  const attributes = writeAttributes({
    class: shape.part,
    d: shape.d,
    fill: shape.fill,
    stroke: shape.stroke,
    'stroke-width': shape.breadth,
    'stroke-dasharray': shape.dash,
    'stroke-linecap': shape.round === true ? 'round' : undefined,
    opacity: shape.opacity,
  });
  return `<path${attributes}/>`;
}

function writeAttributes(
  attributes: Readonly<Record<string, string | number | undefined>>,
): string {
  return Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([name, value]) => ` ${name}="${escapeText(String(value))}"`)
    .join('');
}
