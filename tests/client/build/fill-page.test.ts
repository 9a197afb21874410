import { describe, expect, test } from 'vitest';
import { fillPage } from '../../../client/build/fill-page.ts';

const elements = [
  { name: 'plan', first: ['plan-A.js', 'base-B.js'], soon: ['below-D.js'] },
  { name: 'wash', first: ['wash-C.js', 'base-B.js'], soon: [] },
];
const page = (tags: string) =>
  `<head>\n  <script src="/embed/v1.js" async></script>\n</head>${tags}`;

describe('fillPage', () => {
  test('fillPage(html, elements, folder) names each file of the elements of a page once', () => {
    const html = fillPage(page('<ragbloom-plan address></ragbloom-plan>'), elements, '/e/');
    expect(html).toContain(
      '  <script src="/embed/v1.js" async></script>\n' +
        '  <link rel="modulepreload" href="/e/plan-A.js">\n' +
        '  <link rel="modulepreload" href="/e/base-B.js">\n' +
        '  <link rel="modulepreload" fetchpriority="low" href="/e/below-D.js">\n</head>',
    );
    const both = fillPage(page('<ragbloom-plan>\n<ragbloom-wash>'), elements, '/e/');
    expect(both.match(/modulepreload/g)).toHaveLength(4);
  });

  test('fillPage(html, elements, folder) leaves a page without elements as it is', () => {
    expect(fillPage(page('<p>'), elements, '/e/')).toBe(page('<p>'));
    expect(fillPage('<ragbloom-plan>', elements, '/e/')).toBe('<ragbloom-plan>');
  });
});
