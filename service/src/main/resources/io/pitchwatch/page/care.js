// Looking after the sensors step by step. The coach leads and says what to do next; the page shows
// its words and offers the steps that it would take now.

import { byId, h, redraw, setHidden, setText } from "./dom.js";
import { text } from "./text.js";
import { hasLearnt, sensorName } from "./words.js";

/** The steps that the coach takes while a task goes on, and the one that begins it. */
const STEPS = {
  reversal: ["second", "cancel"],
  align: ["front-up", "rear-up", "cancel"],
  calibrate: ["accept", "cancel"],
};
const BEGINS = { reversal: "first", align: "before", calibrate: "start" };

/** `ask(path, payload, answer)` asks the coach. */
export function showCare({ care, sensors }, ask) {
  setHidden(byId("care"), care === null);
  if (care === null) {
    return;
  }
  const going = care.task !== "none";
  const several = sensors.length > 1 ? sensors.map((each) => each.id) : [];
  const learnt = sensors.filter(hasLearnt).map((each) => each.id);
  setText(byId("care-said"), sentence(care.said));
  setText(byId("care-next"), care.next === null ? "" : text.care.next(sentence(care.next)));
  redraw(byId("care-steps"), care.task, () => (going ? steps(care.task, ask) : []));
  setHidden(byId("care-ways"), going);
  redraw(byId("care-ways"), `${several} ${learnt}`, () => [
    ...Object.keys(BEGINS).map((task) => way(task, several, ask)),
    ...(learnt.length > 0 ? [drift(several.length > 0 ? learnt : [], ask)] : []),
  ]);
  const undo = going ? null : care.undo;
  setHidden(byId("care-undo"), undo === null);
  setText(byId("care-undo-words"), undo === null ? "" : text.care.undoTo(undo));
  redraw(byId("care-undo"), `${several}`, () => undos(several, ask));
}

function steps(task, ask) {
  return STEPS[task].map((step) => button(stepWords(task, step), task, step, ask, step !== "cancel"));
}

/** With several sensors a calibration is of one of them; all else is of all at once. */
function way(task, several, ask) {
  const { name, why, how } = text.care.tasks[task];
  const begin = BEGINS[task];
  const begins =
    task === "calibrate" && several.length > 0
      ? several.map((id) => button(text.care.startOne(sensorName(id)), task, `${begin}-${id}`, ask))
      : [button(stepWords(task, begin), task, begin, ask)];
  return h(
    "details",
    {},
    h("summary", {}, name),
    h("p", {}, why),
    h("ol", { class: "plain" }, ...how.map((words) => h("li", {}, words))),
    h("div", { class: "buttons" }, ...begins),
  );
}

/** `ids` are those of which something was learnt, where there is a choice. */
function drift(ids, ask) {
  const { name, why, forget, forgetOne } = text.care.drift;
  return h(
    "details",
    {},
    h("summary", {}, name),
    h("p", {}, why),
    h(
      "div",
      { class: "buttons" },
      ...(ids.length > 0
        ? ids.map((id) => button(forgetOne(sensorName(id)), "drift", `forget-${id}`, ask))
        : [button(forget, "drift", "forget", ask)]),
    ),
  );
}

function undos(several, ask) {
  return [
    button(text.care.undo, "undo", "now", ask),
    ...several.map((id) => button(text.care.undoOne(sensorName(id)), "undo", `now-${id}`, ask)),
  ];
}

function button(words, path, payload, ask, main = false) {
  return h(
    "button",
    {
      type: "button",
      class: main ? "main" : null,
      click: () => ask(`upkeep/${path}`, payload, "care-answer"),
    },
    words,
  );
}

function stepWords(task, step) {
  return text.care.tasks[task].steps[step];
}

function sentence(words) {
  return words === null ? "" : words[0].toUpperCase() + words.slice(1) + ".";
}
