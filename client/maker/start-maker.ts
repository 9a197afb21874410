import { render } from 'lit';
import { en } from '../text/maker/en.ts';
import { copyText } from './copy-text.ts';
import { listFilled, type MakerState, startState } from './maker-state.ts';
import { makerView } from './maker-view.ts';
import { writeSnippets } from './write-snippets.ts';

/** How long typing must rest before the preview follows, in milliseconds. */
const REST = 400;

/**
 * Runs the maker of snippets in a part of a page.
 *
 * @param root what it fills
 * @param home origin of the service that the snippets name
 */
export function startMaker(root: HTMLElement, home: string): void {
  let state = startState('size');
  let shown = state;
  let said = '';
  let height = state.view.height;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const draw = () => {
    const snippets = { ...writeSnippets(state, home), preview: writeSnippets(shown, home).preview };
    render(makerView({ state, snippets, height, said, words: en, act }), root);
  };
  const set = (next: MakerState) => {
    const filled = listFilled(next).map(({ path }) => path as string);
    state = { ...next, locked: next.locked.filter((path) => filled.includes(path)) };
    said = '';
    clearTimeout(timer);
    timer = setTimeout(() => {
      shown = state;
      draw();
    }, REST);
    draw();
  };
  const act = {
    choose: (view: string) => {
      height = startState(view).view.height;
      set(startState(view, state));
    },
    change: (change: Partial<MakerState>) => set({ ...state, ...change }),
    copy: (area: HTMLTextAreaElement) =>
      void copyText(area).then((came) => {
        said = en[came];
        draw();
      }),
  };
  addEventListener('message', ({ source, data }: MessageEvent<unknown>) => {
    const told = readHeight(data);
    if (told === undefined || source !== root.querySelector('iframe')?.contentWindow) return;
    height = told;
    draw();
  });
  draw();
}

function readHeight(data: unknown): number | undefined {
  const told = data as { readonly type?: unknown; readonly height?: unknown } | null;
  return told?.type === 'ragbloom-height' && typeof told.height === 'number'
    ? told.height
    : undefined;
}
