// Wires the page: settings, connection, tree, cards. One view is derived from the tree and drawn
// at most a few times a second.

import { Connection } from "./connection.js";
import { Commands } from "./commands.js";
import { Model } from "./model.js";
import { Tree } from "./tree.js";
import { SignIn, forgetWho, takeFragment, where, who } from "./signin.js";
import { StayChooser, Taste, wireZero } from "./setup.js";
import { showCards } from "./cards.js";
import { showFloor } from "./floorcard.js";
import { byId, h, setData, setHidden, setText } from "./dom.js";
import { footing } from "./lean.js";
import { name } from "./words.js";
import { language, text } from "./text.js";

/** After this the broker has sent all it kept; what is older than the connection is gone there. */
const RETAINED_MS = 3000;
const REDRAW_MS = 1000;
const ASLEEP_MS = 30_000;

class Page {
  #settings;
  #tree = new Tree();
  #model = new Model(this.#tree);
  #link = { state: "closed" };
  #drawing = 0;
  #told = "";

  constructor(settings) {
    this.#settings = settings;
    this.connection = new Connection({
      onState: (state, detail) => this.#linked(state, detail),
      onMessage: (path, payload, retained) => this.#message(path, payload, retained),
    });
    this.commands = new Commands((path, payload) => this.connection.publish(path, payload));
    const ready = () => this.#model.view(true).device === "ready";
    this.taste = new Taste(settings, () => this.#soon());
    this.stay = new StayChooser(this.commands, settings, ready);
    wireZero(this.commands, ready);
    this.signIn = new SignIn(settings, () => this.connect());
    byId("retry").addEventListener("click", () => this.connection.hurry());
    byId("sign-out").addEventListener("click", () => this.#signOut());
    addEventListener("online", () => this.connection.hurry());
    this.#watchSleep();
    setInterval(() => this.#draw(), REDRAW_MS);
  }

  /** Connects with what is known, or asks for it. */
  connect() {
    this.at = where(this.#settings);
    this.base = `${this.at.tree}/5/${this.at.coach}/`;
    setText(byId("coach"), name(this.at.coach));
    document.title = text.title(name(this.at.coach));
    const reader = who() ?? (this.#settings.signIn ? null : { user: "", password: "" });
    if (reader === null) {
      this.#ask("");
      return;
    }
    this.#tree.clear();
    this.signIn.hide();
    setHidden(byId("coach-view"), false);
    this.connection.open({ url: this.at.url, base: this.base, ...reader });
  }

  #ask(problem) {
    setHidden(byId("coach-view"), true);
    this.signIn.show(problem);
    this.#draw();
  }

  #signOut() {
    forgetWho();
    this.connection.close();
    this.#tree.clear();
    this.#ask("");
  }

  #linked(state, detail) {
    this.#link = { state, ...detail };
    clearTimeout(this.sweep);
    if (state === "connecting") {
      this.#tree.begin();
    } else if (state === "live") {
      this.sweep = setTimeout(() => {
        this.#tree.dropEarlier();
        this.#soon();
      }, RETAINED_MS);
    } else if (state === "refused") {
      this.#ask(text.signIn.refused[detail.reason]);
    }
    this.#soon();
  }

  #message(path, payload, retained) {
    this.#tree.accept(path, payload, retained);
    if (!retained) {
      this.commands.heard(path, payload);
    }
    this.#soon();
  }

  /** A phone that slept may hold a dead connection that looks alive. */
  #watchSleep() {
    let hiddenAt = null;
    document.addEventListener("visibilitychange", () => {
      if (document.hidden) {
        hiddenAt = Date.now();
      } else if (hiddenAt !== null && Date.now() - hiddenAt > ASLEEP_MS) {
        this.connection.renew();
      }
      this.#soon();
    });
  }

  #soon() {
    if (!this.#drawing) {
      this.#drawing = requestAnimationFrame(() => this.#draw());
    }
  }

  #draw() {
    cancelAnimationFrame(this.#drawing);
    this.#drawing = 0;
    const live = this.#link.state === "live";
    const view = this.#model.view(live);
    const units = this.taste.units;
    // Another coach than the one this page came with: its figures are not known here.
    const settings = this.at.coach === this.#settings.coach ? this.#settings : {};
    this.#showLink(view, live);
    showFloor(view, footing(settings.axles ?? []), units);
    showCards(view, settings, units, (id) => this.#seen(id, view));
    this.stay.show(view);
    setHidden(byId("phase"), view.phase === null);
    setText(byId("phase"), view.phase === null ? "" : text.phase[view.phase]);
    this.#tell(view);
  }

  #showLink(view, live) {
    const { state } = this.#link;
    const device = live ? (view.heard ? (view.device ?? "odd") : "silentBroker") : state;
    setData(byId("link"), "state", device);
    setText(byId("link-words"), this.#linkWords(device));
    setHidden(byId("retry"), state !== "waiting");
  }

  #linkWords(device) {
    if (device === "waiting") {
      const seconds = Math.max(0, Math.ceil((this.#link.retryAt - Date.now()) / 1000));
      return text.link.waiting(seconds);
    }
    if (device === "connecting" && this.#link.everLive) {
      return text.link.reconnecting;
    }
    return text.link[device] ?? text.link.closed;
  }

  #seen(id, view) {
    const answer = byId("alert-answer");
    this.commands.ask("upkeep/acknowledge", id, view.device === "ready", (words, outcome) => {
      answer.textContent = words;
      setData(answer, "outcome", outcome);
    });
  }

  /** A screen reader hears changes of state, not every digit and not every second. */
  #tell(view) {
    const link = this.#link.state === "live" ? (view.device ?? "silentBroker") : this.#link.state;
    const parts = [text.link[link]];
    if (typeof parts[0] !== "string") {
      parts[0] = text.link.closed;
    }
    if (view.reading.status !== "none") {
      parts.push(text.floor.verdict[view.floor.verdict]);
      if (view.reading.status === "old") {
        parts.push(text.reading.notCurrent);
      }
    }
    const words = parts.join(". ");
    if (words !== this.#told) {
      this.#told = words;
      setText(byId("heard"), words);
    }
  }
}

function fillTexts() {
  document.documentElement.lang = language;
  for (const element of document.querySelectorAll("[data-text]")) {
    element.textContent = element.dataset.text.split(".").reduce((at, key) => at[key], text);
  }
  byId("caution-list").append(...text.cautions.list.map((each) => h("li", {}, each)));
}

async function start() {
  fillTexts();
  takeFragment();
  let settings;
  try {
    settings = await (await fetch("settings.json")).json();
  } catch {
    setText(byId("link-words"), text.signIn.refused.settings);
    return;
  }
  new Page(settings).connect();
}

start();
