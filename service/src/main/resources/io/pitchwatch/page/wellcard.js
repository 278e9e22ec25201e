// Is all well? One glance for those who live in the coach: floor, fridge, ground, doors, sensors,
// each with a sign and a word, and one sentence for all of them.

import { byId, h, keyed, setData, setHidden, setText } from "./dom.js";
import { text } from "./text.js";

const WORST_FIRST = ["bad", "near", "none", "good"];
const SECTIONS = { floor: "floor", fridge: "fridges", ground: "ground", doors: "doors", sensors: "sensors" };

export function showWell(view) {
  const parked = view.phase === "parked" || view.phase === null;
  const items = parked ? parts(view) : [];
  setHidden(byId("well"), items.length === 0);
  const level = overall(view, items);
  setData(byId("well-words"), "level", level);
  const nothing = items.every((item) => item.level === "none");
  setText(byId("well-words"), nothing ? text.well.nothing : text.well.words[level]);
  keyed(
    byId("well-list"),
    items,
    (item) =>
      h("li", {},
        h("a", { href: `#${SECTIONS[item.key]}`, class: "says" }, text.well.parts[item.key], h("span"))),
    (row, item) => {
      const state = row.firstChild.lastChild;
      setData(row, "level", item.level);
      setText(state, `: ${text.well.levels[item.level]}`);
      // The sign says it; who does not see it still hears it.
      state.className = item.level === "good" || item.level === "none" ? "unseen" : "";
    },
  );
}

/** What stands and is not acknowledged elsewhere counts too: an alert is never all well. */
function overall(view, items) {
  const worst = worstOf(items.map(({ level }) => level));
  return view.now && view.alerts.length > 0 && worst !== "bad" ? "bad" : worst;
}

function parts(view) {
  const current = view.reading.status === "current";
  const found = [{ key: "floor", level: floorLevel(view.floor.verdict) }];
  if (view.fridges.length > 0) {
    found.push({ key: "fridge", level: worstOf(view.fridges.map((each) => yes(current, each.within))) });
  }
  if (view.ground) {
    const holds = view.ground.settling === null ? null : !view.ground.settling;
    found.push({ key: "ground", level: yes(current, holds) });
  }
  if (view.doors.length > 0) {
    found.push({ key: "doors", level: worstOf(view.doors.map((each) => doorLevel(current, each))) });
  }
  if (view.sensors.length > 0) {
    found.push({ key: "sensors", level: worstOf(view.sensors.map((each) => sensorLevel(view, each))) });
  }
  return found;
}

function floorLevel(verdict) {
  return { good: "good", "near-enough": "near", outside: "bad" }[verdict] ?? "none";
}

function yes(current, value) {
  return !current || value === null ? "none" : value ? "good" : "bad";
}

function doorLevel(current, { tendency }) {
  if (!current || tendency === null) {
    return "none";
  }
  return tendency === "drifts-open" || tendency === "either" ? "near" : "good";
}

function sensorLevel(view, { health }) {
  return view.now ? ({ good: "good", doubtful: "near", failed: "bad" }[health] ?? "none") : "none";
}

function worstOf(levels) {
  return WORST_FIRST.find((each) => levels.includes(each)) ?? "none";
}
