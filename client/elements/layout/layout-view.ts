import { html, type TemplateResult } from 'lit';
import { choiceChips } from '../../fields/choice-chips.ts';
import { noticesView } from '../../fields/notices-view.ts';
import type { LayoutContext, ShownGrid } from './layout-context.ts';
import type { TapMode } from './layout-state.ts';
import { askView } from './layout-view-ask.ts';
import { boardView } from './layout-view-board.ts';
import { countMeetings, figuresView } from './layout-view-figures.ts';
import { floorView } from './layout-view-floor.ts';
import { sayDeed } from './say-deed.ts';

const MODES: readonly TapMode[] = ['swap', 'pin'];

/** The whole element from its state: what is asked on one side, the grid to change on the other. */
export function layoutView(context: LayoutContext): TemplateResult {
  const { status, words, act, grid } = context;
  const { answer, isBusy } = status;
  const isOld = answer !== undefined && (status.faults.length > 0 || status.trouble !== undefined);
  return html`<div class="table ${isBusy ? 'busy' : ''}">
      <section class="stack" part="ask">
        <h2>${words.layout.title}</h2>
        ${askView(context)}
      </section>
      <section class="stack see">
        ${noticesView({
          words: words.light,
          odd: context.odd,
          trouble: status.trouble,
          isOld,
          from: answer && status.from,
          retry: act.retry,
        })}
        ${listOthers(context)}
        ${
          grid === undefined || answer === undefined
            ? html`<div class="waiting"></div>`
            : html`${toolsView(context)}${boardView(context, grid)}
                <p class="hidden" role="status" aria-atomic="true">${sayNow(context, grid)}</p>
                <p class="soft off">${words.layout.how}</p>
                ${figuresView(context, grid, answer)}
                <a part="link" class="off" href=${context.address}>${words.layout.link}</a>`
        }
      </section>
    </div>
    ${context.isPrinting && grid ? floorView(context, grid) : ''}`;
}

/** Faults that no field shows: of pins, of a grid that was handed over. */
function listOthers({ status, tell }: LayoutContext): TemplateResult {
  const others = status.faults.filter(
    ({ path }) => path[0] === 'fixed' || path[0] === 'seed' || path.length === 0,
  );
  return html`<ul class="faults">${others.map((fault) => html`<li class="fault">${tell(fault)}</li>`)}</ul>`;
}

function toolsView({ board, words, act, isLocked }: LayoutContext): TemplateResult {
  const { layout } = words;
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
      chosen: board.isLarge ? 'large' : 'whole',
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
