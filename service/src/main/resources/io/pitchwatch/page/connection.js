// The page's one connection: MQTT 3.1.1 over WebSocket, kept up by our own backoff so that what the
// reader is told about it is always what is.

const KEEP_ALIVE_S = 15;
const TIMEOUT_S = 10;
const FIRST_PAUSE_MS = 1000;
const LONGEST_PAUSE_MS = 30000;
const CONNACK_REFUSED = /return code:\s*(\d)/;
const BAD_CREDENTIALS = ["4", "5"];

/**
 * States, told to `onState` with a detail: "connecting"; "live" once subscribed; "waiting" with
 * `{retryAt, everLive}`; "refused" (the broker does not take these credentials: no retry);
 * "closed".
 */
export class Connection {
  #wanted = null;
  #client = null;
  #pauseMs = FIRST_PAUSE_MS;
  #retry = 0;
  #everLive = false;

  constructor({ onState, onMessage }) {
    this.onState = onState;
    this.onMessage = onMessage;
  }

  /** Connects, and stays connected until `close`. `user` empty: without credentials. */
  open({ url, base, user, password }) {
    this.close();
    this.#wanted = { url, base, user, password };
    this.#everLive = false;
    this.#pauseMs = FIRST_PAUSE_MS;
    this.#attempt();
  }

  close() {
    this.#wanted = null;
    this.#drop();
    this.onState("closed", {});
  }

  /** Tries at once instead of waiting for the next try; a live connection is left alone. */
  hurry() {
    if (this.#wanted && !this.#client) {
      this.#pauseMs = FIRST_PAUSE_MS;
      this.#attempt();
    }
  }

  /** Gives up a connection that may have died unnoticed while the device slept, and tries again. */
  renew() {
    if (this.#wanted) {
      this.#drop();
      this.#attempt();
    }
  }

  /** Publishes below the coach's topic; false when there is no connection. Never retained. */
  publish(path, payload) {
    if (!this.#client?.isConnected()) {
      return false;
    }
    const message = new Paho.Message(payload);
    message.destinationName = this.#wanted.base + path;
    message.qos = 1;
    message.retained = false;
    this.#client.send(message);
    return true;
  }

  #attempt() {
    clearTimeout(this.#retry);
    const wanted = this.#wanted;
    let client;
    try {
      client = new Paho.Client(wanted.url, clientId());
    } catch {
      this.onState("refused", { reason: "address" });
      return;
    }
    this.#client = client;
    // Late calls from a client that was given up must not speak for its successor.
    const mine = (call) => (argument) => this.#client === client && call(argument);
    client.onConnectionLost = mine(() => this.#pause());
    client.onMessageArrived = mine((message) => this.#deliver(message));
    this.onState("connecting", { everLive: this.#everLive });
    const options = {
      timeout: TIMEOUT_S,
      keepAliveInterval: KEEP_ALIVE_S,
      cleanSession: true,
      mqttVersion: 4,
      reconnect: false,
      onSuccess: mine(() => this.#subscribe(client, mine)),
      onFailure: mine((failure) => this.#failed(failure)),
    };
    if (wanted.user !== "") {
      options.userName = wanted.user;
      options.password = wanted.password;
    }
    try {
      client.connect(options);
    } catch {
      this.#pause();
    }
  }

  #subscribe(client, mine) {
    client.subscribe(this.#wanted.base + "#", {
      qos: 1,
      timeout: TIMEOUT_S,
      onSuccess: mine(() => {
        this.#everLive = true;
        this.#pauseMs = FIRST_PAUSE_MS;
        this.onState("live", {});
      }),
      onFailure: mine(() => {
        this.#drop();
        this.onState("refused", { reason: "rights" });
      }),
    });
  }

  #deliver(message) {
    const base = this.#wanted.base;
    if (!message.destinationName.startsWith(base)) {
      return;
    }
    let payload;
    try {
      payload = message.payloadString;
    } catch {
      payload = null;
    }
    this.onMessage(message.destinationName.slice(base.length), payload, message.retained);
  }

  #failed(failure) {
    const code = CONNACK_REFUSED.exec(failure?.errorMessage ?? "")?.[1];
    if (BAD_CREDENTIALS.includes(code)) {
      this.#drop();
      this.onState("refused", { reason: "credentials" });
    } else {
      this.#pause();
    }
  }

  #pause() {
    this.#client = null;
    // Spread, so that several screens do not all come back at one instant.
    const pause = this.#pauseMs * (0.8 + 0.4 * Math.random());
    this.#pauseMs = Math.min(this.#pauseMs * 2, LONGEST_PAUSE_MS);
    this.#retry = setTimeout(() => this.#wanted && this.#attempt(), pause);
    this.onState("waiting", { retryAt: Date.now() + pause, everLive: this.#everLive });
  }

  #drop() {
    clearTimeout(this.#retry);
    const client = this.#client;
    this.#client = null;
    if (client) {
      try {
        client.disconnect();
      } catch {
        // It was not connected.
      }
    }
  }
}

/** At most 23 characters of letters and digits, which every broker takes (MQTT 3.1.1, 3.1.3.1). */
function clientId() {
  const random = crypto.getRandomValues(new Uint32Array(2));
  return "page" + random[0].toString(36) + random[1].toString(36);
}
