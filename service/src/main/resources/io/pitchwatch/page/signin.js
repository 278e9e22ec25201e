// Where the broker is, and who is reading. The password lives as long as the browser's tab; the
// address is remembered.

import { byId, setHidden, setText } from "./dom.js";
import { text } from "./text.js";

const WHO = "pitchwatch.who";
const WHERE = "pitchwatch.where";
const ADDRESS = /^wss?:\/\/[^\s/@]+(\/\S*)?$/;
const ID = /^[a-z0-9-]{1,32}$/;
const TREE = /^[^+#/\s]{1,64}$/;

/** Credentials handed over in the address bar are taken from it at once; whether there were any. */
export function takeFragment() {
  const given = new URLSearchParams(location.hash.slice(1));
  if (!given.has("user")) {
    return false;
  }
  remember(sessionStorage, WHO, {
    user: given.get("user"),
    password: given.get("password") ?? "",
  });
  history.replaceState(null, "", location.pathname + location.search);
  return true;
}

/** Who signed in to this tab, or null. */
export function who() {
  const known = recall(sessionStorage, WHO);
  return typeof known?.user === "string" && typeof known.password === "string" ? known : null;
}

export function forgetWho() {
  sessionStorage.removeItem(WHO);
}

/** Where to connect: what the reader chose before, else what the page's settings say. */
export function where(settings) {
  const chosen = recall(localStorage, WHERE) ?? {};
  const coach = ID.test(chosen.coach ?? "") ? chosen.coach : settings.coach;
  const tree = TREE.test(chosen.tree ?? "") ? chosen.tree : settings.tree;
  const address = ADDRESS.test(chosen.address ?? "") ? chosen.address : "";
  return { coach, tree, address, url: address || defaultUrl(settings) };
}

function defaultUrl(settings) {
  if (settings.broker.url) {
    return settings.broker.url;
  }
  const scheme = location.protocol === "https:" ? "wss" : "ws";
  return `${scheme}://${location.hostname}:${settings.broker.port}${settings.broker.path}`;
}

export class SignIn {
  #form = byId("sign-in-form");

  /** `onSubmit` is called once the reader's answers are stored. */
  constructor(settings, onSubmit) {
    const form = this.#form;
    form.addEventListener("submit", (event) => {
      event.preventDefault();
      if (this.#store(settings)) {
        onSubmit();
      }
    });
    form.elements.show.addEventListener("change", () => {
      form.elements.password.type = form.elements.show.checked ? "text" : "password";
    });
    const at = where(settings);
    form.elements.address.value = at.address;
    form.elements.coach.value = at.coach;
    form.elements.tree.value = at.tree;
    byId("elsewhere").open = at.address !== "" || at.coach !== settings.coach;
  }

  show(problem) {
    setText(byId("sign-in-problem"), problem);
    setHidden(byId("sign-in"), false);
    this.#form.elements.user.focus();
  }

  hide() {
    if (byId("sign-in").contains(document.activeElement)) {
      byId("main").focus();
    }
    setHidden(byId("sign-in"), true);
  }

  #store(settings) {
    const { user, password, address, coach, tree } = this.#form.elements;
    const wanted = address.value.trim();
    const problem = addressProblem(wanted);
    if (problem !== "") {
      setText(byId("sign-in-problem"), problem);
      byId("elsewhere").open = true;
      address.focus();
      return false;
    }
    remember(sessionStorage, WHO, { user: user.value, password: password.value });
    remember(localStorage, WHERE, {
      address: wanted.includes("/", 6) || wanted === "" ? wanted : wanted + "/mqtt",
      coach: coach.value.trim() || settings.coach,
      tree: tree.value.trim() || settings.tree,
    });
    return true;
  }
}

function addressProblem(address) {
  if (address === "") {
    return "";
  }
  if (!ADDRESS.test(address)) {
    return text.signIn.refused.address;
  }
  return location.protocol === "https:" && address.startsWith("ws:")
    ? text.signIn.refused.mixed
    : "";
}

function remember(storage, key, value) {
  try {
    storage.setItem(key, JSON.stringify(value));
  } catch {
    // Private windows may refuse; then it is asked again next time.
  }
}

function recall(storage, key) {
  try {
    return JSON.parse(storage.getItem(key));
  } catch {
    return null;
  }
}
