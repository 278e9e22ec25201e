// The place: what its owner calls it, and what the site book remembers of earlier visits.

import { byId, h, redraw, setHidden, setText } from "./dom.js";
import { lowEnd, lowSide } from "./lean.js";
import { degrees } from "./units.js";
import { date, leanWords } from "./words.js";
import { text } from "./text.js";

export class SiteCard {
  /** `ask(path, payload, answer)` asks the coach. */
  constructor(ask) {
    byId("site-form").addEventListener("submit", (event) => {
      event.preventDefault();
      ask("visit/site", this.#input.value.trim(), "site-answer");
    });
  }

  get #input() {
    return byId("site-form").elements.site;
  }

  show({ site }) {
    setHidden(byId("site"), site === null);
    if (site === null) {
      return;
    }
    // What somebody is typing is theirs until the coach has taken it.
    if (document.activeElement !== this.#input && this.shown !== site.name) {
      this.shown = site.name;
      this.#input.value = site.name;
    }
    setText(byId("site-book-words"), bookWords(site));
    redraw(byId("site-book"), JSON.stringify(site.visits), () => site.visits.map(visitRow));
  }
}

function bookWords({ name, visits }) {
  if (name === "") {
    return text.site.unnamed;
  }
  return visits.length === 0 ? text.site.first : text.site.before(visits.length);
}

function visitRow({ begun, ended, surface, found, levelled, settled, laid, plan }) {
  const parts = [
    surface && text.stay.surfaces[surface],
    found && text.site.found(lean(found)),
    plan && text.site.plan(plan),
    laid && text.site.laid(laid),
    levelled && text.site.levelled(lean(levelled)),
    settled && sunk(settled),
  ];
  const when = [begun, ended].filter((each) => each !== null).map(date);
  return h(
    "li",
    { class: "row" },
    h("span", { class: "name" }, when.length === 0 ? text.site.undated : text.site.span(when)),
    h("span", { class: "detail" }, parts.filter(Boolean).join(". ") + "."),
  );
}

/** Which way it leaned; an even axis is not worth a word beside one that is not. */
function lean({ roll, pitch }) {
  const words = [leanWords("roll", roll), leanWords("pitch", pitch)];
  const leaning = words.filter((each) => each !== text.floor.low.even.toLowerCase());
  return leaning.length === 0 ? words[0] : text.join(leaning);
}

/** Which sides went down since the coach was parked. */
function sunk({ roll, pitch }) {
  const sides = [
    [lowSide(roll, 0), roll],
    [lowEnd(pitch, 0), pitch],
  ].filter(([side]) => side !== "even");
  const words = sides.map(([side, deg]) => text.site.sank[side](degrees(deg, 2)));
  return words.length === 0 ? text.site.firm : text.join(words);
}
