// Payloads come from the network and may hold anything. A value that does not parse exactly as its
// datatype (Homie 5) is null, which the page shows as "not known"; nothing is ever guessed.

const NUMBER = /^-?\d{1,12}(\.\d{1,12})?([eE][+-]?\d{1,2})?$/;
const INSTANT = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d(\.\d{1,9})?(Z|[+-]\d\d:\d\d)$/;
const LONGEST_LINE = 400;

/** A finite number within [min, max], or null. */
export function number(payload, min, max) {
  if (typeof payload !== "string" || !NUMBER.test(payload)) {
    return null;
  }
  const value = Number(payload);
  return value >= min && value <= max ? value : null;
}

/** One of the given words, or null. */
export function oneOf(payload, words) {
  return words.includes(payload) ? payload : null;
}

/** true, false or null. */
export function flag(payload) {
  return payload === "true" ? true : payload === "false" ? false : null;
}

/** Milliseconds since 1970 of an RFC 3339 instant, or null. */
export function instant(payload) {
  if (typeof payload !== "string" || !INSTANT.test(payload)) {
    return null;
  }
  const millis = Date.parse(payload);
  return Number.isFinite(millis) ? millis : null;
}

/** An object or array from JSON, or null. */
export function json(payload) {
  if (typeof payload !== "string") {
    return null;
  }
  try {
    const value = JSON.parse(payload);
    return typeof value === "object" ? value : null;
  } catch {
    return null;
  }
}

/** Text for people, without control characters and not longer than a few lines; or null. */
export function line(payload) {
  if (typeof payload !== "string") {
    return null;
  }
  const clean = payload.replace(/[\p{Cc}\p{Cf}\u2028\u2029]+/gu, " ").trim();
  if (clean === "") {
    return null;
  }
  return clean.length > LONGEST_LINE ? clean.slice(0, LONGEST_LINE) + "…" : clean;
}

/** A finite number within [min, max] that is already a number (from JSON), or null. */
export function figure(value, min, max) {
  return typeof value === "number" && value >= min && value <= max ? value : null;
}

/** The array itself, cut to a length that a page can show; empty when it is none. */
export function list(value, longest = 40) {
  return Array.isArray(value) ? value.slice(0, longest) : [];
}
