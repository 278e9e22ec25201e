// Wires the page: settings, connection, tree, cards. One view is derived from the tree and drawn
// at most a few times a second.

import { Connection } from "./connection.js";
import { Commands } from "./commands.js";
import { Model } from "./model.js";
import { Tree } from "./tree.js";
import { SignIn, forgetWho, takeFragment, where, who } from "./signin.js";
import { StayChooser, Taste, showDescribed, tellAt, wireZero } from "./setup.js";
import { arrange } from "./arrange.js";
import { showLaid, showPlan } from "./plancard.js";
import { showCards } from "./cards.js";
import { showCare } from "./care.js";
import { SiteCard } from "./sitecard.js";
import { showWell } from "./wellcard.js";
import { toGo } from "./togo.js";
import { showFloor } from "./floorcard.js";
import { byId, h, setData, setHidden, setText } from "./dom.js";
import { footing } from "./lean.js";
import { name } from "./words.js";
import { language, text } from "./text.js";

/** After this the broker has sent all it kept; what is older than the connection is gone there. */
const RETAINED_MS = 3000;
const REDRAW_MS = 1000;
const ASLEEP_MS = 30_000;
const TELL_AFTER_MS = 500;
const HISTORY = "upkeep/history/answer/";

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
    this.taste = new Taste(settings, () => {
      showDescribed(this.#described(), this.taste.units);
      this.#soon();
    });
    this.stay = new StayChooser(settings, (...asked) => this.#ask(...asked), this.commands);
    this.site = new SiteCard((...asked) => this.#ask(...asked));
    wireZero((...asked) => this.#ask(...asked));
    this.signIn = new SignIn(settings, () => this.connect());
    byId("retry").addEventListener("click", () => this.connection.hurry());
    byId("sign-out").addEventListener("click", () => this.#signOut());
    byId("change").addEventListener("click", () => this.#signOut());
    byId("mark").addEventListener("click", () => this.#ask("visit/mark", "now", "stay-answer"));
    byId("plan-laid").addEventListener("click", () =>
      this.#lay(this.#model.view(true).plan.wheels, "plan-answer"),
    );
    byId("history-open").addEventListener("click", () => this.#openHistory());
    addEventListener("online", () => this.connection.hurry());
    addEventListener("hashchange", () => takeFragment() && this.connect());
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
      this.#askWho("");
      return;
    }
    this.#tree.clear();
    const user = reader.user === "" ? text.setUp.where.nobody : text.setUp.where.user(reader.user);
    setText(byId("where"), `${text.setUp.where.broker(this.at.url, this.base)}, ${user}.`);
    showDescribed(this.#described(), this.taste.units);
    this.signIn.hide();
    setHidden(byId("coach-view"), false);
    this.connection.open({ url: this.at.url, base: this.base, ...reader });
  }

  #askWho(problem) {
    setHidden(byId("coach-view"), true);
    this.signIn.show(problem);
    this.#draw();
  }

  #signOut() {
    forgetWho();
    this.connection.close();
    this.#tree.clear();
    this.#askWho("");
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
      this.#askWho(text.signIn.refused[detail.reason]);
    }
    this.#soon();
  }

  #message(path, payload, retained) {
    if (path.startsWith(HISTORY)) {
      this.history?.heard(path, payload);
      return;
    }
    this.#tree.accept(path, payload, retained);
    if (!retained) {
      this.history?.heard(path, payload);
      this.commands.heard(path, payload);
    }
    this.#soon();
  }

  /** Its files are fetched only now: most glances never need them. */
  async #openHistory() {
    setHidden(byId("history-open"), true);
    try {
      const { HistoryCard } = await import("./history.js");
      this.history ??= new HistoryCard(
        (path, payload) => this.connection.publish(path, payload),
        () => this.#model.view(true).device === "ready",
      );
    } catch {
      setHidden(byId("history-open"), false);
      setText(byId("history-answer"), text.history.noDrawing);
      return;
    }
    byId("history-spans").querySelector("input:checked")?.focus();
    this.history.open();
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
    const settings = this.#described();
    const shape = footing(settings.axles ?? []);
    arrange(view);
    this.#showLink(view, live);
    showWell(view);
    showFloor(view, shape, units);
    showPlan(view, settings, shape, units);
    showLaid(view, (wheel) => this.#lay(view.laid.filter((each) => each !== wheel), "laid-answer"));
    showCards(view, settings, units, {
      onSeen: (id) => this.#ask("upkeep/acknowledge", id, "alert-answer"),
      onQuiet: (id) =>
        this.#ask("upkeep/shelve", JSON.stringify({ alert: id, minutes: 60 }), "alert-answer"),
    });
    showCare(view, (...asked) => this.#ask(...asked));
    this.stay.show(view);
    this.site.show(view);
    setHidden(byId("history"), !view.heard);
    setHidden(byId("mark"), view.phase !== "arriving");
    setHidden(byId("phase"), view.phase === null);
    setText(byId("phase"), view.phase === null ? "" : text.phase[view.phase]);
    this.#tell(view, toGo(view, settings, shape, units));
  }

  /** Another coach than the one this page came with: its figures are not known here. */
  #described() {
    return this.at.coach === this.#settings.coach ? this.#settings : {};
  }

  #ask(path, payload, answer) {
    const ready = this.#model.view(true).device === "ready";
    const tell = tellAt(byId(answer));
    this.commands.ask(path, payload, ready, (words, outcome) => {
      tell(words, outcome);
      this.#soon();
    });
  }

  /** Tells the coach what lies under its tyres from now on. */
  #lay(wheels, answer) {
    const laid = wheels.map(({ axle, side, layers, stair }) => ({ axle, side, layers, stair }));
    this.#ask("visit/laid", JSON.stringify({ wheels: laid }), answer);
  }

  #showLink(view, live) {
    const { state } = this.#link;
    const device = live ? (view.heard ? (view.device ?? "odd") : "silentBroker") : state;
    setData(byId("link"), "state", device);
    setText(byId("link-words"), this.#linkWords(device));
    setHidden(byId("retry"), state !== "waiting");
    setHidden(byId("change"), state !== "waiting" || this.#link.everLive);
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

  /** A screen reader hears changes of state, not every digit and not every second. */
  #tell(view, going) {
    const live = this.#link.state === "live";
    const link = live ? (view.device ?? "silentBroker") : this.#link.state;
    const parts = [typeof text.link[link] === "string" ? text.link[link] : text.link.lostBroker];
    if (view.reading.status !== "none") {
      parts.push(text.floor.verdict[view.floor.verdict]);
      if (view.reading.status === "old") {
        parts.push(text.reading.notCurrent);
      }
    }
    // With figures in it, it changes with every digit.
    if (view.reading.status === "current" && view.next !== null && !/\d/.test(view.next)) {
      parts.push(view.next);
    }
    parts.push(...going.filter(({ there }) => there).map(({ words }) => words));
    if (view.now) {
      parts.push(...view.alerts.map((each) => text.alerts.told(each.text ?? each.id)));
    }
    const words = parts.join(". ");
    if (words !== this.#told) {
      this.#told = words;
      // One change of the coach arrives as several values: it is told once, when they are all here.
      clearTimeout(this.telling);
      this.telling = setTimeout(() => setText(byId("heard"), words), TELL_AFTER_MS);
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

/** Where the browser allows it (https, or this very machine), the page can be installed. */
function keepForLater() {
  navigator.serviceWorker?.register("worker.js").catch(() => {
    // Private windows may refuse; the page then works as long as its server does.
  });
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
  // Once more: the address may have changed while the settings were on their way.
  takeFragment();
  new Page(settings).connect();
  keepForLater();
}

start();
