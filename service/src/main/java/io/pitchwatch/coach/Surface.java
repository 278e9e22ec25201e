package io.pitchwatch.coach;

/** What the coach stands on. */
public enum Surface {
  CONCRETE,
  ASPHALT,
  GRAVEL,
  GRASS,
  SOFT;

  /**
   * Whether a piece may be the lowest layer of a stack: what gives wants something wide, and gravel
   * goes through a sheet.
   */
  public boolean mayBeLowest(PieceKind kind) {
    return switch (this) {
      case SOFT, GRASS -> kind != PieceKind.BLOCK;
      case GRAVEL -> kind != PieceKind.SHEET;
      case CONCRETE, ASPHALT -> true;
    };
  }
}
