// Our own picture of the floor: the coach from above, nose up, with contour lines of height as if
// water stood on it. Lines are dashed until the reading is steady.

import { s } from "./dom.js";
import { heightMm } from "./lean.js";
import { contourIntervals, length } from "./units.js";
import { text } from "./text.js";

const WIDTH = 320;
const HEIGHT = 400;
const TOP = 26;
const BOTTOM = 374;
const MOST_LINES = 8;
const LABEL_GAP_X = 46;
const LABEL_GAP_Y = 15;
const NOSE = 9;

/** Where the owner gave no figures: any coach's proportions, spoken of in degrees only. */
const NOMINAL = { axles: [], frontMm: 0, rearMm: -5000, wheelbaseMm: 5000, trackMm: 2000 };

/**
 * The drawing, and what it says in words.
 *
 * @param lean `{roll, pitch}` in degrees and `{side, end}`, which are low; or null
 * @param footing the coach's size, or null
 */
export function floorplan(lean, footing, units, steady) {
  const shape = outline(footing ?? NOMINAL);
  const parts = [s("path", { d: shape.path, class: "hull" })];
  const marks = [];
  let words = text.picture.unknown;
  let key = "";
  if (lean) {
    const field = contours(lean, shape, units);
    const mark = field.step ? lowest(lean, shape) : null;
    parts.push(...water(field, shape), ...lines(field, shape, footing, units, steady, mark));
    marks.push(...(mark ? [mark.ring, mark.word] : []));
    words = describe(lean, field, footing, units);
    key = footing && field.step ? text.picture.lines(length(field.step, units)) : "";
  }
  parts.push(...wheels(footing, shape), ...marks, nose(shape));
  const drawing = s(
    "svg",
    { viewBox: `0 0 ${WIDTH} ${HEIGHT}`, class: "floorplan", role: "img", "aria-label": `${text.picture.name}. ${words}` },
    s("defs", {}, s("clipPath", { id: "hull" }, s("path", { d: shape.path }))),
    ...parts,
  );
  return { drawing, words, key };
}

/** The coach's outline, to scale between the axles; the overhangs are drawn, not measured. */
function outline(size) {
  const wheelbase = Math.max(size.wheelbaseMm, size.trackMm);
  const scale = (BOTTOM - TOP) / (wheelbase * 1.6);
  const half = Math.min(((size.trackMm + 420) / 2) * scale, 62);
  const middle = WIDTH / 2;
  const noseY = TOP;
  const tailY = BOTTOM;
  const frontY = noseY + wheelbase * 0.24 * scale;
  const path =
    `M${middle - half},${noseY + 26} q0,-22 24,-25 Q${middle},${noseY - 4} ${middle + half - 24},${noseY + 1}` +
    ` q24,3 24,25 V${tailY - 8} q0,8 -8,8 H${middle - half + 8} q-8,0 -8,-8 Z`;
  return {
    path,
    size,
    left: middle - half,
    right: middle + half,
    top: noseY,
    bottom: tailY,
    // Across, the drawing may be stretched so that a long coach does not become a needle.
    toX: (yMm) => middle - (yMm / (size.trackMm + 420)) * 2 * half,
    toY: (xMm) => frontY + (size.frontMm - xMm) * scale,
    yMmAt: (x) => ((middle - x) * (size.trackMm + 420)) / (2 * half),
    xMmAt: (y) => size.frontMm - (y - frontY) / scale,
  };
}

/** Heights over the drawing, measured from the lowest wheel, and the step between lines. */
function contours(lean, shape, units) {
  const { size } = shape;
  const roll = lean.side === "even" ? 0 : lean.roll;
  const pitch = lean.end === "even" ? 0 : lean.pitch;
  const corners = [size.frontMm, size.rearMm].flatMap((x) =>
    [size.trackMm / 2, -size.trackMm / 2].map((y) => heightMm(roll, pitch, x, y)),
  );
  const lowest = Math.min(...corners);
  const range = Math.max(...corners) - lowest;
  const step = contourIntervals(units).find((each) => range / each <= MOST_LINES) ?? range / 4;
  const at = (x, y) => heightMm(roll, pitch, shape.xMmAt(y), shape.yMmAt(x)) - lowest;
  return { range, step: range >= step ? step : null, at };
}

/** Bands between the lines, deepest where it is lowest. */
function water(field, shape) {
  if (!field.step) {
    return [];
  }
  const box = [
    [shape.left, shape.top],
    [shape.right, shape.top],
    [shape.right, shape.bottom],
    [shape.left, shape.bottom],
  ];
  const bands = Math.floor(field.range / field.step) + 1;
  const shades = [];
  for (let k = 0; k < bands; k++) {
    const below = clip(box, ([x, y]) => k * field.step - field.at(x, y));
    if (below.length > 2) {
      shades.push(
        s("polygon", {
          points: below.map((p) => p.map((v) => v.toFixed(1)).join(",")).join(" "),
          class: "water",
          "fill-opacity": (0.62 / bands).toFixed(3),
        }),
      );
    }
  }
  return [s("g", { "clip-path": "url(#hull)" }, ...shades)];
}

