// What the reader can change: stay, surface, zero, units and colours.

import { byId, h, setData } from "./dom.js";
import { degrees } from "./units.js";
import { text } from "./text.js";

const UNITS = "pitchwatch.units";
const LOOK = "pitchwatch.look";

/** Two groups of choices whose mark follows the coach's echo, not the reader's finger. */
export class StayChooser {
  #commands;
  #ready = () => false;
  #groups;

  constructor(commands, settings, ready) {
    this.#commands = commands;
    this.#ready = ready;
    this.#groups = {
      stay: this.#group("stay-kind", "visit/stay", text.stay.kinds, (kind) => {
        const limit = settings.toleranceDeg?.[kind];
        return Number.isFinite(limit) ? text.stay.tolerance(degrees(limit, 2).replace(/0°$/, "°")) : "";
      }),
      surface: this.#group("stay-surface", "visit/surface", text.stay.surfaces, () => ""),
    };
  }

  show(view) {
    this.#mark(this.#groups.stay, view.stay, "visit/stay");
    this.#mark(this.#groups.surface, view.surface, "visit/surface");
  }

  #group(id, path, choices, detail) {
    const inputs = new Map();
    for (const [value, words] of Object.entries(choices)) {
      const input = h("input", { type: "radio", name: id, value });
      input.addEventListener("change", () => this.#choose(path, value));
      byId(id)
        .querySelector(".choices")
        .append(h("label", {}, input, h("span", {}, words, h("small", {}, detail(value)))));
      inputs.set(value, input);
    }
    return inputs;
  }

  #choose(path, value) {
    const answer = byId("stay-answer");
    this.#commands.ask(path, value, this.#ready(), (words, outcome) => {
      answer.textContent = words;
      setData(answer, "outcome", outcome);
    });
  }

  #mark(inputs, value, path) {
    const asked = this.#commands.asked(path);
    for (const [each, input] of inputs) {
      const checked = each === (asked ?? value);
      if (input.checked !== checked) {
        input.checked = checked;
      }
      setData(input.parentElement, "asked", String(each === asked));
    }
  }
}

/** Asks before it asks the coach. */
export function wireZero(commands, ready) {
  const question = byId("zero-question");
  const answer = byId("zero-answer");
  byId("zero").addEventListener("click", () => {
    question.returnValue = "no";
    question.showModal();
  });
  question.addEventListener("close", () => {
    if (question.returnValue === "yes") {
      commands.ask("upkeep/zero", "now", ready(), (words, outcome) => {
        answer.textContent = words;
        setData(answer, "outcome", outcome);
      });
    }
  });
}

/** Units and colours, remembered by this browser. `onChange` redraws. */
export class Taste {
  #units;

  constructor(settings, onChange) {
    this.#units = pick("units", text.setUp.unit, stored(UNITS) ?? settings.units, (value) => {
      keep(UNITS, value);
      onChange();
    });
    const look = pick("look", text.setUp.looks, stored(LOOK) ?? "auto", (value) => {
      keep(LOOK, value);
      setData(document.documentElement, "look", value);
    });
    setData(document.documentElement, "look", look.value);
  }

  get units() {
    return this.#units.value;
  }
}

function pick(id, choices, chosen, onChange) {
  const select = byId(id);
  for (const [value, words] of Object.entries(choices)) {
    select.append(h("option", { value }, words));
  }
  select.value = chosen in choices ? chosen : Object.keys(choices)[0];
  select.addEventListener("change", () => onChange(select.value));
  return select;
}

function stored(key) {
  try {
    return localStorage.getItem(key);
  } catch {
    return null;
  }
}

function keep(key, value) {
  try {
    localStorage.setItem(key, value);
  } catch {
    // Private windows may refuse; the choice then lasts as long as the page.
  }
}
