// The card of the history: asks the coach for a stretch of it, draws it, and says it in words. It is
// loaded only when somebody opens it.

import { historyOf } from "./historydoc.js";
import { plot } from "./plot.js";
import { byId, h, redraw, setData, setHidden, setText } from "./dom.js";
import { line } from "./values.js";
import { clock, day, duration, leanWords } from "./words.js";
import { degrees } from "./units.js";
import { text } from "./text.js";

const PATH = "upkeep/history";
const ANSWER = `${PATH}/answer/`;
const WAIT_MS = 15_000;
const AGAIN_MS = 300_000;
const HOURS = { day: 24, week: 7 * 24, month: 31 * 24, year: 366 * 24 };
const MOST_TOLD = 12;

export class HistoryCard {
  #publish;
  #ready;
  #uPlot;
  #token = null;
  #timer = 0;
  #again = 0;
  #span = "day";
  #shown = null;
  #plots = [];

  /** `publish(path, payload)` returns whether it was sent; `ready()`: the coach would answer. */
  constructor(publish, ready) {
    this.#publish = publish;
    this.#ready = ready;
    this.#wireSpans();
    new ResizeObserver(() => this.#resize()).observe(byId("history-plots"));
    new MutationObserver(() => this.#draw()).observe(document.documentElement, {
      attributeFilter: ["data-look"],
    });
    matchMedia("(prefers-color-scheme: dark)").addEventListener("change", () => this.#draw());
  }

  /** Loads what draws, once, and asks. */
  async open() {
    setHidden(byId("history-spans"), false);
    try {
      this.#uPlot = await drawing();
    } catch {
      this.#tell(text.history.noDrawing, "failed");
      return;
    }
    this.ask();
  }

  ask() {
    clearTimeout(this.#timer);
    clearTimeout(this.#again);
    this.#again = setTimeout(() => document.hidden || this.ask(), AGAIN_MS);
    if (!this.#ready()) {
      this.#tell(text.ask.notReady, "failed");
      return;
    }
    this.#token = token();
    const asked = JSON.stringify({ hours: HOURS[this.#span], reply: this.#token });
    if (!this.#publish(`${PATH}/set`, asked)) {
      this.#tell(text.ask.noLink, "failed");
      return;
    }
    this.#timer = setTimeout(() => this.#give(text.ask.noAnswer), WAIT_MS);
    this.#tell(this.#shown === null ? text.history.asked : "", "asked");
  }

  /** Looks at a message that arrived; answers are not values of the tree. */
  heard(path, payload) {
    if (path === ANSWER + this.#token) {
      const history = historyOf(payload);
      if (history === null) {
        this.#give(text.history.unreadable);
        return;
      }
      clearTimeout(this.#timer);
      this.#token = null;
      this.#shown = history;
      this.#tell(history.trouble ?? (history.truncated ? text.history.truncated : ""), "note");
      this.#draw();
    } else if (path === "$log/warn" && this.#token !== null && (payload ?? "").includes(PATH)) {
      this.#give(text.ask.refused(line(payload) ?? ""));
    }
  }

  #give(words) {
    clearTimeout(this.#timer);
    this.#token = null;
    this.#tell(words, "failed");
  }

  #tell(words, outcome) {
    setText(byId("history-answer"), words);
    setData(byId("history-answer"), "outcome", outcome);
  }

  #wireSpans() {
    const choices = byId("history-spans").querySelector(".choices");
    for (const [value, words] of Object.entries(text.history.spans)) {
      const input = h("input", { type: "radio", name: "history-span", value });
      input.checked = value === this.#span;
      input.addEventListener("change", () => {
        this.#span = value;
        this.#shown = null;
        this.ask();
      });
      choices.append(h("label", {}, input, h("span", {}, words)));
    }
  }

  #draw() {
    if (this.#shown === null || !this.#uPlot) {
      return;
    }
    this.#plots.forEach((each) => each.destroy());
    this.#plots = [];
    const known = this.#shown.rows.some((row) => row.roll.mean !== null);
    setHidden(byId("history-plots"), !known);
    setText(byId("history-words"), known ? inWords(this.#shown) : text.history.nothing);
    setText(byId("history-forecast"), forecastWords(this.#shown.forecast));
    showEvents(this.#shown.events);
    if (known) {
      for (const axis of ["roll", "pitch"]) {
        const place = byId(`history-${axis}`);
        place.setAttribute("aria-label", axisWords(this.#shown, axis));
        const at = (words) => setText(byId("history-at"), words);
        this.#plots.push(plot(this.#uPlot, place, this.#shown, axis, at));
      }
    }
  }

  #resize() {
    const width = byId("history-roll").clientWidth;
    for (const each of this.#plots) {
      if (width > 0 && each.width !== width) {
        each.setSize({ width, height: each.height });
      }
    }
  }
}

/** The library that draws, and its style sheet. */
async function drawing() {
  if (!window.uPlot) {
    document.head.append(h("link", { rel: "stylesheet", href: "lib/uplot.css" }));
    await new Promise((resolve, reject) => {
      document.head.append(h("script", { src: "lib/uplot.js", load: resolve, error: reject }));
    });
  }
  return window.uPlot;
}

/** Lower case letters and digits, which a topic may hold. */
function token() {
  const random = crypto.getRandomValues(new Uint32Array(2));
  return random[0].toString(36) + random[1].toString(36);
}

function inWords(history) {
  return `${axisWords(history, "roll")} ${axisWords(history, "pitch")}`;
}

/** What the plot of one axis shows, for those who do not see it. */
function axisWords({ rows }, axis) {
  const known = rows.filter((row) => row[axis].mean !== null);
  const least = Math.min(...known.map((row) => row[axis].least));
  const most = Math.max(...known.map((row) => row[axis].most));
  const name = axis === "roll" ? text.floor.sideways : text.floor.lengthways;
  const [from, to] = [leanWords(axis, least), leanWords(axis, most)];
  return from === to ? text.history.always(name, from) : text.history.between(name, from, to);
}

function forecastWords({ settling, roll, pitch, toLimit }) {
  if (!settling) {
    return "";
  }
  const parts = [text.ground.settling];
  for (const [axis, { rate, error }] of Object.entries({ roll, pitch })) {
    if (rate !== null && error !== null && Math.abs(rate) > 2 * error) {
      const side = axis === "roll" ? (rate > 0 ? "right" : "left") : rate > 0 ? "front" : "rear";
      parts.push(text.history.rate(text.ground.rate[side](degrees(rate, 3)), degrees(2 * error, 3)));
    }
  }
  if (toLimit !== null) {
    const hours = (value) => duration(value * 3_600_000);
    const later = toLimit.latest === null ? text.history.never : hours(toLimit.latest);
    parts.push(
      toLimit.soonest === null
        ? text.ground.hours(hours(toLimit.hours))
        : text.history.toLimit(hours(toLimit.hours), hours(toLimit.soonest), later),
    );
  }
  return parts.join(". ") + ".";
}

function showEvents(events) {
  const latest = events.slice(-MOST_TOLD).reverse();
  setHidden(byId("history-events"), latest.length === 0);
  redraw(byId("history-event-list"), JSON.stringify(latest), () =>
    latest.map(({ time, kind, name, text: words }) =>
      h(
        "li",
        { class: "row" },
        h("span", { class: "name" }, `${day(time)} ${clock(time)}`),
        h("span", { class: "detail" }, text.history.kinds[kind](words ?? name)),
      ),
    ),
  );
}
