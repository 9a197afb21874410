import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { tellHeight } from '../../../client/frame/tell-height.ts';

/** A window of its own stands for the page around: whatever is posted to it is kept. */
let around: Window;
let heard: unknown[];
let block: HTMLElement;

beforeEach(() => {
  // The page that runs the tests is as high as its window; a frame of ours is as high as what is in it.
  document.body.style.minHeight = '0';
  const frame = document.createElement('iframe');
  frame.hidden = true;
  document.body.append(frame);
  if (frame.contentWindow === null) throw new Error('The frame has no window.');
  around = frame.contentWindow;
  heard = [];
  around.addEventListener('message', ({ data }) => heard.push(data));
  block = document.createElement('div');
  block.toggleAttribute('embedded', true);
  block.style.height = '50px';
  document.body.append(block);
});
afterEach(() => {
  document.body.replaceChildren();
  history.replaceState(null, '', location.pathname + location.search);
});

const heights = () =>
  heard.filter((one) => (one as { type?: string }).type === 'ragbloom-height') as {
    height: number;
  }[];
const blog = () =>
  heard.filter((one) => (one as { message?: string }).message === 'height') as { value: number }[];
const say = (data: unknown, source: Window | null = around) =>
  window.dispatchEvent(new MessageEvent('message', { data, source }));

describe('tellHeight', () => {
  test('tells the height at once, and again when it changes', async () => {
    tellHeight(around);
    await vi.waitFor(() => expect(heights().length).toBeGreaterThan(0));
    const before = heights().at(-1)?.height ?? 0;
    block.style.height = '350px';
    await vi.waitFor(() => expect(heights().at(-1)?.height).toBe(before + 300));
    expect(blog()).toEqual([]);
  });
  test.each([
    ['50px', 200],
    ['4000px', 1000],
  ])('answers a blog that is ready; %s is told as %d', async (height, value) => {
    block.style.height = height;
    tellHeight(around);
    say({ message: 'ready', secret: 'aB3' });
    await vi.waitFor(() =>
      expect(blog()).toContainEqual({ secret: 'aB3', message: 'height', value }),
    );
  });
  test('takes the secret from the address, also when it comes later', async () => {
    location.hash = '#?secret=one1';
    tellHeight(around);
    await vi.waitFor(() =>
      expect(blog()).toContainEqual(expect.objectContaining({ secret: 'one1' })),
    );
    location.hash = '#?secret=two2';
    await vi.waitFor(() =>
      expect(blog()).toContainEqual(expect.objectContaining({ secret: 'two2' })),
    );
  });
  test('hears nobody else, and no secret that is none', async () => {
    tellHeight(around);
    say({ message: 'ready', secret: 'aB3' }, window);
    say({ message: 'ready', secret: '"><script>' });
    say('ready');
    say(null);
    block.style.height = '90px';
    await vi.waitFor(() => expect(heights().length).toBeGreaterThan(1));
    expect(blog()).toEqual([]);
  });
  test('hands on what the element answered', async () => {
    const element = document.createElement('ragbloom-toy');
    element.toggleAttribute('embedded', true);
    block.replaceWith(element);
    tellHeight(around);
    const answer = { links: { self: '/v1/toy?a=1' } };
    const detail = { answer, from: 'service' };
    element.dispatchEvent(
      new CustomEvent('ragbloom-toy', { detail, bubbles: true, composed: true }),
    );
    await vi.waitFor(() =>
      expect(heard).toContainEqual({
        type: 'ragbloom-answer',
        view: 'toy',
        query: 'a=1',
        answer,
        from: 'service',
      }),
    );
  });
});
