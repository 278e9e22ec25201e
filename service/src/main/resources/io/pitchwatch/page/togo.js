// What is still to be raised while someone drives on or works the jacks: it follows the live lean,
// and says when to stop.

import { byId, h, redraw, setHidden } from "./dom.js";
import { acrossMm, alongMm } from "./lean.js";
import { degrees, length } from "./units.js";
import { text } from "./text.js";

/** Nearer than this to what the plan leaves is there: no piece makes less. */
const THERE_DEG = 0.1;

/** `[{key, there, words}]` for both axes; empty where nothing is to be said. */
export function toGo(view, settings, footing, units) {
  const { floor, reading, plan, phase } = view;
  const arriving = phase === "arriving" && floor.known && reading.status === "current";
  // Before there is a plan the coach still brakes, and so the floor leans.
  const planned = plan !== null && plan.headline !== null && plan.verdict !== "move";
  const wanted = arriving && planned;
  const tolerance = settings.toleranceDeg?.[view.stay];
  if (!wanted || !Number.isFinite(tolerance)) {
    return [];
  }
  // Wheels bring the sides up; what the plan leaves of the ends, nobody raises.
  const aim = { roll: plan.afterWheels?.roll ?? 0, pitch: plan.after?.pitch ?? 0 };
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
  const enough = Math.abs(lean) <= tolerance;
  const there = enough || Math.abs(remain) <= THERE_DEG;
  const arrived = enough ? text.go.there[key] : text.go.planned[key];
  const words = there ? arrived : text.go[key][remain > 0 ? "positive" : "negative"];
  return { key, there, enough, words, amount: there ? "" : amount(remain) };
}

export function showToGo(lines) {
  setHidden(byId("plan-go"), lines.length === 0);
  redraw(byId("plan-go"), JSON.stringify(lines), () => [
    h("h3", {}, text.go.heading),
    ...lines.map(({ enough, words, amount }) =>
      h(
        "p",
        { class: "go-line", "data-level": enough ? "good" : "near" },
        h("span", { class: "says" }, words),
        h("strong", {}, amount),
      ),
    ),
  ]);
}
