import { expect, test, vi } from 'vitest';
import { startMaker } from '../../../client/maker/start-maker.ts';

const root = document.createElement('div');
document.body.append(root);
startMaker(root, 'https://a.test');

const script = () => root.querySelector<HTMLTextAreaElement>('#snippet-script')?.value ?? '';
const frame = () => root.querySelector('iframe');

test('startMaker writes the snippet at once as something is chosen, and the preview follows', async () => {
  expect(script()).toContain('<ragbloom-size embedded preset="target.size=throw">');
  root.querySelector<HTMLElement>('input[value=plan]')?.click();
  expect(script()).toContain('<ragbloom-plan embedded');
  await vi.waitFor(() =>
    expect(frame()?.getAttribute('src')).toMatch(/^https:\/\/a\.test\/embed\/plan\?/),
  );
});

test('startMaker makes the preview as high as its frame says, and hears no other', async () => {
  const tell = (source: Window | null | undefined, height: unknown) =>
    dispatchEvent(
      new MessageEvent('message', {
        source: source ?? null,
        data: { type: 'ragbloom-height', height },
      }),
    );
  tell(frame()?.contentWindow, 321);
  expect(frame()?.getAttribute('height')).toBe('321');
  tell(window, 5);
  tell(frame()?.contentWindow, '7');
  expect(frame()?.getAttribute('height')).toBe('321');
});

test('startMaker lets go of the lock of what is no longer said', () => {
  root.querySelector<HTMLElement>('input[value=layout]')?.click();
  root.querySelector<HTMLElement>('input[type=checkbox]')?.click();
  expect(script()).toContain('locked="columns"');
  const entry = root.querySelector<HTMLInputElement>('fieldset.ask input');
  if (entry === null) throw new Error('There is no entry.');
  entry.value = '';
  entry.dispatchEvent(new Event('input'));
  expect(script()).not.toContain('locked');
});
