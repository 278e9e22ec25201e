// The card of the floor: verdict, lean in words and figures, how sure, how old, and the picture.

import { byId, h, redraw, setData, setText } from "./dom.js";
import { floorplan } from "./floorplan.js";
import { lowEnd, lowSide } from "./lean.js";
import { decimalsFor, degrees } from "./units.js";
import { duration, leanLines } from "./words.js";
import { text } from "./text.js";

const LEVELS = { good: "good", "near-enough": "near", outside: "bad", unknown: "none" };

export function showFloor(view, footing, units) {
  const { floor, reading } = view;
  const decimals = decimalsFor(floor.uncertainty);
  setData(byId("floor"), "fresh", reading.status);
  setData(byId("verdict"), "level", LEVELS[floor.verdict]);
  setText(byId("verdict"), text.floor.verdict[floor.verdict]);
  showLean(floor, reading, footing, units);
  setText(byId("reading"), readingWords(reading));
  setText(byId("sure"), floor.known ? sureWords(floor, reading, decimals) : "");
  showPicture(floor, footing, units, decimals);
}

function showLean(floor, reading, footing, units) {
  const lines = floor.known ? leanLines(floor, footing, units) : [];
  const unknown = reading.status === "none" ? text.floor.waiting : text.floor.unknown;
  redraw(byId("lean"), JSON.stringify([lines, unknown]), () =>
    lines.length === 0
      ? [h("p", { class: "lean-unknown" }, unknown)]
      : lines.map((each) =>
          h(
            "p",
            { class: "lean-line" },
            h("span", { class: "axis" }, each.axis),
            h("span", { class: "low" }, each.words),
            h("span", { class: "angle" }, each.angle),
            h("span", { class: "drop" }, each.drop),
          ),
        ),
  );
}

function readingWords(reading) {
  if (reading.status === "none") {
    return text.reading.none + ".";
  }
  if (reading.status === "current") {
    const when =
      reading.ageMs < 2500 ? text.reading.now : text.reading.current(duration(reading.ageMs));
    return when + ".";
  }
  const age =
    reading.ageMs === null ? text.reading.oldUnknown : text.reading.old(duration(reading.ageMs));
  return `${age}. ${text.reading.notCurrent}`;
}

/** Two standard errors: the truth lies within them about nineteen times in twenty. */
function sureWords(floor, reading, decimals) {
  const sure =
    floor.uncertainty === null
      ? text.reading.notSure
      : text.reading.sure(degrees(2 * floor.uncertainty, Math.max(decimals, 2)));
  return reading.status === "current" ? `${text.reading.state[floor.state]} ${sure}` : sure;
}

function showPicture(floor, footing, units, decimals) {
  const lean = floor.known
    ? {
        roll: rounded(floor.roll, decimals),
        pitch: rounded(floor.pitch, decimals),
        side: lowSide(floor.roll, floor.uncertainty),
        end: lowEnd(floor.pitch, floor.uncertainty),
      }
    : null;
  const steady = floor.state === "steady";
  const signature = JSON.stringify([lean, units, steady, footing?.trackMm]);
  redraw(byId("floorplan"), signature, () => {
    const picture = floorplan(lean, footing, units, steady);
    setText(byId("floorplan-words"), picture.words);
    setText(byId("floorplan-key"), picture.key);
    return [picture.drawing];
  });
}

function rounded(value, decimals) {
  return Number(value.toFixed(decimals));
}
