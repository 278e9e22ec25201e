// Numbers as people read them. The wire is always degrees and millimetres.

const MM_PER_INCH = 25.4;
const EIGHTHS = ["", "1/8", "1/4", "3/8", "1/2", "5/8", "3/4", "7/8"];

/** Degrees, unsigned; the words beside say which side is low. */
export function degrees(value, decimals = 1) {
  return Math.abs(value).toFixed(decimals) + "°";
}

/** Decimals worth showing for a lean known to the given standard error, degrees. */
export function decimalsFor(uncertaintyDeg) {
  return uncertaintyDeg !== null && uncertaintyDeg <= 0.03 ? 2 : 1;
}

/** A length in the reader's units. */
export function length(mm, units) {
  const size = Math.abs(mm);
  if (units === "imperial") {
    return inches(size) + " in";
  }
  return (size > 0 && size < 9.95 ? size.toFixed(1).replace(/\.0$/, "") : size.toFixed(0)) + " mm";
}

/** Inches to the nearest eighth, as on a rule. */
function inches(mm) {
  const eighths = Math.round((mm / MM_PER_INCH) * 8);
  const whole = Math.floor(eighths / 8);
  const part = EIGHTHS[eighths % 8];
  return part === "" ? String(whole) : whole === 0 ? part : `${whole} ${part}`;
}

/** Contour intervals, in millimetres, that are round figures in the reader's units. */
export function contourIntervals(units) {
  return units === "imperial"
    ? [1 / 8, 1 / 4, 1 / 2, 1, 2, 4, 8].map((inch) => inch * MM_PER_INCH)
    : [1, 2, 5, 10, 20, 50, 100, 200];
}

export function temperature(celsius, units) {
  return units === "imperial"
    ? ((celsius * 9) / 5 + 32).toFixed(0) + " °F"
    : celsius.toFixed(0) + " °C";
}
