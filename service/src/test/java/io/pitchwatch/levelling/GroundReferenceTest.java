package io.pitchwatch.levelling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.pitchwatch.coach.Axle;
import io.pitchwatch.coach.Piece;
import io.pitchwatch.coach.PieceKind;
import io.pitchwatch.coach.Surface;
import org.junit.jupiter.api.Test;

class GroundReferenceTest {

  /** Halliday, Resnick, Walker, chapter 12: r 6.00 cm, h 3.00 cm, 0.800 kg, g 9.80 give 13.6 N. */
  @Test
  void thePullOverAStepIsThatOfTheTextbook() {
    assertEquals(13.6, StepPull.share(30, 60) * 0.800 * 9.80, 0.05);
  }

  @Test
  void noWheelClimbsItsOwnRadius() {
    assertThrows(IllegalArgumentException.class, () -> StepPull.share(60, 60));
  }

  /**
   * International Building Code 2012, Table 1806.2; 1 psf is 47.88 Pa (NIST SP 811, appendix B).
   */
  @Test
  void presumptiveBearingIsThatOfTheCode() {
    assertEquals(47.88026, Bearing.PA_PER_PSF, 1e-5);
    assertEquals(143_640, Bearing.presumedPa(Surface.GRAVEL), 10);
    assertEquals(71_820, Bearing.presumedPa(Surface.GRASS), 10);
    assertEquals(0, Bearing.presumedPa(Surface.SOFT));
  }

  /** 3450 kg on two sheets of 600 by 600 mm: 3450·9.80665/0.72 = 46,990 Pa. */
  @Test
  void pressureIsLoadOverArea() {
    Axle axle = new Axle("rear", 0, 1830, 6900, 80, 590, 1, true, true);
    Piece sheet = new Piece("sheet", PieceKind.SHEET, 12, 600, 600, 4, 4500);
    assertEquals(46_990, Bearing.pressurePa(axle, sheet, 2), 1);
  }
}
