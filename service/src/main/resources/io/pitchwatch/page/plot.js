// One plot of lean over time with uPlot: the mean as a line, least and most as a band about it, the
// stay's tolerance and the fridges' limits as lines, alarms as marks, gaps as gaps, and where the
// ground gives way the trend onward with its interval.

import { clock, day } from "./words.js";
import { degrees } from "./units.js";
import { text } from "./text.js";

const HEIGHT = 220;
const TWO_SIGMA = 2;
const HOUR_S = 3600;
const DAY_S = 86_400;
/** The trend is drawn this share of the shown time onward, and no further than this. */
const ONWARD = 0.3;
const MOST_ONWARD_S = 48 * HOUR_S;
/** A limit far from the data would only flatten them. */
const NEAR_LIMIT = 2;

/**
 * Draws into `place`; returns the plot, to be destroyed when it is drawn anew.
 *
 * @param axis "roll" or "pitch"
 * @param onCursor called with what is under the pointer, in words; "" when nothing is
 */
export function plot(uPlot, place, history, axis, onCursor) {
  const colours = colourNames();
  const data = columns(history, axis);
  const range = span(data, history.limits, axis);
  const times = shownTimes(history);
  const options = {
    width: Math.max(place.clientWidth, 200),
    height: HEIGHT,
    ms: 1e-3,
    legend: { show: false },
    cursor: { y: false, drag: { x: false, y: false } },
    scales: { x: { time: true, range: () => times }, y: { range: () => range } },
    axes: [xAxis(times, colours), yAxis(colours)],
    series: series(colours),
    bands: [
      { series: [2, 1], fill: fade(colours.water, 0.25) },
      { series: [5, 4], fill: fade(colours.near, 0.25) },
    ],
    hooks: {
      draw: [(u) => marks(u, history, axis, colours)],
      setCursor: [(u) => onCursor(under(u, data, axis))],
    },
  };
  return new uPlot(options, data, place);
}

/** time, least, most, mean, and onward: low, high, middle; null where there is nothing. */
function columns(history, axis) {
  const { rows } = history;
  const onward = trend(history, axis);
  const nothing = onward.map(() => null);
  const gap = rows.map(() => null);
  if (onward.length > 0) {
    gap[gap.length - 1] = rows[rows.length - 1][axis].mean;
  }
  const of = (name) => rows.map((row) => row[axis][name]);
  return [
    [...rows.map((row) => row.time), ...onward.map((each) => each.time)],
    [...of("least"), ...nothing],
    [...of("most"), ...nothing],
    [...of("mean"), ...nothing],
    [...gap, ...onward.map((each) => each.low)],
    [...gap, ...onward.map((each) => each.high)],
    [...gap, ...onward.map((each) => each.middle)],
  ];
}

/** The trend from the last known value onward; none unless the ground gives way. */
function trend({ rows, forecast }, axis) {
  const last = rows[rows.length - 1];
  const { rate, error } = forecast[axis];
  const told = forecast.settling && rate !== null && Math.abs(rate) > TWO_SIGMA * (error ?? 0);
  if (!told || !last || last[axis].mean === null) {
    return [];
  }
  const length = onwardSeconds(rows);
  return [0.25, 0.5, 0.75, 1].map((part) => {
    const hours = (part * length) / HOUR_S;
    const middle = last[axis].mean + rate * hours;
    const width = TWO_SIGMA * (error ?? 0) * hours;
    return { time: last.time + part * length, low: middle - width, high: middle + width, middle };
  });
}

function onwardSeconds(rows) {
  const shown = rows[rows.length - 1].time - rows[0].time;
  return Math.min(Math.max(shown * ONWARD, HOUR_S), MOST_ONWARD_S);
}

/** The same for both axes, so that what stands above each other happened together. */
function shownTimes(history) {
  const { rows, forecast } = history;
  const first = rows[0].time;
  const last = rows[rows.length - 1].time + (forecast.settling ? onwardSeconds(rows) : 0);
  return [first, Math.max(last, first + 60)];
}

function span(data, limits, axis) {
  const values = data.slice(1).flat().filter((each) => each !== null);
  const tolerance = limits.tolerance ?? 0.5;
  let low = Math.min(-1.2 * tolerance, ...values);
  let high = Math.max(1.2 * tolerance, ...values);
  const reach = Math.max(-low, high);
  for (const limit of fridgeLimits(limits, axis)) {
    if (limit < NEAR_LIMIT * reach) {
      high = high > limit / NEAR_LIMIT ? Math.max(high, 1.1 * limit) : high;
      low = -low > limit / NEAR_LIMIT ? Math.min(low, -1.1 * limit) : low;
    }
  }
  return [low - 0.05 * (high - low), high + 0.05 * (high - low)];
}

function fridgeLimits(limits, axis) {
  return limits.fridges.map((each) => each[axis]).filter((each) => each !== null);
}

function series(colours) {
  const edge = { stroke: fade(colours.water, 0.5), width: 1, points: { show: false } };
  const onward = { stroke: colours.near, width: 1, dash: [2, 4], points: { show: false } };
  return [
    {},
    edge,
    edge,
    { stroke: colours.ink, width: 2, points: { show: false } },
    onward,
    onward,
    { ...onward, width: 2, dash: [6, 4] },
  ];
}

