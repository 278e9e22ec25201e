// What to do before the coach is level, and what lies under it: to be read at arm's length.

import { byId, h, keyed, redraw, setData, setHidden, setText } from "./dom.js";
import { length } from "./units.js";
import { leanLines, name } from "./words.js";
import { stackDrawing } from "./stack.js";
import { showToGo, toGo } from "./togo.js";
import { text } from "./text.js";

const LEVELS = { good: "good", "best-possible": "near", move: "bad" };

export function showPlan(view, settings, footing, units) {
  const { plan } = view;
  const wanted = plan !== null && asksForPlan(view);
  setHidden(byId("plan"), !wanted);
  if (!wanted) {
    return;
  }
  const current = view.reading.status === "current";
  setData(byId("plan"), "fresh", current ? "current" : "old");
  redraw(byId("plan-headline"), plan.headline, () => headlineParts(plan.headline ?? ""));
  setData(byId("plan-verdict"), "level", current ? (LEVELS[plan.verdict] ?? "none") : "none");
  setText(
    byId("plan-verdict"),
    current ? (text.plan.verdict[plan.verdict] ?? "") : text.plan.old,
  );
  setText(byId("plan-next"), current ? (view.next ?? "") : "");
  showToGo(toGo(view, settings, footing, units));
  setHidden(byId("plan-laid"), plan.wheels.length === 0);
  redraw(byId("plan-steps"), JSON.stringify([plan, view.turn, units, footing?.trackMm]), () => [
    ...wheelParts(plan, settings.pieces ?? [], units),
    ...jackParts(plan, units),
    ...afterParts(plan, footing, units),
    ...listParts(null, plan.reasons),
    ...listParts(text.plan.others, plan.others.map(otherWords)),
    ...listParts(text.plan.turn, plan.verdict === "good" ? [] : view.turn),
    ...listParts(
      text.plan.pieces,
      plan.pieces.map(({ piece, used, of }) => text.plan.used(name(piece), used, of)),
    ),
  ]);
}

/** Arriving, always; parked, as long as the floor is not level enough; else it would only distract. */
function asksForPlan({ phase, floor }) {
  return phase === "arriving" || phase === null || (phase === "parked" && floor.verdict !== "good");
}

/** Which way is up stands out, and every clause has a line of its own; the words stay as they came. */
function headlineParts(headline) {
  const lines = headline.replace(/^([^:;]*:) /, "$1\n").replaceAll("; ", ";\n").split("\n");
  return lines.flatMap((line, i) => [...(i === 0 ? [] : [" "]), h("span", {}, line)]);
}

function wheelParts(plan, pieces, units) {
  if (plan.wheels.length === 0) {
    return [];
  }
  return [
    h("h3", {}, text.plan.wheels),
    h("ul", { class: "wheels" }, ...plan.wheels.map((wheel) => wheelPart(wheel, pieces, units))),
  ];
}

function wheelPart(wheel, pieces, units) {
  const where = wheelName(wheel);
  const lift = wheel.liftMm === null ? "" : length(wheel.liftMm, units);
  return h(
    "li",
    { class: "wheel-part" },
    h("p", { class: "wheel-name" }, h("span", {}, where), h("strong", {}, lift && text.plan.up(lift))),
    stackDrawing(wheel, pieces, text.plan.picture(where, lift)),
    h("p", { class: "hint" }, text.plan.fromGround),
    h("ul", { class: "layers" }, ...runs(wheel.layers).map((words) => h("li", {}, words))),
    ...(wheel.stair.length === 0
      ? []
      : [
          h("p", { class: "hint" }, text.plan.stair),
          h(
            "ul",
            { class: "layers" },
            ...wheel.stair.map((step, i) =>
              h("li", {}, text.plan.step(i + 1, text.join(runs(step)))),
            ),
          ),
        ]),
  );
}

