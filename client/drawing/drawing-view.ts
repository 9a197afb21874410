import { html, nothing, svg, type TemplateResult } from 'lit';
import type { Drawing, PathShape, Shape, TextShape } from '#core/drawing/shape.ts';

/**
 * A drawing of the core as an `<svg>`; each shape has its part as class, so that styles reach it.
 *
 * @param name a class of its own.
 * @param label what it shows, for those who do not see it; without one it is decoration.
 */
export function drawingView(
  { box, shapes }: Drawing,
  name?: string,
  label?: string,
): TemplateResult {
  return html`<svg
    class=${name ?? nothing}
    viewBox="${box.x} ${box.y} ${box.width} ${box.height}"
    fill="none"
    role=${label === undefined ? nothing : 'img'}
    aria-label=${label ?? nothing}
    aria-hidden=${label === undefined ? 'true' : nothing}
  >${shapes.map(shapeView)}</svg>`;
}

function shapeView(shape: Shape): TemplateResult<2> {
  return shape.kind === 'text' ? textView(shape) : pathView(shape);
}

function pathView(shape: PathShape): TemplateResult<2> {
  return svg`<path
    class=${shape.part}
    d=${shape.d}
    fill=${shape.fill ?? nothing}
    stroke=${shape.stroke ?? nothing}
    stroke-width=${shape.breadth ?? nothing}
    stroke-dasharray=${shape.dash ?? nothing}
    stroke-linecap=${shape.round === true ? 'round' : nothing}
    opacity=${shape.opacity ?? nothing}
  />`;
}

function textView({ part, x, y, size, text, fill, rim, turn }: TextShape): TemplateResult<2> {
  return svg`<text
    class=${part}
    x=${x}
    y=${y}
    fill=${fill}
    stroke=${rim ?? nothing}
    stroke-width=${rim === undefined ? nothing : size / 4}
    paint-order="stroke"
    font-size=${size}
    text-anchor="middle"
    dominant-baseline="central"
    transform=${turn === undefined ? nothing : `rotate(${turn} ${x} ${y})`}
  >${text}</text>`;
}
