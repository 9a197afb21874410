import { expect, test } from 'vitest';
import { chooseText } from '../../../client/text/text.ts';

test.each([[['en-US']], [['xx', 'EN']], [[]], [['xx-YY']], [['']]])(
  'chooseText(%j) is English',
  (languages) => {
    expect(chooseText(languages).language).toBe('en');
  },
);
