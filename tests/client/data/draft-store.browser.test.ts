import { afterEach, expect, test, vi } from 'vitest';
import { keepDraft, readDraft } from '../../../client/data/draft-store.ts';

afterEach(() => {
  vi.restoreAllMocks();
  localStorage.clear();
});

test('readDraft gives what keepDraft kept under that name, and nothing else', () => {
  keepDraft('wash', 'swatches.0.before=10');
  expect([readDraft('wash'), readDraft('plan')]).toEqual(['swatches.0.before=10', '']);
});

test('keepDraft of nothing leaves nothing behind', () => {
  keepDraft('wash', 'unit=cm');
  keepDraft('wash', '');
  expect(localStorage.length).toBe(0);
});

test('a store that refuses is passed over', () => {
  const refuse = () => {
    throw new DOMException('no', 'SecurityError');
  };
  vi.spyOn(Storage.prototype, 'getItem').mockImplementation(refuse);
  vi.spyOn(Storage.prototype, 'setItem').mockImplementation(refuse);
  keepDraft('wash', 'unit=cm');
  expect(readDraft('wash')).toBe('');
});
