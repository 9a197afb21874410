import { describe, expect, test } from 'vitest';
import { writeForm } from '../../../api/pages/write-form.ts';
import { findView } from '../../support/tell-answer.ts';

const view = findView('plan');
const write = (query: string, more = {}) =>
  writeForm({ view, action: '/', query, own: [], ...more });

describe('writeForm', () => {
  test('has a field for what has a name and carries the rest', () => {
    const html = write('target.width=8%201/2&stitch.tail=3');
    expect(html).toContain('<label>Width <input name="target.width" value="8 1/2"');
    expect(html).toContain('<input type="hidden" name="stitch.tail" value="3">');
    expect(html).toContain('<label>Washes <input name="washes" value=""');
  });
  test('chooses what is chosen', () => {
    expect(write('unit=cm')).toContain('<option selected>cm</option>');
    expect(write('')).not.toContain('selected');
  });
  test('has a field for what is missing and at fault, and none for what has no name', () => {
    expect(write('', { faulty: ['target.height', 'stitch', ''] })).toContain(
      'name="target.height"',
    );
    expect(write('', { faulty: ['stitch'] })).not.toContain('name="stitch"');
  });
  test('lets nobody change what is locked, nor fill what the host left blank', () => {
    const html = write('block.cut=8&target.size=lap', { locked: 'block target.size unit' });
    expect(html).toContain('<input type="hidden" name="block.cut" value="8">');
    expect(html).toContain('<input type="hidden" name="target.size" value="lap">');
    expect(html).not.toContain('name="unit"');
  });
  test('has no other ways where the target is locked, and carries what is for the page in each', () => {
    expect(write('', { locked: 'target' })).not.toContain('in another way');
    const html = write('', { own: [['lang', 'de']] });
    expect(html).toContain('<input type="hidden" name="_lang" value="de">');
    expect(html.match(/href="[^"]*&amp;_lang=de"/g)?.length).toBe(view.ways?.length);
  });
  test('carries what is for the page whatever its name', () => {
    const html = write('', { own: [['a&target.size=b#c', '1']] });
    expect(html.match(/&amp;_a%26target\.size%3Db%23c=1"/g)?.length).toBe(view.ways?.length);
  });
  test('escapes whatever it is given', () => {
    const html = write(`target.width=${encodeURIComponent('"><script>')}&%3Cb%3E=1`);
    expect(html).not.toMatch(/<script|<b>/);
    expect(html).toContain('value="&quot;&gt;&lt;script&gt;"');
  });
});
