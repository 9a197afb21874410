import { html, nothing, type TemplateResult } from 'lit';
import type { ShownWash } from '../../data/wash-answer-schema.ts';
import { type CourseBar, type CourseLine, courseChart } from '../../drawing/course-chart.ts';
import { sayCloth, sayPercent, shrinkOf, type WashContext } from './wash-context.ts';

type Side = 'width' | 'height';

/** The course over washes: what was measured, the line fitted through it, and the quilt at the counts asked for. */
export function courseView(context: WashContext, answer: ShownWash): TemplateResult {
  const { words } = context;
  const lines = answer.courses.map((course, index) => lineOf(answer, course, index));
  const most = Math.max(1, ...answer.input.washes);
  const chart = courseChart({
    lines,
    bars: listBars(answer),
    label: words.course.drawing(most),
    xTitle: words.course.washes,
    yTitle: words.course.shrink,
  });
  return html`<section class="stack" part="course">
    <h2>${words.course.title}</h2>
    ${chart}
    <ul class="legend">
      ${answer.courses.map((course, index) => html`<li>${sayCourse(context, course, tagOf(index))}</li>`)}
    </ul>
    <p class="soft">${words.course.key}</p>
  </section>`;
}

type Course = ShownWash['courses'][number];

function sayCourse(context: WashContext, course: Course, tag: string): TemplateResult {
  const { words } = context;
  const { fabric, direction, limit, error } = course;
  const name = `${sayCloth(context, fabric)}, ${words.along[direction].toLowerCase()}`;
  const fit = error === undefined ? nothing : `, ${words.course.error(sayPercent(context, error))}`;
  return html`<b class="letter">${tag}</b> ${name}:
    ${words.course.limit(sayPercent(context, shrinkOf(limit)))}${fit}`;
}

function tagOf(index: number): string {
  return String.fromCharCode(65 + (index % 26));
}

function lineOf(answer: ShownWash, course: Course, index: number): CourseLine {
  const points = answer.swatches
    .filter(({ fabric, direction }) => fabric === course.fabric && direction === course.direction)
    .map(({ washes, change }) => ({ washes, shrink: shrinkOf(change) }));
  return { tag: tagOf(index), limit: shrinkOf(course.limit), rate: course.rate, points };
}

/** Bars of both sides of the quilt, of one where they are alike. */
function listBars({ sandwich }: ShownWash): readonly CourseBar[] {
  const bars = (side: Side) =>
    sandwich.map(({ washes, change, low, high }) => ({
      washes,
      shrink: shrinkOf(change[side]),
      low: shrinkOf(high[side]),
      high: shrinkOf(low[side]),
    }));
  const [across, down] = [bars('width'), bars('height')];
  return JSON.stringify(across) === JSON.stringify(down) ? across : [...across, ...down];
}