function xAxis([first, last], colours) {
  const shown = last - first;
  return {
    ...axisLook(colours),
    space: 64,
    size: 32,
    values: (u, splits) => splits.map((at) => (shown > 2 * DAY_S ? day(at) : hour(at))),
  };
}

/** Where a day begins, its name. */
function hour(at) {
  const words = clock(at);
  return words === "00:00" || words === "24:00" ? day(at) : words;
}

/** Unsigned: which side is low stands in the plot, in words. */
function yAxis(colours) {
  return {
    ...axisLook(colours),
    size: 56,
    values: (u, splits) => splits.map((at) => degrees(at, Math.abs(u.scales.y.max) < 1 ? 2 : 1)),
  };
}

function axisLook(colours) {
  const lines = { stroke: colours.line, width: 1 };
  return { stroke: colours.soft, font: "13px system-ui, sans-serif", grid: lines, ticks: lines };
}

function marks(u, history, axis, colours) {
  const { ctx, bbox } = u;
  ctx.save();
  ctx.beginPath();
  ctx.rect(bbox.left, bbox.top, bbox.width, bbox.height);
  ctx.clip();
  const { tolerance } = history.limits;
  for (const side of tolerance === null ? [] : [tolerance, -tolerance]) {
    across(u, side, colours.good, [8, 6]);
  }
  for (const limit of fridgeLimits(history.limits, axis)) {
    across(u, limit, colours.bad, []);
    across(u, -limit, colours.bad, []);
  }
  across(u, 0, colours.soft, []);
  for (const { time } of history.events.filter(({ kind }) => kind === "raised")) {
    alarm(u, time, colours.bad);
  }
  sides(u, axis, colours);
  ctx.restore();
}

function across(u, value, colour, dash) {
  const y = u.valToPos(value, "y", true);
  u.ctx.strokeStyle = colour;
  u.ctx.lineWidth = devicePixelRatio;
  u.ctx.setLineDash(dash.map((each) => each * devicePixelRatio));
  u.ctx.beginPath();
  u.ctx.moveTo(u.bbox.left, y);
  u.ctx.lineTo(u.bbox.left + u.bbox.width, y);
  u.ctx.stroke();
}

/** A mark with a shape of its own, so that it is not told by colour alone. */
function alarm(u, time, colour) {
  const { ctx, bbox } = u;
  const x = u.valToPos(time, "x", true);
  const size = 7 * devicePixelRatio;
  const foot = bbox.top + bbox.height;
  ctx.fillStyle = colour;
  ctx.strokeStyle = colour;
  ctx.setLineDash([2 * devicePixelRatio, 4 * devicePixelRatio]);
  ctx.beginPath();
  ctx.moveTo(x, bbox.top);
  ctx.lineTo(x, foot);
  ctx.stroke();
  ctx.beginPath();
  ctx.moveTo(x, foot - 2 * size);
  ctx.lineTo(x + size, foot);
  ctx.lineTo(x - size, foot);
  ctx.closePath();
  ctx.fill();
}

/** Which side is low above the middle, and which below, on a ground that no line crosses. */
function sides(u, axis, colours) {
  const { bbox } = u;
  const words = { roll: ["right", "left"], pitch: ["front", "rear"] }[axis];
  const gap = 4 * devicePixelRatio;
  const height = 16 * devicePixelRatio;
  word(u, text.floor.low[words[0]], bbox.top + gap, height, colours);
  word(u, text.floor.low[words[1]], bbox.top + bbox.height - gap - height, height, colours);
}

function word({ ctx, bbox }, words, top, height, colours) {
  const left = bbox.left + 6 * devicePixelRatio;
  ctx.font = `${13 * devicePixelRatio}px system-ui, sans-serif`;
  ctx.textAlign = "left";
  ctx.textBaseline = "middle";
  ctx.fillStyle = colours.sheet;
  ctx.fillRect(left - 4, top, ctx.measureText(words).width + 8, height);
  ctx.fillStyle = colours.soft;
  ctx.fillText(words, left, top + height / 2);
}

/** What is under the pointer, in words. */
function under(u, data, axis) {
  const i = u.cursor.idx;
  const mean = i === null || i === undefined ? null : data[3][i];
  if (mean === null || mean === undefined) {
    return "";
  }
  const words = { roll: ["right", "left"], pitch: ["front", "rear"] }[axis];
  const when = `${day(data[0][i])} ${clock(data[0][i])}`;
  return text.history.at(when, text.floor.low[words[mean > 0 ? 0 : 1]], degrees(mean, 2));
}

function colourNames() {
  const style = getComputedStyle(document.documentElement);
  const names = ["ink", "soft", "sheet", "line", "water", "good", "near", "bad"];
  return Object.fromEntries(names.map((name) => [name, style.getPropertyValue(`--${name}`).trim()]));
}

/** The style sheet's colours are #rrggbb; a canvas takes the same with an alpha. */
function fade(colour, share) {
  return colour + Math.round(share * 255).toString(16).padStart(2, "0");
}
