// The coach's part of the Homie tree as it arrived: text by path, with when it arrived and how.

const MOST_TOPICS = 600;
const LONGEST_PAYLOAD = 256 * 1024;
const PATH = /^[a-z0-9$-]{1,64}(\/[a-z0-9$-]{1,64}){0,4}$/;

/**
 * A clock that neither sleep nor a step of the wall clock can hold back: of the two clocks the
 * browser has, the one that moved on further since the instant was marked.
 */
export function mark() {
  return { steady: performance.now(), wall: Date.now() };
}

/** Milliseconds since the mark. */
export function since(instant) {
  return Math.max(performance.now() - instant.steady, Date.now() - instant.wall, 0);
}

export class Tree {
  #entries = new Map();
  #generation = 0;

  /** A connection begins: what is held is from before it until it arrives again. */
  begin() {
    this.#generation++;
  }

  /** Drops what did not arrive again: the broker no longer holds it. */
  dropEarlier() {
    for (const [path, entry] of this.#entries) {
      if (entry.generation !== this.#generation) {
        this.#entries.delete(path);
      }
    }
  }

  clear() {
    this.#entries.clear();
  }

  /**
   * Takes one message.
   *
   * @param path below the coach's own topic
   * @param payload text, or null where it was not UTF-8
   * @param retained whether the broker kept it from earlier
   */
  accept(path, payload, retained) {
    if (!PATH.test(path)) {
      return;
    }
    if (payload === "") {
      this.#entries.delete(path);
      return;
    }
    const before = this.#entries.get(path);
    if (!before && this.#entries.size >= MOST_TOPICS) {
      return;
    }
    const kept = payload !== null && payload.length <= LONGEST_PAYLOAD ? payload : null;
    const same = before !== undefined && before.payload === kept;
    this.#entries.set(path, {
      payload: kept,
      generation: this.#generation,
      arrived: mark(),
      changed: same ? before.changed : mark(),
      // Seen to change while we watched: then its age is known without trusting any clock.
      live: same ? before.live : !retained,
    });
  }

  /** The text at a path; undefined when there is none, null when it cannot be read. */
  text(path) {
    return this.#entries.get(path)?.payload;
  }

  entry(path) {
    return this.#entries.get(path);
  }

  /** The second levels below a prefix, sorted: ids of nodes or alerts. */
  names(prefix) {
    const found = new Set();
    for (const path of this.#entries.keys()) {
      if (path.startsWith(prefix)) {
        found.add(path.slice(prefix.length).split("/")[0]);
      }
    }
    return [...found].filter((name) => name !== "").sort();
  }
}
