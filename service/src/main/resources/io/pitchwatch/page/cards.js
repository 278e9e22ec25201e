// The smaller cards: alerts, fridges, ground, doors, sensors. Each is absent where the tree has
// nothing for it.

import { byId, h, keyed, setData, setHidden, setText } from "./dom.js";
import { degrees, temperature } from "./units.js";
import { duration, hasLearnt, name, sensorName } from "./words.js";
import { text } from "./text.js";

/** Slower than this is shown as nothing, degrees an hour. */
const SLOWEST_RATE = 0.0005;

/** `current`: whether values of the tree may be shown as being so now. */
export function showCards(view, settings, units, answers) {
  const current = view.reading.status === "current";
  showAlerts(view, answers);
  rows("fridge", view.fridges.map((each) => fridgeRow(each, settings, current)), "fridges");
  rows("ground", groundRows(view.ground, view.twist, current), "ground");
  rows("door", view.doors.map((each) => doorRow(each, current)), "doors");
  rows("sensor", view.sensors.map((each) => sensorRow(each, units, view.now)), "sensors");
}

function rows(kind, items, section) {
  setHidden(byId(section), items.length === 0);
  keyed(
    byId(`${kind}-list`),
    items,
    () =>
      h("li", { class: "row" },
        h("span", { class: "name" }),
        h("strong", { class: "says" }),
        h("span", { class: "detail" })),
    (row, item) => {
      setData(row, "level", item.level);
      setText(row.children[0], item.name);
      setText(row.children[1], item.says);
      setText(row.children[2], item.detail);
    },
  );
}

function fridgeRow(fridge, settings, current) {
  const limits = settings.fridges?.find((each) => each.id === fridge.id);
  const known = fridge.within !== null && fridge.margin !== null;
  const margin = known ? degrees(fridge.margin) : "";
  const details = [];
  if (fridge.outsideMinutes >= 1) {
    details.push(text.fridge.minutes(duration(fridge.outsideMinutes * 60_000)));
  }
  if (limits) {
    const say = limits.faces === "coach" ? text.fridge.limits : text.fridge.ownLimits;
    details.push(say(degrees(limits.sideToSideDeg), degrees(limits.frontToBackDeg)));
  }
  return {
    key: fridge.id,
    name: name(fridge.id),
    level: !known || !current ? "none" : fridge.within ? "good" : "bad",
    says: !known
      ? text.fridge.unknown
      : told(current, fridge.within ? text.fridge.within(margin) : text.fridge.outside(margin)),
    detail: details.join(". "),
  };
}

/** What was so when it was last heard, and may no longer be. */
function told(current, words) {
  return current ? words : text.reading.before(words[0].toLowerCase() + words.slice(1));
}

function groundRows(ground, twist, current) {
  const found = [];
  if (ground) {
    const known = ground.settling !== null;
    const level = ground.settling ? "bad" : "good";
    found.push({
      key: "ground",
      name: "",
      level: known && current ? level : "none",
      says: known
        ? told(current, ground.settling ? text.ground.settling : text.ground.holds)
        : text.ground.unknown,
      detail: known && current && ground.settling ? settlingWords(ground) : "",
    });
  }
  if (twist !== null && current) {
    found.push({
      key: "frame",
      name: text.frame.heading,
      level: "plain",
      says: text.frame.twist(degrees(twist, 2)),
      detail: "",
    });
  }
  return found;
}

function settlingWords(ground) {
  const parts = [];
  if (Math.abs(ground.rollRate ?? 0) > SLOWEST_RATE) {
    parts.push(text.ground.rate[ground.rollRate > 0 ? "right" : "left"](rate(ground.rollRate)));
  }
  if (Math.abs(ground.pitchRate ?? 0) > SLOWEST_RATE) {
    parts.push(text.ground.rate[ground.pitchRate > 0 ? "front" : "rear"](rate(ground.pitchRate)));
  }
  if (ground.hours !== null) {
    parts.push(text.ground.hours(duration(ground.hours * 3_600_000)));
  }
  return parts.join(". ");
}

function rate(degreesAnHour) {
  return degrees(degreesAnHour, Math.abs(degreesAnHour) < 0.1 ? 3 : 2);
}

function doorRow(door, current) {
  const known = door.tendency !== null;
  const level = door.tendency === "drifts-open" || door.tendency === "either" ? "near" : "good";
  return {
    key: door.id,
    name: name(door.id),
    level: known && current ? level : "none",
    says: known ? told(current, text.doors.tendency[door.tendency]) : text.doors.unknown,
    detail: "",
  };
}

function sensorRow(sensor, units, now) {
  const known = now && sensor.health !== null;
  const details = [];
  if (known && sensor.temperature !== null) {
    details.push(temperature(sensor.temperature, units));
  }
  if (known && sensor.noise !== null) {
    details.push(text.sensors.noise(degrees(sensor.noise, 2)));
  }
  if (known && hasLearnt(sensor)) {
    details.push(text.sensors.drift(degrees(sensor.rollDrift, 3), degrees(sensor.pitchDrift, 3)));
  }
  return {
    key: sensor.id,
    name: sensorName(sensor.id),
    level: known ? { good: "good", doubtful: "near", failed: "bad" }[sensor.health] : "none",
    says: known ? text.sensors.health[sensor.health] : text.sensors.unknown,
    detail: details.join(". "),
  };
}

/** An alert heard before the line broke may be over: it is shown, but as what stood then. */
function showAlerts({ alerts, now }, { onSeen, onQuiet }) {
  setHidden(byId("alerts"), alerts.length === 0);
  setData(byId("alerts"), "fresh", now ? "current" : "old");
  setHidden(byId("alerts-old"), now);
  keyed(
    byId("alert-list"),
    alerts.map((alert) => ({ key: alert.id, words: alert.text ?? text.alerts.unreadable })),
    (item) =>
      h("li", {},
        h("p"),
        h("div", { class: "buttons" },
          h("button", { type: "button", click: () => onSeen(item.key) }, text.alerts.seen),
          h("button", { type: "button", click: () => onQuiet(item.key) }, text.alerts.quiet))),
    (row, item) => {
      setText(row.firstChild, item.words);
      setHidden(row.lastChild, !now);
    },
  );
}
