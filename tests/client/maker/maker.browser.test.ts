import { expect, test } from 'vitest';

test('the script of the page fills its part of the page with snippets of this very host', async () => {
  document.body.innerHTML = '<div id="maker"></div>';
  await import('../../../client/maker/maker.ts');
  const script = document.querySelector<HTMLTextAreaElement>('#snippet-script');
  expect(script?.value).toContain(`<script src="${location.origin}/embed/v1.js"`);
});
