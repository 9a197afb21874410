import { html, type TemplateResult } from 'lit';
import type { Fault } from '#core/outcome.ts';
import { choiceChips } from '../../fields/choice-chips.ts';
import { noticesView } from '../../fields/notices-view.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import type { TapMode } from './layout-state.ts';
import { askView } from './layout-view-ask.ts';
import { boardView, findScale } from './layout-view-board.ts';
import { countMeetings, figuresView } from './layout-view-figures.ts';
import { floorView } from './layout-view-floor.ts';
import { pressUndo } from './press-key.ts';
import { sayDeed } from './say-deed.ts';

/** Places that have a field of their own, which says what is wrong there. */
const FIELDS = /^(columns|rows|pattern|prints(\.\d+\.(id|count))?)$/;
const MODES: readonly TapMode[] = ['swap', 'pin'];

/** The whole element from its state: what is asked on one side, the grid to change on the other. */
export function layoutView(context: LayoutContext): TemplateResult {
  const { status, words, act, grid } = context;
  const { answer, isBusy } = status;
  const isOld = answer !== undefined && (status.faults.length > 0 || status.trouble !== undefined);
  return html`<div class="table ${isBusy ? 'busy' : ''}">
      <section class="stack see" @keydown=${(event: KeyboardEvent) => pressUndo(event, act)}>
        ${noticesView({
          words: words.light,
          odd: [],
          trouble: status.trouble,
          isOld,
          from: answer && status.from,
          retry: act.retry,
        })}
        ${oddView(context)}
        ${
          grid === undefined || answer === undefined
            ? html`<div class="waiting"></div>`
            : html`${toolsView(context, grid)}${boardView(context, grid)}
                <p class="hidden" role="status" aria-atomic="true">${sayNow(context, grid)}</p>
                ${figuresView(context, grid, answer)}
                <p class="soft off">${words.layout.how}</p>
                <a part="link" class="off" href=${context.address}>${words.layout.link}</a>`
        }
      </section>
      <section class="stack" part="ask">
        <h2>${words.layout.title}</h2>
        ${askView(context)}
      </section>
    </div>
    ${context.isPrinting && grid ? floorView(context, grid) : ''}`;
}

/** What was asked for and cannot be had, and faults that no field shows: each in a sentence of its own. */
function oddView({ status, words, tell }: LayoutContext): TemplateResult {
  const { hostFaults, faults } = status;
  // A row of the grid that had to go leaves a grid with too few rows: that is the same mistake.
  const hasRow = hostFaults.some(({ path }) => path[0] === 'fixed' && path.length > 1);
  const odd = hostFaults.filter(({ path }) => !(hasRow && path.join() === 'fixed'));
  const others = faults.filter(({ path }) => !FIELDS.test(path.join('.')));
  const say = (fault: Fault) =>
    html`<li>${tell(fault)} <small>${fault.path.join('.')}</small></li>`;
  return html`<div role="alert">
    ${odd.length > 0 ? html`<div class="notice"><p>${words.light.host}</p><ul>${odd.map(say)}</ul></div>` : ''}
    ${others.length > 0 ? html`<ul class="fault">${others.map(say)}</ul>` : ''}
  </div>`;
}

function toolsView(context: LayoutContext, grid: ShownGrid): TemplateResult {
  const { board, words, act, isLocked } = context;
  const { layout } = words;
  const { isLarge } = findScale(context, grid.cells[0]?.length ?? 1);
  return html`<div class="tools off">
    <div class="chips">
      <button class="go" ?disabled=${isLocked('seed')} @click=${act.another}>${layout.another}</button>
      <button ?disabled=${board.past.length === 0} @click=${act.undo}>${layout.undo}</button>
      <button ?disabled=${board.future.length === 0} @click=${act.redo}>${layout.redo}</button>
      <button @click=${act.print}>${layout.print}</button>
    </div>
    ${choiceChips<TapMode>({
      name: 'mode',
      legend: layout.mode,
      choices: MODES.map((name) => [name, layout.modes[name]] as const),
      chosen: board.mode,
      onChoose: act.turnTo,
    })}
    ${choiceChips<'whole' | 'large'>({
      name: 'scale',
      legend: layout.size,
      choices: [
        ['whole', layout.sizes.whole],
        ['large', layout.sizes.large],
      ],
      chosen: isLarge ? 'large' : 'whole',
      onChoose: (size) => act.showLarge(size === 'large'),
    })}
  </div>`;
}

/** One sentence for those who hear the page: what was done, else that an answer is there. */
function sayNow({ status, board, words }: LayoutContext, grid: ShownGrid): string {
  if (status.isBusy || status.answer === undefined) return '';
  const { sides, corners } = countMeetings(grid);
  const pairs = sides + (status.answer.input.touch === 'corners' ? corners : 0);
  const columns = grid.cells[0]?.length ?? 1;
  return board.deed === undefined
    ? words.layout.pairs(pairs)
    : sayDeed(words.layout, board.deed, { columns, pairs });
}
