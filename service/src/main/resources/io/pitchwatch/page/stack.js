// The stack under one tyre from the side, to scale, with the stair before it. The tyre is only
// hinted at: its size is not known.

import { s } from "./dom.js";
import { text } from "./text.js";

const WIDTH = 320;
const MARGIN = 8;
const LARGEST_SCALE = 0.4;
const TYRE_RADIUS = 120;
const TYRE_HALF_ANGLE = 0.72;
const TYRE_HEIGHT = 36;
const FOOT = 26;

/** The drawing; null where a piece is not one the owner described. */
export function stackDrawing(wheel, pieces, label) {
  const steps = [...wheel.stair, wheel.layers].map((layers) =>
    layers.map((layer) => pieces.find((piece) => piece.id === layer.piece)),
  );
  if (steps.some((step) => step.length === 0 || step.includes(undefined))) {
    return null;
  }
  const lengths = steps.map((step) => Math.max(...step.map((piece) => piece.lengthMm)));
  const total = lengths.reduce((a, b) => a + b, 0);
  const scale = Math.min((WIDTH - 2 * MARGIN) / total, LARGEST_SCALE);
  const ground = Math.max(...steps.map(heightMm)) * scale + TYRE_HEIGHT;
  const parts = [];
  let left = (WIDTH - total * scale) / 2;
  steps.forEach((step, i) => {
    parts.push(...layersOf(step, left, lengths[i], ground, scale));
    left += lengths[i] * scale;
  });
  const middle = left - (lengths[lengths.length - 1] * scale) / 2;
  return s(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${(ground + FOOT).toFixed(0)}`, class: "stack", role: "img", "aria-label": label },
    tyre(middle, ground - heightMm(steps[steps.length - 1]) * scale),
    ...parts,
    s("line", { x1: 0, y1: ground, x2: WIDTH, y2: ground, class: "ground-line" }),
    s("path", { d: `M${MARGIN},${ground + 13} h40 m-7,-5 l7,5 l-7,5`, class: "way" }),
    s("text", { x: MARGIN + 48, y: ground + 18, class: "way-words" }, text.plan.drive),
  );
}

function heightMm(step) {
  return step.reduce((sum, piece) => sum + piece.thicknessMm, 0);
}

function layersOf(step, left, lengthMm, ground, scale) {
  let top = ground;
  return step.map((piece) => {
    const width = piece.lengthMm * scale;
    const height = piece.thicknessMm * scale;
    top -= height;
    return s("rect", {
      x: (left + (lengthMm * scale - width) / 2).toFixed(1),
      y: top.toFixed(1),
      width: width.toFixed(1),
      height: height.toFixed(1),
      class: `piece ${piece.kind}`,
    });
  });
}

/** The foot of a tyre standing at (x, y). */
function tyre(x, y) {
  const dx = TYRE_RADIUS * Math.sin(TYRE_HALF_ANGLE);
  const dy = TYRE_RADIUS * (1 - Math.cos(TYRE_HALF_ANGLE));
  const arc = `M${(x - dx).toFixed(1)},${(y - dy).toFixed(1)} A${TYRE_RADIUS},${TYRE_RADIUS} 0 0 0 ${(x + dx).toFixed(1)},${(y - dy).toFixed(1)}`;
  return s("path", { d: arc, class: "tyre" });
}
