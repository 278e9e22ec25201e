// What the reader can change: stay, surface, zero, units and colours.

import { byId, h, keyed, setData, setText } from "./dom.js";
import { degrees, length } from "./units.js";
import { name } from "./words.js";
import { text } from "./text.js";

const UNITS = "pitchwatch.units";
const LOOK = "pitchwatch.look";

/** Shows what became of a command at a place of the page. */
export function tellAt(element) {
  return (words, outcome) => {
    setText(element, words);
    setData(element, "outcome", outcome);
  };
}

/** Two groups of choices whose mark follows the coach's echo, not the reader's finger. */
export class StayChooser {
  #ask;
  #commands;
  #groups;

  /** `ask(path, payload, answer)` asks the coach; `commands` knows what is still unanswered. */
  constructor(settings, ask, commands) {
    this.#ask = ask;
    this.#commands = commands;
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
      input.addEventListener("change", () => this.#ask(path, value, "stay-answer"));
      byId(id)
        .querySelector(".choices")
        .append(h("label", {}, input, h("span", {}, words, h("small", {}, detail(value)))));
      inputs.set(value, input);
    }
    return inputs;
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
export function wireZero(ask) {
  const question = byId("zero-question");
  byId("zero").addEventListener("click", () => {
    question.returnValue = "no";
    question.showModal();
  });
  question.addEventListener("close", () => {
    if (question.returnValue === "yes") {
      ask("upkeep/zero", "now", "zero-answer");
    }
  });
}

/** The coach's figures, as the owner wrote them. */
export function showDescribed(settings, units) {
  const say = text.setUp.described;
  const mm = (value) => length(value, units);
  const rows = [
    ...(settings.axles ?? []).map((axle) => [
      name(axle.id),
      [say.axle(mm(axle.trackMm)), axle.twin && say.twin, axle.parkingBrake && say.brake],
    ]),
    ...(settings.jackPairs ?? []).map((pair) => [
      say.jackPair(name(pair.id)),
      [say.jacks(mm(pair.spacingMm))],
    ]),
    ...(settings.pieces ?? []).map((piece) => [
      name(piece.id),
      [
        say.piece(
          piece.count,
          say.kinds[piece.kind],
          [piece.thicknessMm, piece.lengthMm, piece.widthMm].map(mm).join(" × "),
        ),
      ],
    ]),
    ...(settings.pads ?? []).map((pad) => [name(pad.id), [say.pad(pad.count, mm(pad.thicknessMm))]]),
    ...(settings.fridges ?? []).map((fridge) => [
      say.fridge(name(fridge.id)),
      [text.fridge.limits(degrees(fridge.sideToSideDeg), degrees(fridge.frontToBackDeg))],
    ]),
  ];
  const items = rows.length > 0 ? rows : [[say.elsewhere, []]];
  keyed(
    byId("described-list"),
    items.map(([who, parts], i) => ({ key: `${i} ${who}`, who, parts: parts.filter(Boolean) })),
    () => h("li", { class: "row" }, h("span", { class: "name" }), h("span", { class: "detail" })),
    (row, item) => {
      setText(row.firstChild, item.who);
      setText(row.lastChild, text.join(item.parts));
    },
  );
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
