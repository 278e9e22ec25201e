package io.pitchwatch.coach;

/** What a piece is: a climbing block, a wide board, or a thin sheet. */
public enum PieceKind {
  BLOCK,
  BOARD,
  SHEET
}
