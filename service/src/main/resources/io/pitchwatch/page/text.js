// Every word the page shows, in one place, ready for translation. Functions take values that are
// already formatted. Where each label comes from is listed in docs/page.md.

export const language = "en";

export const text = {
  title: (coach) => `${coach} · Pitchwatch`,
  product: "Pitchwatch",
  skip: "Skip to what matters now",

  link: {
    closed: "Not connected",
    connecting: "Connecting…",
    reconnecting: "Connecting again…",
    waiting: (seconds) => `No connection. Next try in ${seconds} s`,
    silentBroker: "Connected, no news of the coach yet",
    ready: "Live",
    init: "The coach's program is starting",
    disconnected: "The coach's program is switched off",
    sleeping: "The coach's program is asleep",
    lost: "The coach fell silent",
    odd: "The coach's state cannot be read",
    retry: "Try now",
  },

  signIn: {
    heading: "Sign in to the coach's broker",
    intro: "The page reads the coach's values straight from its MQTT broker.",
    user: "User",
    password: "Password",
    show: "Show what I type",
    submit: "Connect",
    elsewhere: "Another broker or coach",
    address: "Broker's WebSocket address",
    addressHint: "ws://… at home, wss://… from away. Empty: the broker this page came with.",
    coach: "Coach",
    tree: "Root topic",
    reach:
      "From inside the coach any screen on its network reaches this page. From away, open the same"
      + " page with the wss address of the broker the coach publishes to.",
    out: "Sign out",
    refused: {
      credentials: "The broker does not take this user and password.",
      rights: "The broker took the sign-in, but this account may not read the coach's values.",
      address: "This is not a WebSocket address. It looks like ws://host:port/path.",
      mixed: "This page came over https, so the browser only allows a wss address.",
      settings: "The page's settings could not be loaded from its server.",
    },
  },

  reading: {
    none: "Nothing has been read yet",
    current: (age) => `Read ${age} ago`,
    now: "Read just now",
    old: (age) => `Last known, ${age} old`,
    oldUnknown: "Last known, age not known",
    notCurrent: "These values are not current.",
    sure: (width) => `sure to ${width}`,
    notSure: "how sure is not known",
    state: {
      moving: "the coach moves",
      unsettled: "still settling down",
      steady: "the coach stands still",
      unknown: "the sensor says nothing",
    },
  },

  floor: {
    heading: "The floor",
    unknown: "How the floor leans is not known",
    waiting: "Waiting for the first value",
    sideways: "Side to side",
    lengthways: "Front to back",
    low: {
      left: "left side low",
      right: "right side low",
      front: "front low",
      rear: "rear low",
      even: "even",
    },
    overTrack: (length) => `${length} over the track`,
    overWheelbase: (length) => `${length} over the wheelbase`,
    levelBoth: "The floor is even both ways",
    verdict: {
      good: "Level enough for this stay",
      "near-enough": "Fridge is fine, floor is not yet level enough",
      outside: "A fridge is outside its limits",
      unknown: "Whether it is level enough is not known",
    },
  },

  picture: {
    name: "The floor from above, the nose of the coach at the top",
    flat: "No contour: flatter than one line",
    lowest: "lowest",
    nose: "nose",
    lines: (step) => `A line every ${step} of height. Water would run to the deep blue.`,
    linesByAngle: "Water would run to the deep blue.",
    describe: (low, drop) => `Water would gather at the ${low}, ${drop} below the highest wheel.`,
    describeByAngle: (low) => `Water would gather at the ${low}.`,
    unknown: "Nothing to draw: the lean is not known.",
    place: {
      "left,front": "front left corner",
      "right,front": "front right corner",
      "left,rear": "rear left corner",
      "right,rear": "rear right corner",
      "left,even": "left side",
      "right,even": "right side",
      "even,front": "front",
      "even,rear": "rear",
    },
  },

  fridge: {
    heading: "Fridge",
    within: (margin) => `inside its limits, ${margin} to spare`,
    outside: (margin) => `outside its limits by ${margin}`,
    unknown: "not known",
    limits: (side, end) => `Limits: ${side} side to side, ${end} front to back`,
    ownLimits: (side, end) => `Limits along its own sides: ${side} and ${end}`,
    minutes: (duration) => `Outside for ${duration} since parking`,
  },

  doors: {
    heading: "Doors",
    tendency: {
      stays: "stays where it is put",
      "drifts-shut": "drifts shut",
      "drifts-open": "drifts open",
      either: "drifts open or shut, by how far it stands open",
    },
    unknown: "not known",
  },

  ground: {
    heading: "The ground",
    holds: "The ground holds",
    settling: "The ground is giving way",
    unknown: "Whether the ground holds is not known",
    rate: {
      right: (rate) => `right side sinking ${rate} an hour`,
      left: (rate) => `left side sinking ${rate} an hour`,
      front: (rate) => `front sinking ${rate} an hour`,
      rear: (rate) => `rear sinking ${rate} an hour`,
    },
    hours: (duration) => `First limit in about ${duration}`,
  },

  frame: {
    heading: "Frame",
    twist: (angle) => `Twisted by ${angle} between the two sensors`,
  },

  alerts: {
    heading: "Wants attention",
    seen: "I have seen it",
    unreadable: "An alert that cannot be read",
  },

  stay: {
    heading: "This stay",
    kind: "How long",
    kinds: { overnight: "One night", stay: "Some days", season: "A season" },
    tolerance: (angle) => `within ${angle}`,
    surface: "Standing on",
    surfaces: {
      concrete: "Concrete",
      asphalt: "Asphalt",
      gravel: "Gravel",
      grass: "Grass",
      soft: "Soft ground",
    },
    unknown: "The coach has not said yet.",
  },

  ask: {
    asked: "Asking the coach…",
    done: "The coach has taken it.",
    refused: (why) => `The coach refused: ${why}`,
    noAnswer: "The coach did not answer. This account may only be allowed to read.",
    noLink: "Not sent: there is no connection.",
    notReady: "Not sent: the coach's program is not running.",
  },

  phase: {
    "under-way": "Under way",
    arriving: "Arriving",
    parked: "Parked",
    leaving: "Leaving",
  },

  sensors: {
    heading: "Sensors",
    health: { good: "good", doubtful: "doubtful", failed: "failed" },
    unknown: "not known",
    noise: (angle) => `single readings spread by ${angle}`,
  },

  setUp: {
    heading: "Set-up",
    units: "Lengths in",
    unit: { metric: "millimetres", imperial: "inches" },
    look: "Colours",
    looks: { auto: "as the device", light: "light", dark: "dark", red: "night red" },
    zero: {
      heading: "Zero",
      why: "Tells the sensor that the floor, as it stands now, is level. The zero used before is lost.",
      start: "Set the zero…",
      question: "Is the floor level now?",
      detail:
        "Check with a trusted spirit level on the floor, both ways, with the coach standing still."
        + " Every lean shown from here on is measured from this.",
      yes: "It is level: set the zero",
      no: "Leave the zero as it is",
    },
  },

  cautions: {
    heading: "Before anyone goes near the wheels",
    list: [
      "Chock the wheels that stay on the ground and set the parking brake first.",
      "Nobody goes under the coach while it stands on jacks or blocks alone.",
      "Keep the braked rear tyres on the ground.",
      "Stay inside the rated load of jacks, blocks and tyres.",
      "The jacks are for levelling, not for lifting the coach to work under it.",
      "Drive on with someone guiding you from where you can see them.",
      "The site's own rules, the coach maker's instructions and a qualified technician come before"
        + " this program.",
    ],
    estimate: "The figures are estimates from one sensor and from what the owner entered.",
  },

  time: {
    seconds: (n) => `${n} s`,
    minutes: (n) => `${n} min`,
    hours: (n) => `${n} h`,
    days: (n) => (n === 1 ? "1 day" : `${n} days`),
  },

  join: (parts) => parts.join(", "),
};
