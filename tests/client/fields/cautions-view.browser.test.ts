import { expect, test } from 'vitest';
import { cautionsView } from '../../../client/fields/cautions-view.ts';
import { en } from '../../../client/text/light/en.ts';
import { readText, renderFresh } from '../../support/render.ts';

test('cautionsView says each in the words it is given, and frames what is dangerous', () => {
  const root = renderFresh(
    cautionsView(
      en,
      [
        { code: 'infant-sleep', severity: 'danger', text: 'Not for a baby.' },
        { code: 'rotary-cutter', severity: 'care', text: 'A blade.' },
      ],
      ({ text }) => text.toUpperCase(),
    ),
  );
  expect(readText(root, 'li.notice')).toBe('Danger. NOT FOR A BABY.');
  expect(readText(root, 'li:not(.notice)')).toBe('Take care. A BLADE.');
});
