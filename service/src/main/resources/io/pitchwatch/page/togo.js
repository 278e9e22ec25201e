// What is still to be raised while someone drives on or works the jacks: it follows the live lean,
// and says when to stop.

import { byId, h, redraw, setHidden } from "./dom.js";
import { acrossMm, alongMm } from "./lean.js";
import { degrees, length } from "./units.js";
import { text } from "./text.js";

const LEVEL = { roll: 0, pitch: 0 };

/** `[{key, there, words}]` for both axes; empty where nothing is to be said. */
export function toGo(view, settings, footing, units) {
  const { floor, reading, plan, phase } = view;
  const wanted = phase === "arriving" && floor.known && reading.status === "current";
  const tolerance = settings.toleranceDeg?.[view.stay];
  if (!wanted || !Number.isFinite(tolerance)) {
    return [];
  }
  const aim = { ...LEVEL, ...(plan?.afterWheels && { roll: plan.afterWheels.roll }) };
  return [
    side("sideways", floor.roll, floor.roll - aim.roll, tolerance, (deg) =>
      footing ? length(acrossMm(deg, footing), units) : degrees(deg),
    ),
    side("lengthways", floor.pitch, floor.pitch - aim.pitch, tolerance, (deg) =>
      footing && footing.wheelbaseMm > 0 ? length(alongMm(deg, footing), units) : degrees(deg),
    ),
  ];
}

function side(key, lean, remain, tolerance, amount) {
  const there = Math.abs(lean) <= tolerance;
  const words = there ? text.go.there[key] : text.go[key][remain > 0 ? "positive" : "negative"];
  return { key, there, words, amount: there ? "" : amount(remain) };
}

export function showToGo(lines) {
  setHidden(byId("plan-go"), lines.length === 0);
  redraw(byId("plan-go"), JSON.stringify(lines), () => [
    h("h3", {}, text.go.heading),
    ...lines.map(({ there, words, amount }) =>
      h(
        "p",
        { class: "go-line", "data-level": there ? "good" : "near" },
        h("span", { class: "says" }, words),
        h("strong", {}, amount),
      ),
    ),
  ]);
}
