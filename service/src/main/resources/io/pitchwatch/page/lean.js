// Geometry of a leaning floor. ISO 8855: x forward, y left; roll > 0 right side low, pitch > 0
// front low. Lengths in millimetres, angles in degrees.

const RAD = Math.PI / 180;

/** What the coach's figures say of its size; null where the owner described too little. */
export function footing(axles) {
  const known = axles.filter(
    (a) => Number.isFinite(a.positionMm) && Number.isFinite(a.trackMm) && a.trackMm > 0,
  );
  if (known.length === 0) {
    return null;
  }
  const positions = known.map((a) => a.positionMm);
  const front = Math.max(...positions);
  const rear = Math.min(...positions);
  return {
    axles: known,
    frontMm: front,
    rearMm: rear,
    wheelbaseMm: front - rear,
    trackMm: Math.max(...known.map((a) => a.trackMm)),
  };
}

/** Height of the floor at (x, y) above the floor at the origin. */
export function heightMm(roll, pitch, x, y) {
  return y * Math.tan(roll * RAD) - x * Math.tan(pitch * RAD);
}

/** How much lower the low side is, over the widest track. */
export function acrossMm(roll, footing) {
  return footing.trackMm * Math.tan(Math.abs(roll) * RAD);
}

/** How much lower the low end is, over the wheelbase. */
export function alongMm(pitch, footing) {
  return footing.wheelbaseMm * Math.tan(Math.abs(pitch) * RAD);
}

/**
 * Below this a lean is called even: over a track of 2 m it is less than 2 mm, thinner than anything
 * one lays. So is a lean not told from zero by two standard errors. The tree's `low-side` and
 * `low-end` follow the same rule.
 */
const EVEN_DEG = 0.05;

function told(lean, uncertainty) {
  return Math.abs(lean) >= EVEN_DEG && Math.abs(lean) >= 2 * (uncertainty ?? 0);
}

/** "left", "right" or "even", for a roll and its standard error. */
export function lowSide(roll, uncertainty) {
  return !told(roll, uncertainty) ? "even" : roll > 0 ? "right" : "left";
}

/** "front", "rear" or "even", for a pitch and its standard error. */
export function lowEnd(pitch, uncertainty) {
  return !told(pitch, uncertainty) ? "even" : pitch > 0 ? "front" : "rear";
}
