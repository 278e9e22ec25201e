// What the tree says, judged: which values are known, which are current, which are only old.

import { figure, flag, instant, json, line, list, number, oneOf } from "./values.js";
import { since } from "./tree.js";

/** A parked coach speaks at least once a minute; after two and a half it is no longer current. */
const PARKED_MS = 150_000;

/** While it moves, settles or is being levelled it speaks every second. */
const WATCHED_MS = 12_000;

/** How far ahead of ours a coach's clock may run before its dates say nothing of age. */
const CLOCK_AHEAD_MS = 60_000;

const SURFACES = ["concrete", "asphalt", "gravel", "grass", "soft"];
const STATES = ["init", "ready", "disconnected", "sleeping", "lost"];
const TENDENCIES = ["stays", "drifts-shut", "drifts-open", "either"];

export class Model {
  #tree;
  #skewMs = 0;
  #described;
  #keepsBook = false;

  constructor(tree) {
    this.#tree = tree;
  }

  /**
   * Everything the page shows, from the tree as it is now. `linked`: the connection is up. `now` in
   * the answer: it is, and the coach's program runs, so that what stands, stands now.
   */
  view(linked) {
    const tree = this.#tree;
    const device = oneOf(tree.text("$state"), STATES);
    const now = linked && device === "ready";
    const reading = this.#reading(now);
    const floor = this.#floor(reading);
    const next = line(tree.text("plan/next"));
    return {
      heard: tree.text("$state") !== undefined,
      device,
      now,
      reading,
      floor,
      fridges: tree.names("fridge-").map((id) => this.#fridge(id)),
      doors: tree.names("door-").map((id) => ({
        id,
        tendency: oneOf(tree.text(`door-${id}/tendency`), TENDENCIES),
      })),
      ground: this.#ground(),
      twist: number(tree.text("frame/twist"), -90, 90),
      sensors: tree.names("sensor-").map((id) => this.#sensor(id)),
      alerts: tree.names("$alert/").map((id) => ({ id, text: line(tree.text(`$alert/${id}`)) })),
      site: this.#site(),
      next,
      turn: list(json(tree.text("plan/turn"))?.best)
        .map((each) => line(each?.text))
        .filter(known),
      care: care(json(tree.text("upkeep/guide"))),
      stay: oneOf(tree.text("visit/stay"), ["overnight", "stay", "season"]),
      surface: oneOf(tree.text("visit/surface"), SURFACES),
      plan: plan(tree.text("plan/headline"), tree.text("plan/document"), next),
      laid: wheels(json(tree.text("visit/laid"))?.wheels),
      phase: oneOf(tree.text("visit/phase"), ["under-way", "arriving", "parked", "leaving"]),
    };
  }

  /** How old the last good sample is. */
  #reading(ready) {
    const entry = this.#tree.entry("floor/taken-at");
    const takenAt = instant(entry?.payload);
    if (entry === undefined || takenAt === null) {
      return { status: this.#tree.text("floor/roll") === undefined ? "none" : "old", ageMs: null };
    }
    const ageMs = this.#age(entry, takenAt);
    const current = ready && ageMs !== null && ageMs <= this.#longest();
    return { status: current ? "current" : "old", ageMs };
  }

  #longest() {
    const tree = this.#tree;
    const watched =
      tree.text("visit/phase") === "arriving" ||
      ["moving", "unsettled"].includes(tree.text("floor/state"));
    return watched ? WATCHED_MS : PARKED_MS;
  }

  /**
   * A value seen to change has the age of that change, by our own clocks. One that the broker kept
   * has only its date, in the coach's clock, which may be years out: it is corrected by what the
   * last change seen has taught, and not believed where it lies in the future.
   */
  #age(entry, takenAt) {
    if (entry.live) {
      this.#skewMs = entry.changed.wall - takenAt;
      return since(entry.changed);
    }
    const age = Date.now() - takenAt - this.#skewMs;
    return age < -CLOCK_AHEAD_MS ? null : Math.max(age, 0);
  }

  #floor(reading) {
    const tree = this.#tree;
    const state = oneOf(tree.text("floor/state"), ["moving", "unsettled", "steady", "unknown"]);
    const roll = number(tree.text("floor/roll"), -90, 90);
    const pitch = number(tree.text("floor/pitch"), -90, 90);
    const known = roll !== null && pitch !== null && state !== "unknown" && state !== null;
    const verdict = oneOf(tree.text("floor/verdict"), ["good", "near-enough", "outside"]);
    return {
      known,
      state: state ?? "unknown",
      roll,
      pitch,
      uncertainty: number(tree.text("floor/uncertainty"), 0, 90),
      verdict: reading.status === "current" && known && verdict !== null ? verdict : "unknown",
    };
  }

  /** The place and its book; null where the coach's program keeps none. */
  #site() {
    const tree = this.#tree;
    const description = tree.text("$description");
    if (description !== this.#described) {
      this.#described = description;
      this.#keepsBook = json(description)?.nodes?.visit?.properties?.book !== undefined;
    }
    if (!this.#keepsBook) {
      return null;
    }
    return {
      name: line(tree.text("visit/site")) ?? "",
      visits: list(json(tree.text("visit/book"))?.visits).map(visit),
    };
  }

  #fridge(id) {
    const tree = this.#tree;
    return {
      id,
      within: flag(tree.text(`fridge-${id}/within`)),
      margin: number(tree.text(`fridge-${id}/margin`), -90, 90),
      outsideMinutes: number(tree.text(`fridge-${id}/outside-minutes`), 0, 1e8),
    };
  }

  #ground() {
    const tree = this.#tree;
    if (tree.names("ground/").length === 0) {
      return null;
    }
    return {
      settling: flag(tree.text("ground/settling")),
      rollRate: number(tree.text("ground/roll-rate"), -90, 90),
      pitchRate: number(tree.text("ground/pitch-rate"), -90, 90),
      hours: number(tree.text("ground/hours-to-limit"), 0, 1e6),
    };
  }

  #sensor(id) {
    const tree = this.#tree;
    return {
      id,
      health: oneOf(tree.text(`sensor-${id}/health`), ["good", "doubtful", "failed"]),
      temperature: number(tree.text(`sensor-${id}/temperature`), -90, 200),
      noise: number(tree.text(`sensor-${id}/noise`), 0, 90),
      rollDrift: number(tree.text(`sensor-${id}/roll-drift`), -10, 10),
      pitchDrift: number(tree.text(`sensor-${id}/pitch-drift`), -10, 10),
    };
  }
}

