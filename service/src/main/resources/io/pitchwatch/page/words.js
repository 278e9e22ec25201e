// Sentences about values, built from text.js and units.js.

import { acrossMm, alongMm, lowEnd, lowSide } from "./lean.js";
import { decimalsFor, degrees, length } from "./units.js";
import { language, text } from "./text.js";

/** The two lines of a lean: `{axis, words, angle, drop}`; angle and drop empty when even. */
export function leanLines(floor, footing, units) {
  const { roll, pitch } = floor;
  const decimals = decimalsFor(floor.uncertainty);
  const side = lowSide(roll, floor.uncertainty);
  const end = lowEnd(pitch, floor.uncertainty);
  return [
    {
      axis: text.floor.sideways,
      words: text.floor.low[side],
      angle: side === "even" ? "" : degrees(roll, decimals),
      drop:
        side === "even" || !footing
          ? ""
          : text.floor.overTrack(length(acrossMm(roll, footing), units)),
    },
    {
      axis: text.floor.lengthways,
      words: text.floor.low[end],
      angle: end === "even" ? "" : degrees(pitch, decimals),
      drop:
        end === "even" || !footing || footing.wheelbaseMm === 0
          ? ""
          : text.floor.overWheelbase(length(alongMm(pitch, footing), units)),
    },
  ];
}

/** A span of time, in the largest unit that says enough. */
export function duration(millis) {
  const seconds = millis / 1000;
  if (seconds < 90) {
    return text.time.seconds(Math.round(seconds));
  }
  if (seconds < 90 * 60) {
    return text.time.minutes(Math.round(seconds / 60));
  }
  if (seconds < 48 * 3600) {
    return text.time.hours(Math.round(seconds / 3600));
  }
  return text.time.days(Math.round(seconds / 86400));
}

/** An owner's id as a name: it is theirs, only the first letter is raised. */
export function name(id) {
  const words = id.replaceAll("-", " ").trim();
  return words === "" ? id : words[0].toUpperCase() + words.slice(1);
}

/** A sensor's, which may be but a number. */
export function sensorName(id) {
  return /^\d+$/.test(id) ? text.sensors.numbered(id) : name(id);
}

/** Whether a drift with temperature is known of a sensor. */
export function hasLearnt(sensor) {
  return sensor.rollDrift !== null && sensor.pitchDrift !== null;
}

const CLOCK = new Intl.DateTimeFormat(language, { hour: "2-digit", minute: "2-digit", hour12: false });
const DAY = new Intl.DateTimeFormat(language, { day: "numeric", month: "short" });
const DATE = new Intl.DateTimeFormat(language, { day: "numeric", month: "short", year: "numeric" });

/** Hours and minutes of an instant, seconds since 1970, where the reader is. */
export function clock(atSeconds) {
  return CLOCK.format(atSeconds * 1000);
}

/** Day and month of an instant, seconds since 1970, where the reader is. */
export function day(atSeconds) {
  return DAY.format(atSeconds * 1000);
}

/** A day of a year, of an instant in milliseconds, where the reader is. */
export function date(atMillis) {
  return DATE.format(atMillis);
}

/** A lean on one axis, "roll" or "pitch", as which side is low and by how much. */
export function leanWords(axis, deg) {
  const side = axis === "roll" ? lowSide(deg, 0) : lowEnd(deg, 0);
  const words = text.floor.low[side].toLowerCase();
  return side === "even" ? words : `${words} ${degrees(deg, 2)}`;
}
