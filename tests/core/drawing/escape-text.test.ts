import { describe, expect, test } from 'vitest';
import { escapeText } from '../../../api/core/drawing/escape-text.ts';

describe('escapeText', () => {
  test('escapes the five signs that XML 1.0 has entities for (§2.4, §4.6)', () => {
    expect(escapeText(`<a b="c" d='e'>&amp;</a>`)).toBe(
      '&lt;a b=&quot;c&quot; d=&#39;e&#39;&gt;&amp;amp;&lt;/a&gt;',
    );
  });
  test('leaves all else as it is', () => {
    expect(escapeText('8 1/2 in × 21½, Ärmel')).toBe('8 1/2 in × 21½, Ärmel');
  });
});
