// The few ways in which the page writes to its document. Text is only ever set as text.

const SVG = "http://www.w3.org/2000/svg";

export const byId = (id) => document.getElementById(id);

/** An element with attributes and children; strings become text. */
export function h(tag, attributes = {}, ...children) {
  return filled(document.createElement(tag), attributes, children);
}

/** The same for drawings. */
export function s(tag, attributes = {}, ...children) {
  return filled(document.createElementNS(SVG, tag), attributes, children);
}

function filled(element, attributes, children) {
  for (const [name, value] of Object.entries(attributes)) {
    if (typeof value === "function") {
      element.addEventListener(name, value);
    } else if (value !== null && value !== false) {
      element.setAttribute(name, value === true ? "" : value);
    }
  }
  element.append(...children.filter((child) => child !== null));
  return element;
}

/** Sets text only when it differs, so that nothing is read out or selected away for nothing. */
export function setText(element, words) {
  if (element.textContent !== words) {
    element.textContent = words;
  }
}

export function setHidden(element, hidden) {
  if (element.hidden !== hidden) {
    element.hidden = hidden;
  }
}

/** Sets a data attribute that the style sheet goes by. */
export function setData(element, name, value) {
  if (element.dataset[name] !== value) {
    element.dataset[name] = value;
  }
}

/** One child for each item, kept as long as its key stays, so that focus is not lost. */
export function keyed(parent, items, create, update) {
  const before = new Map([...parent.children].map((child) => [child.dataset.key, child]));
  let place = parent.firstElementChild;
  for (const item of items) {
    let child = before.get(item.key);
    if (!child) {
      child = create(item);
      child.dataset.key = item.key;
    }
    before.delete(item.key);
    if (child === place) {
      place = place.nextElementSibling;
    } else {
      parent.insertBefore(child, place);
    }
    update(child, item);
  }
  before.forEach((child) => child.remove());
}

const drawn = new WeakMap();

/** Replaces the children only when the signature of what they show has changed. */
export function redraw(parent, signature, draw) {
  if (drawn.get(parent) !== signature) {
    drawn.set(parent, signature);
    parent.replaceChildren(...draw());
  }
}
