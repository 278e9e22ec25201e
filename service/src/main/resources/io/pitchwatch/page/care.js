// Looking after the sensors step by step. The coach leads and says what to do next; the page shows
// its words and offers the steps that it would take now.

import { byId, h, redraw, setHidden, setText } from "./dom.js";
import { text } from "./text.js";

/** The steps that the coach takes while a task goes on, and the one that begins it. */
const STEPS = {
  reversal: ["second", "cancel"],
  align: ["front-up", "rear-up", "cancel"],
  calibrate: ["accept", "cancel"],
};
const BEGINS = { reversal: "first", align: "before", calibrate: "start" };

/** `ask(path, payload, answer)` asks the coach. */
export function showCare({ care }, ask) {
  setHidden(byId("care"), care === null);
  if (care === null) {
    return;
  }
  const going = care.task !== "none";
  setText(byId("care-said"), sentence(care.said));
  setText(byId("care-next"), care.next === null ? "" : text.care.next(sentence(care.next)));
  redraw(byId("care-steps"), care.task, () => (going ? steps(care.task, ask) : []));
  setHidden(byId("care-ways"), going);
  redraw(byId("care-ways"), "ways", () => Object.keys(BEGINS).map((task) => way(task, ask)));
  const undo = going ? null : care.undo;
  setHidden(byId("care-undo"), undo === null);
  setText(byId("care-undo-words"), undo === null ? "" : text.care.undoTo(undo));
  byId("care-undo").onclick = () => ask("upkeep/undo", "now", "care-answer");
}

function steps(task, ask) {
  return STEPS[task].map((step) => button(task, step, ask, step !== "cancel"));
}

function way(task, ask) {
  return h(
    "details",
    {},
    h("summary", {}, text.care.tasks[task].name),
    h("p", {}, text.care.tasks[task].why),
    h("ol", { class: "plain" }, ...text.care.tasks[task].how.map((words) => h("li", {}, words))),
    button(task, BEGINS[task], ask, false),
  );
}

function button(task, step, ask, main) {
  return h(
    "button",
    {
      type: "button",
      class: main ? "main" : null,
      click: () => ask(`upkeep/${task}`, step, "care-answer"),
    },
    text.care.tasks[task].steps[step],
  );
}

function sentence(words) {
  return words === null ? "" : words[0].toUpperCase() + words.slice(1) + ".";
}