/** Layers from the ground up, like ones counted together. */
function runs(layers) {
  const found = [];
  for (const layer of layers) {
    const last = found[found.length - 1];
    if (last && last.piece === layer.piece && last.abreast === layer.abreast) {
      last.count++;
    } else {
      found.push({ ...layer, count: 1 });
    }
  }
  return found.map(({ count, piece, abreast }) =>
    text.plan.layer(count, piece.replaceAll("-", " "), abreast),
  );
}

function jackParts(plan, units) {
  if (plan.jacks.length === 0) {
    return [];
  }
  const mm = (value) => length(value, units);
  const pad = (value, piles) =>
    value === 0 ? text.plan.noPads : text.plan.pile(mm(value), text.join(piles.map(pileWords)));
  const inOrder = [...plan.jacks].sort((a, b) => a.order - b.order);
  return [
    h("h3", {}, text.plan.jacks),
    h(
      "ol",
      { class: "jacks" },
      ...inOrder.map(({ pair, raise, pads, piles, travel }) =>
        h(
          "li",
          {},
          h("strong", {}, text.plan.jack(name(pair), mm(raise))),
          h(
            "span",
            { class: "detail" },
            [
              pads && text.plan.pads(pad(pads.left, piles.left), pad(pads.right, piles.right)),
              travel && text.plan.travel(mm(travel.left), mm(travel.right)),
            ]
              .filter(Boolean)
              .join(". "),
          ),
        ),
      ),
    ),
  ];
}

function pileWords({ pad, count }) {
  return text.laid.pieces(count, pad.replaceAll("-", " "));
}

function otherWords({ headline, without }) {
  return without === null ? headline : text.plan.without(without.replaceAll("-", " "), headline);
}

function afterParts(plan, footing, units) {
  // A plan to move changes nothing: what it leaves is how the coach stands now.
  if (plan.after === null || plan.verdict === "move") {
    return [];
  }
  const words = leanLines(plan.after, footing, units).map(
    ({ axis, words: low, angle }) => `${axis}: ${low.toLowerCase()}${angle && ` ${angle}`}`,
  );
  return listParts(text.plan.after, words);
}

function listParts(heading, lines) {
  if (lines.length === 0) {
    return [];
  }
  const items = h("ul", { class: "plain" }, ...lines.map((words) => h("li", {}, words)));
  return heading === null ? [items] : [h("h3", {}, heading), items];
}

/** What lies under the coach, wheel by wheel, each to be ticked off when it is collected. */
export function showLaid(view, onCollected) {
  const { laid, phase } = view;
  setHidden(byId("laid"), laid.length === 0 && phase !== "leaving");
  const count = laid.reduce((sum, wheel) => sum + piecesOf(wheel), 0);
  const some = phase === "leaving" ? text.laid.toCollect : text.laid.some;
  setText(byId("laid-summary"), count === 0 ? text.laid.none : some(count));
  keyed(
    byId("laid-list"),
    laid.map((wheel) => ({ key: wheelName(wheel), wheel })),
    () =>
      h(
        "li",
        { class: "row tick-off" },
        h("span", { class: "name" }),
        h("span", { class: "detail" }),
        h("button", { type: "button" }, text.laid.collected),
      ),
    (row, { key, wheel }) => {
      setText(row.children[0], key);
      setText(row.children[1], collectWords(wheel));
      row.children[2].onclick = () => onCollected(wheel);
      row.children[2].setAttribute("aria-label", `${text.laid.collected}: ${key}`);
    },
  );
}

/** Pieces by name, layers and stair together: who collects does not care which was which. */
function collectWords(wheel) {
  const counts = new Map();
  for (const { piece, abreast } of [wheel.layers, ...wheel.stair].flat()) {
    counts.set(piece, (counts.get(piece) ?? 0) + abreast);
  }
  return text.join(
    [...counts].map(([piece, count]) => text.laid.pieces(count, piece.replaceAll("-", " "))),
  );
}

function piecesOf(wheel) {
  return [wheel.layers, ...wheel.stair].flat().reduce((sum, { abreast }) => sum + abreast, 0);
}

function wheelName({ axle, side }) {
  return text.plan.wheel(name(axle), text.plan.sides[side]);
}
