import { describe, expect, test, vi } from 'vitest';

describe('counterStyles', () => {
  test('counterStyles hold the shared styles, and nothing sized by the root of a host', async () => {
    const replaced: string[] = [];
    vi.stubGlobal(
      'CSSStyleSheet',
      class {
        replaceSync = (text: string) => replaced.push(text);
      },
    );
    const { counterStyles } = await import('../../../../client/elements/counter/counter-styles.ts');
    const text = counterStyles.cssText;
    expect(text).toContain('--ragbloom-sheet');
    expect(text).toContain('.amount');
    expect(text).not.toMatch(/\d+rem\b/);
    vi.unstubAllGlobals();
  });
});
