import { describe, expect, test } from 'vitest';
import { findRow, tell } from '../../support/tell-answer.ts';

const SWATCHES = ['9.625', '9.5', '9.625']
  .map((after, at) => {
    const name = `swatches.${at}`;
    return `${name}.fabric=sandwich&${name}.direction=length&${name}.before=10&${name}.after=${after}`;
  })
  .join('&');

describe('tellWash', () => {
  test('tells the change with its interval, and what to sew for the size wanted', () => {
    const told = tell('wash', `wanted.width=50&wanted.height=60&${SWATCHES}`);
    expect(told.title).toBe('What the wash does to sandwich');
    // Mean of -3.75, -5 and -3.75; Student's t of 2 degrees, 95 percent, is 4.303.
    expect(findRow(told, 'sandwich, length, 1 wash')).toBe(
      '-4.2 %, between -6 % and -2.4 % (3 measured)',
    );
    expect(findRow(told, 'Sew for the size you want')).toMatch(/^5\d.* in by 6\d.* in$/);
    expect(findRow(told, 'Nearest in whole blocks')).toMatch(/^\d+ by \d+, cut /);
  });
  test('tells sizes after each number of washes, and nothing of what was not asked', () => {
    const told = tell('wash', `sewn.width=40&sewn.height=50&${SWATCHES}`);
    expect(told.tables.map(({ name }) => name)).toContain('Sizes');
    expect(tell('wash', SWATCHES).tables.map(({ name }) => name)).not.toContain('Sizes');
    expect(told.cautions.map(({ code }) => code)).toContain('dryer-lint');
  });
});
