// Turns the page to what matters now. The cards are moved in the document itself, so that reading
// order and keyboard order are the order on the screen.

import { byId } from "./dom.js";

const ORDERS = {
  "under-way": [["alerts", "laid", "floor"], ["fridges", "stay"], ["history", "plan", "cautions"]],
  arriving: [["alerts", "plan", "floor"], ["cautions", "stay", "site", "fridges"], ["history", "laid", "doors"]],
  parked: [["alerts", "well", "floor", "history"], ["fridges", "ground", "doors", "stay", "site"], ["plan", "laid", "cautions"]],
  leaving: [["alerts", "laid", "floor"], ["cautions", "fridges", "stay"], ["history", "plan", "doors"]],
};
const REGIONS = ["first", "second", "third"];
const ALWAYS = ["well", "history", "ground", "doors", "site", "sensors", "set-up"];

let arranged = "";

export function arrange(view) {
  const phase = view.phase ?? "parked";
  if (phase === arranged) {
    return;
  }
  arranged = phase;
  const focused = document.activeElement;
  document.getElementById("coach-view").dataset.phase = phase;
  const placed = new Set();
  ORDERS[phase].forEach((ids, i) => {
    byId(REGIONS[i]).append(...ids.map(byId));
    ids.forEach((id) => placed.add(id));
  });
  byId("third").append(...ALWAYS.filter((id) => !placed.has(id)).map(byId));
  if (focused && focused !== document.body && focused.isConnected) {
    focused.focus({ preventScroll: true });
  }
}
