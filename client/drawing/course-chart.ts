import { html, svg, type TemplateResult } from 'lit';

/** The shrink of one cloth and direction over washes, percent: k(n) = limit·(1 − rate^n). */
export interface CourseLine {
  /** One letter that names it. */
  readonly tag: string;
  readonly limit: number;
  readonly rate: number;
  readonly points: readonly { readonly washes: number; readonly shrink: number }[];
}

/** The quilt after a count of washes. */
export interface CourseBar {
  readonly washes: number;
  readonly shrink: number;
  readonly low: number;
  readonly high: number;
}

/** All that the chart shows. */
export interface CourseChart {
  readonly lines: readonly CourseLine[];
  readonly bars: readonly CourseBar[];
  readonly label: string;
  readonly xTitle: string;
  readonly yTitle: string;
}

const BOX = { left: 30, right: 334, top: 22, foot: 190 };
/** Letters closer than this run together. */
const GAP = 13;
const STEPS = 60;

interface Frame {
  readonly x: (washes: number) => number;
  readonly y: (shrink: number) => number;
  readonly most: number;
  readonly low: number;
  readonly high: number;
}

/** The course over washes: a fitted line for each cloth, a dot where it was measured, a bar for the quilt. */
export function courseChart(chart: CourseChart): TemplateResult {
  const frame = frameAll(chart);
  const tags = spreadTags(chart.lines.map((line) => frame.y(follow(line, frame.most))));
  return html`<svg class="chart" viewBox="0 0 360 226" role="img" aria-label=${chart.label}>
    ${gridView(frame, chart)}
    ${chart.bars.map((bar) => barView(frame, bar))}
    ${chart.lines.map((line) => svg`<path class="course" d=${traceCourse(frame, line)} />`)}
    ${chart.lines.flatMap(({ points }) =>
      points.map(
        ({ washes, shrink }) =>
          svg`<circle class="dot" cx=${frame.x(washes)} cy=${frame.y(shrink)} r="3.5" />`,
      ),
    )}
    ${chart.lines.map(
      ({ tag }, index) =>
        svg`<text class="tag" x=${BOX.right + 7} y=${(tags[index] ?? 0) + 4}>${tag}</text>`,
    )}
  </svg>`;
}

function gridView({ x, y, low, high }: Frame, { bars, xTitle, yTitle }: CourseChart) {
  const span = high - low;
  const step = span <= 6 ? 1 : span <= 14 ? 2 : 5;
  const levels = Array.from({ length: span + 1 }, (_, index) => low + index).filter(
    (level) => level % step === 0,
  );
  const counts = [...new Set(bars.map(({ washes }) => washes))];
  return svg`
    ${levels.map(
      (level) => svg`<path class="level" d="M${BOX.left} ${y(level)}H${BOX.right}" />
        <text x=${BOX.left - 6} y=${y(level) + 4} text-anchor="end">${level}</text>`,
    )}
    ${counts.map(
      (count) => svg`<path class="edge" d="M${x(count)} ${BOX.foot}v5" />
        <text x=${x(count)} y=${BOX.foot + 18} text-anchor="middle">${count}</text>`,
    )}
    <path class="edge" d="M${BOX.left} ${BOX.foot}H${BOX.right}" />
    <text x="0" y="11">${yTitle}</text>
    <text x=${BOX.right} y=${BOX.foot + 33} text-anchor="end">${xTitle}</text>`;
}

function barView({ x, y }: Frame, { washes, shrink, low, high }: CourseBar) {
  const at = x(washes);
  return svg`<rect class="doubt" x=${at - 5} y=${y(high)} width="10" height=${round(y(low) - y(high))} />
    <path class="mean" d="M${at - 9} ${y(shrink)}h18" />`;
}

function frameAll({ lines, bars }: CourseChart): Frame {
  const counts = [...bars, ...lines.flatMap(({ points }) => points)].map(({ washes }) => washes);
  const most = Math.max(2, ...counts);
  const shrinks = [
    ...bars.flatMap(({ low, high }) => [low, high]),
    ...lines.flatMap((line) => [follow(line, most), ...line.points.map(({ shrink }) => shrink)]),
  ];
  const low = Math.floor(Math.min(0, ...shrinks));
  const high = Math.ceil(Math.max(1, ...shrinks));
  return {
    x: (washes) => round(BOX.left + (washes / (most + 0.4)) * (BOX.right - BOX.left)),
    y: (shrink) => round(BOX.foot - ((shrink - low) / (high - low)) * (BOX.foot - BOX.top)),
    most: most + 0.4,
    low,
    high,
  };
}

function follow({ limit, rate }: CourseLine, washes: number): number {
  return limit * (1 - rate ** washes);
}

function traceCourse({ x, y, most }: Frame, line: CourseLine): string {
  const points = Array.from({ length: STEPS + 1 }, (_, index) => {
    const washes = (most * index) / STEPS;
    return `${x(washes)} ${y(follow(line, washes))}`;
  });
  return `M${points.join('L')}`;
}

/**
 * Moves letters apart that would run together, each as little as may be, their order kept.
 *
 * @example
 * spreadTags([100, 102]) // => [94.5, 107.5]
 */
export function spreadTags(wanted: readonly number[]): readonly number[] {
  const groups: { members: number[]; centre: number }[] = [];
  const order = wanted.map((_, index) => index);
  order.sort((one, other) => (wanted[one] ?? 0) - (wanted[other] ?? 0));
  const reach = ({ members }: { members: number[] }) => ((members.length - 1) * GAP) / 2;
  for (const index of order) {
    let group = { members: [index], centre: wanted[index] ?? 0 };
    let before = groups.at(-1);
    while (
      before !== undefined &&
      group.centre - reach(group) - before.centre - reach(before) < GAP
    ) {
      const members = [...before.members, ...group.members];
      const sum = members.reduce((total, member) => total + (wanted[member] ?? 0), 0);
      group = { members, centre: sum / members.length };
      groups.pop();
      before = groups.at(-1);
    }
    groups.push(group);
  }
  const placed = [...wanted];
  for (const group of groups) {
    for (const [rank, member] of group.members.entries()) {
      placed[member] = round(group.centre - reach(group) + rank * GAP);
    }
  }
  return placed;
}

function round(value: number): number {
  return Math.round(value * 10) / 10;
}
