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

/** "left", "right" or "even" at the given number of shown decimals. */
export function lowSide(roll, decimals) {
  const shown = Number(roll.toFixed(decimals));
  return shown > 0 ? "right" : shown < 0 ? "left" : "even";
}

/** "front", "rear" or "even" at the given number of shown decimals. */
export function lowEnd(pitch, decimals) {
  const shown = Number(pitch.toFixed(decimals));
  return shown > 0 ? "front" : shown < 0 ? "rear" : "even";
}
