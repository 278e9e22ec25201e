// Asking the coach for a change: publish, then wait for the value to come back, for a refusal, or
// for nothing. What the coach echoes counts, never what was asked.

import { line } from "./values.js";
import { text } from "./text.js";

const WAIT_MS = 8000;
/** What came of an accepted command follows its echo within the coach's next round. */
const LISTEN_MS = 4000;
const REFUSAL = /^\S+\/set refused: (.+)$/;
/** "zero: the floor is level now", "align front up refused: the floor is moving". */
const OUTCOME = /^([a-z]+)(?: [a-z ]+?)??( refused)?: (.+)$/;

export class Commands {
  #publish;
  #pending = new Map();
  #echoed = new Map();

  /** `publish(path, payload)` returns whether it was sent. */
  constructor(publish) {
    this.#publish = publish;
  }

  /**
   * Sends `payload` to the property's /set.
   *
   * @param ready whether the coach's program is running
   * @param tell called with (words, outcome): outcome "asked", "done" or "failed"
   */
  ask(path, payload, ready, tell) {
    this.#settle(path, null, "failed");
    if (!ready) {
      tell(text.ask.notReady, "failed");
      return;
    }
    if (!this.#publish(`${path}/set`, payload)) {
      tell(text.ask.noLink, "failed");
      return;
    }
    const timer = setTimeout(() => this.#settle(path, text.ask.noAnswer, "failed"), WAIT_MS);
    this.#pending.set(path, { payload, tell, timer });
    tell(text.ask.asked, "asked");
  }

  /** The payload asked for at a path and not yet answered. */
  asked(path) {
    return this.#pending.get(path)?.payload;
  }

  /** Looks at every message that arrives live: is it an answer? */
  heard(path, payload) {
    if (this.#pending.get(path)?.payload === payload) {
      this.#listen(path);
      this.#settle(path, text.ask.done, "done");
    } else if (path.startsWith("$log/") && this.#outcome(path, line(payload) ?? "")) {
      return;
    } else if (path === "$log/warn" && this.#pending.size > 0) {
      const why = line(payload) ?? "";
      for (const waiting of [...this.#pending.keys()]) {
        if (this.#pending.size === 1 || why.includes(waiting)) {
          this.#settle(waiting, text.ask.refused(REFUSAL.exec(why)?.[1] ?? why), "failed");
        }
      }
    }
  }

  #listen(path) {
    const { tell } = this.#pending.get(path);
    this.#echoed.set(path.split("/").pop(), { tell, until: performance.now() + LISTEN_MS });
  }

  /** Whether a line of the coach's log says what came of a command that it took. */
  #outcome(path, words) {
    const [, name, refused, said] = OUTCOME.exec(words) ?? [];
    const waiting = this.#echoed.get(name);
    if (!waiting || waiting.until < performance.now()) {
      return false;
    }
    if (refused || path === "$log/warn") {
      waiting.tell(text.ask.refused(said), "failed");
    } else {
      waiting.tell(text.ask.said(said), "done");
    }
    return true;
  }

  #settle(path, words, outcome) {
    const waiting = this.#pending.get(path);
    if (waiting) {
      clearTimeout(waiting.timer);
      this.#pending.delete(path);
      if (words !== null) {
        waiting.tell(words, outcome);
      }
    }
  }
}
