import { expect, test } from 'vitest';
import { openDialog } from '../../../../client/elements/plan/open-dialog.ts';

const soon = () => new Promise((done) => setTimeout(done));

test('openDialog opens a dialog that came to the page, dressed, and once', async () => {
  const host = document.createElement('div');
  document.body.replaceChildren(host);
  const root = host.attachShadow({ mode: 'open' });
  const dialog = document.createElement('dialog');
  openDialog(dialog, 'dialog{color:red}');
  root.append(dialog);
  await soon();
  expect(dialog.open).toBe(true);
  expect(dialog.matches(':modal')).toBe(true);
  expect(root.adoptedStyleSheets).toHaveLength(1);
  openDialog(dialog, 'dialog{color:red}');
  await soon();
  expect(root.adoptedStyleSheets).toHaveLength(1);
});

test('openDialog bears what is gone', async () => {
  openDialog(undefined, '');
  const dialog = document.createElement('dialog');
  openDialog(dialog, '');
  await soon();
  expect(dialog.open).toBe(false);
});