/** One visit in the site book. */
function visit(value) {
  return {
    begun: instant(value?.begun),
    ended: instant(value?.ended),
    surface: oneOf(value?.surface, SURFACES),
    found: lean(value?.found),
    levelled: lean(value?.levelled),
    settled: lean(value?.settled),
    laid: line(value?.laid),
    plan: line(value?.plan),
  };
}

/** How far somebody is with looking after the sensors, in the coach's words; null if unheard of. */
function care(guide) {
  const task = oneOf(guide?.task, ["none", "calibrate", "reversal", "align"]);
  return task === null
    ? null
    : { task, said: line(guide.said), next: line(guide.next), undo: line(guide.undo) };
}

const MOST_MM = 10_000;
const NO_PLAN = {
  headline: null,
  verdict: null,
  wheels: [],
  jacks: [],
  after: null,
  afterWheels: null,
  pieces: [],
  reasons: [],
  others: [],
};

/**
 * The plan's document, every part of it judged; null when there is neither a plan nor anything to
 * do before there can be one.
 */
function plan(headlineText, documentText, next) {
  const document = json(documentText);
  const headline = line(headlineText) ?? line(document?.headline);
  if (document === null || Array.isArray(document)) {
    return headline === null && next === null ? null : { ...NO_PLAN, headline };
  }
  return {
    headline,
    verdict: oneOf(document.verdict, ["good", "best-possible", "move"]),
    wheels: wheels(document.wheels),
    jacks: list(document.jacks).map(jack).filter(known),
    afterWheels: lean(document.afterWheels),
    after: lean(document.afterJacks) ?? lean(document.afterWheels),
    pieces: list(document.pieces)
      .map((each) => ({
        piece: line(each?.piece),
        used: figure(each?.used, 0, 1000),
        of: figure(each?.of, 0, 1000),
      }))
      .filter(({ piece, used, of }) => piece !== null && used !== null && of !== null),
    reasons: list(document.reasons).map((each) => line(each?.sentence ?? each?.text)).filter(known),
    others: list(document.alternatives).map(other).filter(known),
  };
}

/** Another plan, by what it does without. */
function other(value) {
  const headline = line(value?.headline);
  return headline === null ? null : { headline, without: line(value.without) };
}

function lean(value) {
  const roll = figure(value?.rollDeg, -90, 90);
  const pitch = figure(value?.pitchDeg, -90, 90);
  return roll === null || pitch === null ? null : { roll, pitch, uncertainty: 0 };
}

/** What lies, or is to lie, under each tyre. */
function wheels(value) {
  return list(value)
    .map((each) => ({
      axle: line(each?.axle),
      side: oneOf(each?.side, ["left", "right"]),
      liftMm: figure(each?.liftMm, 0, MOST_MM),
      layers: layers(each?.layers),
      stair: list(each?.stair).map(layers),
    }))
    .filter(({ axle, side, layers: laid }) => axle !== null && side !== null && laid.length > 0);
}

function layers(value) {
  return list(value)
    .map((each) => ({ piece: line(each?.piece), abreast: figure(each?.abreast, 1, 100) }))
    .filter(({ piece, abreast }) => piece !== null && abreast !== null);
}

function piles(value) {
  return list(value)
    .map((each) => ({ pad: line(each?.pad), count: figure(each?.count, 1, 100) }))
    .filter(({ pad, count }) => pad !== null && count !== null);
}

function jack(value) {
  const pair = line(value?.pair);
  const raise = figure(value?.raiseMm, 0, MOST_MM);
  if (pair === null || raise === null) {
    return null;
  }
  const sides = (part) => {
    const left = figure(part?.left, 0, MOST_MM);
    const right = figure(part?.right, 0, MOST_MM);
    return left === null || right === null ? null : { left, right };
  };
  return {
    pair,
    raise,
    order: figure(value.order, 0, 100) ?? 0,
    pads: sides(value.padMm),
    piles: { left: piles(value.pads?.left), right: piles(value.pads?.right) },
    travel: sides(value.travelMm),
  };
}

function known(value) {
  return value !== null;
}
