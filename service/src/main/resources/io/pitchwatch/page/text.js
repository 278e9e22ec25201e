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
    lostBroker: "No connection",
    waiting: (seconds) => `No connection. Next try in ${seconds} s`,
    silentBroker: "Connected, no news of the coach yet",
    ready: "Live",
    init: "The coach's program is starting",
    disconnected: "The coach's program is switched off",
    sleeping: "The coach's program is asleep",
    lost: "The coach fell silent",
    odd: "The coach's state cannot be read",
    retry: "Try now",
    change: "Change the sign-in",
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
    before: (words) => `Last known: ${words}`,
    sure: (width) => `Give or take ${width}.`,
    notSure: "How sure is not known.",
    state: {
      moving: "The coach moves.",
      unsettled: "At rest, the figure still settles.",
      steady: "The coach stands still.",
      unknown: "The sensor says nothing.",
    },
  },

  floor: {
    heading: "The floor",
    unknown: "How the floor leans is not known",
    waiting: "Waiting for the first value",
    sideways: "Side to side",
    lengthways: "Front to back",
    low: {
      left: "Left side low",
      right: "Right side low",
      front: "Front low",
      rear: "Rear low",
      even: "Even",
    },
    overTrack: (length) => `${length} over the track`,
    overWheelbase: (length) => `${length} over the wheelbase`,
    levelBoth: "The floor is even both ways",
    verdict: {
      good: "Level enough for this stay",
      "near-enough": "Not level enough for this stay yet",
      outside: "Outside what a fridge can stand",
      unknown: "Whether it is level enough is not known",
    },
  },

  picture: {
    name: "The floor from above, the nose of the coach at the top",
    lowest: "lowest",
    nose: "nose",
    lines: (step) => `A line every ${step} of height, the deepest tint where it is lowest.`,
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

  plan: {
    heading: "What to do",
    laid: "This is laid now",
    verdict: {
      good: "Brings the floor inside what this stay asks",
      "best-possible": "Not quite there, but the best that what is on board allows",
      move: "Not on this spot",
    },
    wheels: "Under the tyres",
    wheel: (axle, side) => `${axle} ${side}`,
    sides: { left: "left", right: "right" },
    up: (length) => `up ${length}`,
    drive: "drive this way",
    picture: (wheel, height) => `Side view of the stack under ${wheel}, to scale, ${height} high.`,
    layer: (count, piece, abreast) =>
      (count === 1 ? `1 layer of ${piece}` : `${count} layers of ${piece}`)
      + (abreast > 1 ? `, ${abreast} side by side` : ""),
    fromGround: "From the ground up",
    stair: "Stair before it",
    step: (n, layers) => `Step ${n}: ${layers}`,
    jacks: "Then the jacks, in this order",
    jack: (pair, raise) => `${pair} pair: raise ${raise}`,
    pads: (left, right) => `Pads: left ${left}, right ${right}`,
    travel: (left, right) => `Travel: left ${left}, right ${right}`,
    noPads: "none",
    after: "Afterwards",
    pieces: "Pieces",
    used: (piece, used, of) => `${piece}: ${used} of ${of}`,
    pile: (height, piles) => (piles === "" ? height : `${height} (${piles})`),
    others: "Other ways",
    without: (piece, headline) => `Without ${piece}: ${headline}`,
    turn: "Or turn the coach",
    old: "From an earlier reading",
  },

  go: {
    heading: "Still to go",
    sideways: { positive: "Right side up", negative: "Left side up" },
    lengthways: { positive: "Front up", negative: "Rear up" },
    there: { sideways: "Side to side is enough", lengthways: "Front to back is enough" },
    planned: { sideways: "Side to side is as planned", lengthways: "Front to back is as planned" },
  },

  well: {
    heading: "Is all well?",
    words: {
      good: "All is well",
      near: "Not all is as it should be",
      bad: "Something is wrong",
      none: "Not all is known",
    },
    nothing: "How things stand is not known",
    parts: { floor: "Floor", fridge: "Fridge", ground: "Ground", doors: "Doors", sensors: "Sensors" },
    levels: { good: "well", near: "not quite", bad: "wrong", none: "not known" },
  },

  laid: {
    heading: "Under the coach",
    some: (count) => (count === 1 ? "1 piece" : `${count} pieces`),
    toCollect: (count) => (count === 1 ? "1 piece to collect" : `${count} pieces to collect`),
    none: "Nothing lies under the coach",
    pieces: (count, piece) => `${count} × ${piece}`,
    collected: "Collected",
  },

  fridge: {
    heading: "Fridge",
    within: (margin) => `Inside its limits, ${margin} to spare`,
    outside: (margin) => `Outside its limits by ${margin}`,
    unknown: "Not known",
    limits: (side, end) => `Limits: ${side} side to side, ${end} front to back`,
    ownLimits: (side, end) => `Limits along its own sides: ${side} and ${end}`,
    minutes: (duration) => `Outside for ${duration} since parking`,
  },

  doors: {
    heading: "Doors",
    tendency: {
      stays: "Stays where it is put",
      "drifts-shut": "Drifts shut",
      "drifts-open": "Drifts open",
      either: "Drifts open or shut, by how far it stands open",
    },
    unknown: "Not known",
  },

  ground: {
    heading: "The ground",
    holds: "The ground holds",
    settling: "The ground is giving way",
    unknown: "Whether the ground holds is not known",
    rate: {
      right: (rate) => `Right side sinking ${rate} an hour`,
      left: (rate) => `Left side sinking ${rate} an hour`,
      front: (rate) => `Front sinking ${rate} an hour`,
      rear: (rate) => `Rear sinking ${rate} an hour`,
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
    quiet: "Quiet for an hour",
    told: (words) => `Alert: ${words}`,
    old: "This stood when the coach was last heard.",
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
    mark: "Remember how this spot leans",
  },

  site: {
    heading: "This place",
    name: "What you call it",
    save: "Keep the name",
    unnamed: "With a name the coach remembers how it stood here, until it drives on.",
    first: "The site book knows no earlier visit.",
    before: (count) => (count === 1 ? "You were here before." : `You were here ${count} times before.`),
    span: (dates) => dates.join(" – "),
    undated: "Some day",
    found: (lean) => `Found ${lean}`,
    laid: (words) => `Laid: ${words}`,
    plan: (headline) => `The plan was: ${headline}`,
    levelled: (lean) => `Then ${lean}`,
    sank: {
      right: (angle) => `Right side sank ${angle}`,
      left: (angle) => `Left side sank ${angle}`,
      front: (angle) => `Front sank ${angle}`,
      rear: (angle) => `Rear sank ${angle}`,
    },
    firm: "The ground held",
  },

  ask: {
    asked: "Asking the coach…",
    done: "The coach has taken it.",
    said: (words) => `The coach has taken it: ${words}`,
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
    health: { good: "Good", doubtful: "Doubtful", failed: "Failed" },
    unknown: "Not known",
    numbered: (number) => `Sensor ${number}`,
    noise: (angle) => `Single readings spread by ${angle}`,
    drift: (roll, pitch) =>
      `Drifts by ${roll} side to side and ${pitch} front to back with each °C, which is taken away`,
  },

  history: {
    heading: "How the floor leaned",
    open: "Show the history",
    span: "How far back",
    spans: { day: "A day", week: "A week", month: "A month", year: "A year" },
    asked: "Asking the coach for its history…",
    nothing: "Nothing is written down of this time. The latest follows when its minute is over.",
    noDrawing: "What draws the history could not be loaded from the page's server.",
    unreadable: "The coach's answer cannot be read.",
    truncated: "There was more than fits; this is the latest of it.",
    between: (axis, least, most) => `${axis}: between ${least} and ${most}.`,
    always: (axis, words) => `${axis}: ${words}.`,
    at: (when, side, angle) => `${when}: ${side} ${angle}`,
    key:
      "Thick: the mean. Shaded: least and most. Dashed: what this stay asks. Full lines: a fridge's"
      + " limits. Dotted: where the trend leads. Triangles: alerts. Where nothing is drawn, nothing is known.",
    rate: (rate, width) => `${rate}, give or take ${width}`,
    toLimit: (hours, soonest, latest) =>
      `First limit in about ${hours}, between ${soonest} and ${latest} in nine of ten cases`,
    never: "never",
    events: "What happened",
    kinds: {
      raised: (words) => `Alert: ${words}`,
      returned: (words) => `Over: ${words}`,
      zero: (words) => `Zero set on sensor ${words}`,
    },
  },

  setUp: {
    heading: "Set-up",
    units: "Lengths in",
    unit: { metric: "millimetres", imperial: "inches" },
    look: "Colours",
    looks: { auto: "as the device", light: "light", dark: "dark", red: "night red" },
    where: {
      heading: "Where this comes from",
      broker: (address, tree) => `${address}, topics under ${tree}`,
      user: (user) => `signed in as ${user}`,
      nobody: "without signing in",
    },
    described: {
      heading: "The coach as its owner described it",
      edit:
        "To change any of it, edit the configuration file on the coach's computer and start the"
        + " service again.",
      axle: (track) => `track ${track}`,
      twin: "twin wheels",
      brake: "holds the parking brake",
      jacks: (spacing) => `jacks ${spacing} apart`,
      jackPair: (name) => `${name} jacks`,
      piece: (count, kind, size) => `${count} of this ${kind}, ${size}`,
      kinds: { block: "block", board: "board", sheet: "sheet" },
      pad: (count, thickness) => `${count} pads, ${thickness} thick`,
      fridge: (name) => `${name} fridge`,
      elsewhere: "Only the page that comes from the coach itself knows this.",
    },
    zero: {
      heading: "Zero",
      why: "Tells the sensor that the floor, as it stands now, is level.",
      start: "Set the zero…",
      question: "Is the floor level now?",
      detail:
        "Check with a trusted spirit level on the floor, both ways, with the coach standing still."
        + " Every lean shown from here on is measured from this.",
      yes: "It is level: set the zero",
      no: "Leave the zero as it is",
    },
  },

  care: {
    heading: "Looking after the sensor",
    next: (words) => `Next: ${words}`,
    undo: "Undo the last change",
    undoOne: (sensor) => `Undo the last change of ${sensor} alone`,
    startOne: (sensor) => `Begin the calibration of ${sensor}`,
    drift: {
      name: "Drift with temperature",
      why:
        "The coach learns it by itself and takes it away. Forget it only when a chip was replaced by"
        + " another of its kind; it is learnt anew within a day or two.",
      forget: "Forget what was learnt",
      forgetOne: (sensor) => `Forget what was learnt of ${sensor}`,
    },
    undoTo: (before) => `An undo goes back to: ${before}.`,
    tasks: {
      reversal: {
        name: "Zero without a level",
        why: "Two readings, the coach turned round between them: what the ground leans falls out.",
        how: [
          "Stand still on firm ground and take the first reading.",
          "Turn the coach end for end, wheels in the same tracks.",
          "Take the second reading.",
        ],
        steps: {
          first: "Take the first reading",
          second: "Take the second reading",
          cancel: "Give up the reversal",
        },
      },
      align: {
        name: "Heading of the sensor's board",
        why: "A board mounted askew makes front to back look like side to side. Do it after the zero.",
        how: [
          "Stand still and take the reading before.",
          "Raise one end by its jacks alone, both sides alike, by a degree or more.",
          "Say which end went up.",
        ],
        steps: {
          before: "Take the reading before",
          "front-up": "The front went up",
          "rear-up": "The rear went up",
          cancel: "Give up the heading",
        },
      },
      calibrate: {
        name: "Calibrate the sensor in the hand",
        why:
          "Once, before the board is fastened: it forgets zero and heading, and the floor is not"
          + " known while it goes on.",
        how: [
          "Begin, and hold the board still for two seconds in each way that is asked for.",
          "Each is taken by itself; what is still wanted is said here.",
          "Accept when the coach offers it.",
        ],
        steps: {
          start: "Begin the calibration",
          accept: "Accept the calibration",
          cancel: "Give up the calibration",
        },
      },
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
