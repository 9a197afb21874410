import { describe, expect, test } from 'vitest';
import { type Frame, writeFrame } from '../../../api/pages/write-frame.ts';
import { findView } from '../../support/tell-answer.ts';

const frame: Frame = {
  address: 'https://a.test/embed/plan?target.size=lap',
  title: 'A "lap"',
  isWhole: true,
  view: findView('plan'),
  query: 'target.width="40"',
  wishes: { lang: 'de', locked: 'block' },
  style: ':root{color-scheme:dark}',
  result: '<p>result</p>',
};

describe('writeFrame', () => {
  test('puts the result into the element, and all attributes on it', () => {
    expect(writeFrame(frame)).toContain(
      '<ragbloom-plan embedded preset="target.width=&quot;40&quot;" locked="block" lang="de"><p>result</p></ragbloom-plan>',
    );
  });
  test('has the style after the sheet of the page, both scripts, and nothing inline', () => {
    const html = writeFrame(frame);
    expect(html.indexOf('<style>:root{color-scheme:dark}')).toBeGreaterThan(
      html.indexOf('page.css'),
    );
    expect(html.match(/<script src="[^"]+" async><\/script>/g)?.length).toBe(2);
    expect(html).not.toMatch(/<script(?! src)|style="|\son\w+=/);
    expect(html).toContain('<html lang="de">');
  });
  test('asks nothing of an element that was asked nothing, and says nothing of embedding what is no answer', () => {
    const html = writeFrame({ ...frame, query: '', wishes: {}, style: '', isWhole: false });
    expect(html).toContain('<ragbloom-plan embedded><p>');
    expect(html).not.toMatch(/<style|oembed/);
  });
  test('has words alone where there is no view', () => {
    const { view, ...rest } = frame;
    expect(view).toBeDefined();
    const html = writeFrame({ ...rest, isWhole: false });
    expect(html).toContain('</h1><p>result</p></main>');
    expect(html).not.toMatch(/<ragbloom|v1\.js/);
  });
});
