// The history as the coach sends it (docs/schemas/history.json), every part of it judged. Angles in
// degrees, times in seconds since 1970.

import { figure, json, line, list, oneOf } from "./values.js";

const MOST_ROWS = 4000;
const MOST_EVENTS = 200;
const WORD = /^[a-zA-Z]{1,32}$/;

/** `{step, now, rows, events, limits, forecast, truncated, trouble}`, or null if it is none. */
export function historyOf(payload) {
  const document = json(payload);
  if (document === null || !Array.isArray(document.columns) || !Array.isArray(document.rows)) {
    return null;
  }
  return {
    step: oneOf(document.step, ["minute", "hour", "day"]) ?? "minute",
    now: figure(document.now, 0, 1e11),
    rows: rows(document.columns, list(document.rows, MOST_ROWS)),
    events: list(document.events, MOST_EVENTS).map(event).filter((each) => each !== null),
    limits: limits(document.limits),
    forecast: forecast(document.forecast),
    truncated: document.truncated === true,
    trouble: line(document.trouble),
  };
}

/** In order of time: a board's clock may have been set back between two runs of its program. */
function rows(columns, raw) {
  const place = Object.fromEntries(
    columns.map((name, i) => [name, i]).filter(([name]) => WORD.test(name)),
  );
  const angle = (row, name) => figure(row[place[name]], -90, 90);
  const found = raw
    .filter((row) => Array.isArray(row) && figure(row[place.time], 0, 1e11) !== null)
    .map((row) => ({
      time: row[place.time],
      roll: triple(row, "roll", angle),
      pitch: triple(row, "pitch", angle),
    }))
    .sort((a, b) => a.time - b.time);
  return found.filter((row, i) => i === 0 || row.time > found[i - 1].time);
}

function triple(row, name, angle) {
  const mean = angle(row, name);
  return { mean, least: angle(row, `${name}Least`) ?? mean, most: angle(row, `${name}Most`) ?? mean };
}

function event(value) {
  const time = figure(value?.time, 0, 1e11);
  const kind = oneOf(value?.kind, ["raised", "returned", "zero"]);
  return time === null || kind === null
    ? null
    : { time, kind, name: line(value.name) ?? "", text: line(value.text) };
}

function limits(value) {
  return {
    tolerance: figure(value?.tolerance, 0, 90),
    fridges: list(value?.fridges).map((each) => ({
      roll: figure(each?.roll, 0, 90),
      pitch: figure(each?.pitch, 0, 90),
    })),
  };
}

function forecast(value) {
  const trend = (part) => ({
    rate: figure(part?.ratePerHour, -90, 90),
    error: figure(part?.rateError, 0, 90),
  });
  const to = value?.toLimit;
  const hours = figure(to?.hours, 0, 1e6);
  return {
    settling: value?.settling === true,
    roll: trend(value?.roll),
    pitch: trend(value?.pitch),
    toLimit:
      hours === null
        ? null
        : {
            limit: line(to.limit) ?? "",
            hours,
            soonest: figure(to.soonestHours, 0, 1e6),
            latest: figure(to.latestHours, 0, 1e6),
          },
  };
}