/** The part of a convex polygon where `inside` is not negative (Sutherland and Hodgman, 1974). */
function clip(polygon, inside) {
  const kept = [];
  polygon.forEach((point, i) => {
    const next = polygon[(i + 1) % polygon.length];
    const a = inside(point);
    const b = inside(next);
    if (a >= 0) {
      kept.push(point);
    }
    if (a >= 0 !== b >= 0) {
      const t = a / (a - b);
      kept.push([point[0] + t * (next[0] - point[0]), point[1] + t * (next[1] - point[1])]);
    }
  });
  return kept;
}

function lines(field, shape, footing, units, steady, mark) {
  if (!field.step) {
    return [];
  }
  const drawn = s("g", { "clip-path": "url(#hull)", class: steady ? "contour" : "contour unsure" });
  const labels = s("g", { class: "contour-label" });
  const taken = [mark.taken];
  for (let k = 0; k * field.step <= field.range + 1e-6; k++) {
    const ends = crossing(shape, (x, y) => field.at(x, y) - k * field.step);
    if (ends.length < 2) {
      continue;
    }
    drawn.append(
      s("line", { x1: ends[0][0], y1: ends[0][1], x2: ends[1][0], y2: ends[1][1] }),
    );
    if (footing && k > 0) {
      label(labels, taken, ends, shape, length(k * field.step, units));
    }
  }
  return [drawn, labels];
}

/** Where a line of height meets the edges of the drawing: none, or two points. */
function crossing(shape, height) {
  const corners = [
    [shape.left, shape.top],
    [shape.right, shape.top],
    [shape.right, shape.bottom],
    [shape.left, shape.bottom],
  ];
  const found = [];
  corners.forEach(([x, y], i) => {
    const [nx, ny] = corners[(i + 1) % 4];
    const a = height(x, y);
    const b = height(nx, ny);
    if (a < 0 !== b < 0) {
      const t = a / (a - b);
      found.push([x + t * (nx - x), y + t * (ny - y)]);
    }
  });
  return found;
}

/** Writes a height beside the end of its line, unless it would stand on another or on the nose. */
function label(group, taken, ends, shape, words) {
  const place = ends.map(([x, y]) => edge(shape, x, y)).sort((a, b) => a.rank - b.rank)[0];
  const crowded = taken.some(
    ({ x, y }) => Math.abs(x - place.x) < LABEL_GAP_X && Math.abs(y - place.y) < LABEL_GAP_Y,
  );
  if (place.rank < NOSE && !crowded) {
    taken.push(place);
    group.append(s("text", { x: place.x, y: place.y, "text-anchor": place.anchor }, words));
  }
}

/** Where beside the edge a label goes; the lower the rank, the better the place. */
function edge(shape, x, y) {
  if (x >= shape.right - 0.5) {
    return { rank: 0, x: x + 8, y: y + 4, anchor: "start" };
  }
  if (x <= shape.left + 0.5) {
    return { rank: 1, x: x - 8, y: y + 4, anchor: "end" };
  }
  return y > HEIGHT / 2
    ? { rank: 2, x, y: y + 16, anchor: "middle" }
    : { rank: NOSE, x, y, anchor: "middle" };
}

/** A ring at the lowest place between the wheels, and the word beside it. */
function lowest(lean, shape) {
  const { size } = shape;
  const side = { left: 1, right: -1, even: 0 }[lean.side];
  const x = shape.toX((side * size.trackMm) / 2);
  const y = shape.toY(
    { front: size.frontMm, rear: size.rearMm, even: (size.frontMm + size.rearMm) / 2 }[lean.end],
  );
  const left = side > 0;
  return {
    ring: s("circle", { cx: x, cy: y, r: 11, class: "lowest-ring" }),
    word: s(
      "text",
      {
        x: left ? shape.left - 8 : shape.right + 8,
        y: y + 4,
        "text-anchor": left ? "end" : "start",
        class: "lowest-word",
      },
      text.picture.lowest,
    ),
    taken: { x: left ? shape.left - 8 : shape.right + 8, y: y + 4 },
  };
}

function wheels(footing, shape) {
  if (!footing) {
    return [];
  }
  return footing.axles.flatMap((axle) =>
    [1, -1].map((side) => {
      const x = shape.toX((side * axle.trackMm) / 2);
      const y = shape.toY(axle.positionMm);
      const width = axle.twin ? 13 : 8;
      return s("rect", {
        x: x - width / 2,
        y: y - 15,
        width,
        height: 30,
        rx: 3,
        class: "wheel",
      });
    }),
  );
}

function nose(shape) {
  return s(
    "text",
    { x: (shape.left + shape.right) / 2, y: shape.top - 10, "text-anchor": "middle", class: "nose" },
    text.picture.nose,
  );
}

function describe(lean, field, footing, units) {
  if (lean.side === "even" && lean.end === "even") {
    return text.floor.levelBoth + ".";
  }
  const place = text.picture.place[`${lean.side},${lean.end}`];
  return footing
    ? text.picture.describe(place, length(field.range, units))
    : text.picture.describeByAngle(place);
}
