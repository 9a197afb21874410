import { escapeText } from '#core/drawing/escape-text.ts';
import type { Fault } from '#core/outcome.ts';
import { describeFault } from '../http/describe-fault.ts';
import type { Seen } from './ask-view.ts';
import { nameField } from './name-field.ts';
import type { Row, Telling } from './telling.ts';

/** Its style sheet comes along, so that no page that has no result in it loads one. */
const SHEET = '<link rel="stylesheet" href="/look/told.css">';

/**
 * A result as plain HTML: figures in tables, what to take care of, the drawing; or what is wrong, in words.
 * It stands inside an element, which shows its own in its place as soon as it runs.
 *
 * @param form HTML of the form to ask again
 * @param isInert it stands in a `noscript`, so that the drawing needs none of its own
 */
export function writeResult(seen: Seen, form: string, isInert = false): string {
  const body = seen.ok ? writeTelling(seen.telling, isInert) : writeFaults(seen);
  return `<div class="told" lang="en">${SHEET}${body}${form}</div>`;
}

function writeTelling(
  { title, tables, steps = [], cautions, image }: Telling,
  isInert: boolean,
): string {
  const named = escapeText(title);
  const warned = cautions.map(
    ({ severity, text }) => `<li class="${severity}">${escapeText(text)}</li>`,
  );
  return (
    `<h2>${named}</h2>${image === undefined ? '' : writeDrawing(image, named, isInert)}` +
    tables.map(({ name, rows }) => writeTable(name, rows)).join('') +
    writeSteps(steps) +
    (warned.length === 0 ? '' : `<h3>Take care</h3><ul>${warned.join('')}</ul>`)
  );
}

/** Where scripts run the element draws, so that the drawing is not fetched. */
function writeDrawing(image: string, named: string, isInert: boolean): string {
  const drawing = `<img src="${escapeText(image)}" alt="${named}">`;
  return isInert ? drawing : `<noscript>${drawing}</noscript>`;
}

function writeSteps(steps: readonly string[]): string {
  if (steps.length === 0) return '';
  return `<h3>The work</h3><ol>${steps.map((step) => `<li>${escapeText(step)}</li>`).join('')}</ol>`;
}

function writeTable(name: string, rows: readonly Row[]): string {
  const lines = rows.map(
    ([head, value]) =>
      `<tr><th scope="row">${escapeText(head)}</th><td>${escapeText(value)}</td></tr>`,
  );
  return `<table><caption>${escapeText(name)}</caption>${lines.join('')}</table>`;
}

function writeFaults({ faults }: Extract<Seen, { readonly ok: false }>): string {
  const items = faults.map((fault) => `<li>${escapeText(sayFault(fault))}</li>`);
  return `<h2>This cannot be worked out yet</h2><ul>${items.join('')}</ul>`;
}

/** A fault by the name of its field, where it has one, and not by its place in the query. */
function sayFault(fault: Fault): string {
  const place = fault.path.join('.');
  const said = describeFault(fault);
  const name = nameField(place)?.name;
  return name !== undefined && said.startsWith(place) ? name + said.slice(place.length) : said;
}
