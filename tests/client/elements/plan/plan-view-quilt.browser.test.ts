import { describe, expect, test } from 'vitest';
import {
  footView,
  listFigures,
  optionsView,
  quiltView,
  sayCloth,
} from '../../../../client/elements/plan/plan-view-quilt.ts';
import { writeMeasure } from '../../../../client/fields/write-figures.ts';
import { watchContext } from '../../../support/plan-context.ts';
import { planThrow } from '../../../support/plan-throw.ts';
import { find, readText, renderFresh } from '../../../support/render.ts';

const plan = planThrow();

describe('quiltView', () => {
  test('quiltView gives size, blocks, cloth and hours in large figures', () => {
    const root = renderFresh(quiltView(watchContext(), plan));
    const { width, height } = plan.size.washed;
    const figures = [...root.querySelectorAll('.figures b')].map((figure) => figure.textContent);
    expect(figures[0]).toBe(writeMeasure('en', 'in', width, height).split('\u00a0')[0]);
    expect(figures[1]).toBe(`${plan.grid.columns} × ${plan.grid.rows}`);
    expect(figures).toHaveLength(4);
  });

  test('quiltView names the picture for those who do not see it', () => {
    const picture = find(renderFresh(quiltView(watchContext(), plan)), 'svg.picture');
    expect(picture.getAttribute('aria-label')).toContain(`${plan.grid.columns} blocks across`);
  });

  test('quiltView switches between sewn and washed', () => {
    const context = watchContext();
    const root = renderFresh(quiltView(context, plan));
    find(root, 'input[name=shown]:not(:checked)').click();
    expect(context.act.show).toHaveBeenCalledExactlyOnceWith('sewn');
    const sewn = renderFresh(quiltView(watchContext({ shown: 'sewn' }), plan));
    expect(readText(sewn, '.figures dt')).toBe('Sewn');
  });

  test.each([
    [{ width: 0.5, height: -1 }, '½ in wider than your wish, 1 in shorter.'],
    [{ width: -2, height: 0.75 }, '2 in narrower than your wish, ¾ in longer.'],
    [{ width: 0.01, height: 0 }, 'As wide as your wish, as long.'],
  ])('quiltView says how a plan with the fit %j fits', (fit, sentence) => {
    const root = renderFresh(quiltView(watchContext(), { ...plan, fit }));
    expect(readText(root, '.caption p').replaceAll('\u00a0', ' ')).toContain(sentence);
  });
});

describe('quiltView of so many blocks', () => {
  test('quiltView says nothing of a wish where the blocks were given', () => {
    const grid = planThrow({ target: { columns: 5, rows: 6 } });
    expect(readText(renderFresh(quiltView(watchContext(), grid)), '.caption p')).not.toContain(
      'wish',
    );
  });
});

describe('listFigures', () => {
  test('listFigures gives size, cloth and hours', () => {
    const said = listFigures(watchContext(), plan);
    expect(said.map((figure) => figure.split('\u00a0')[1])).toEqual(['in', 'yd', 'h']);
  });
});

describe('sayCloth', () => {
  test('sayCloth adds up what is bought of every cloth', () => {
    const amount = plan.fabrics.reduce((sum, { buy }) => sum + buy.amount, 0);
    expect(sayCloth(watchContext(), plan)).toBe(writeMeasure('en', 'yd', amount));
  });
});

describe('footView', () => {
  test('footView repeats three figures for the eye alone', () => {
    const foot = find(renderFresh(footView(watchContext(), plan)), '.foot');
    expect(foot.getAttribute('aria-hidden')).toBe('true');
    expect(foot.querySelectorAll('b')).toHaveLength(3);
  });
});

describe('optionsView', () => {
  test('optionsView draws every plan that fits and tells which one is on the table', () => {
    const root = renderFresh(optionsView(watchContext(), plan));
    expect(root.querySelectorAll('button svg')).toHaveLength(plan.options.length);
    expect(root.querySelectorAll('[aria-pressed=true]')).toHaveLength(1);
  });

  test('optionsView chooses the plan that is pressed', () => {
    const context = watchContext();
    find(renderFresh(optionsView(context, plan)), '[aria-pressed=false]').click();
    const [option] = context.act.choose.mock.lastCall ?? [];
    expect(plan.options).toContain(option);
    expect(option?.chosen).toBe(false);
  });

  test('optionsView folds away all but six, never the one on the table', () => {
    const [option] = plan.options;
    if (option === undefined) throw new Error('A throw has options.');
    const options = Array.from({ length: 9 }, (_, index) => ({ ...option, chosen: index === 8 }));
    const root = renderFresh(optionsView(watchContext(), { ...plan, options }));
    expect(root.querySelectorAll('details button')).toHaveLength(2);
    expect(root.querySelector('details [aria-pressed=true]')).toBeNull();
  });
});
