package io.pitchwatch.sensing;

/**
 * What the datasheet promises of a chip; typical values unless said otherwise.
 *
 * @param chip its name
 * @param xyNoiseG noise density of x and y, g/√Hz
 * @param zNoiseG noise density of z, g/√Hz
 * @param xyOffsetG largest zero-g offset of x and y, g
 * @param zOffsetG largest zero-g offset of z, g
 * @param xyTempcoG drift of the zero-g offset of x and y, g/°C, either sign
 * @param zTempcoG drift of the zero-g offset of z, g/°C, either sign
 * @param wanderG what the zero-g offset wanders by within minutes at one temperature, one standard
 *     deviation, g: the floor of the Allan deviation, which no averaging gets below
 * @param scaleTolerance largest relative error of sensitivity, 0.1 for 10 %
 * @param resolutionG one count at the range that is used, g
 * @param source document, edition and table of these figures
 */
public record ChipFacts(
    String chip,
    double xyNoiseG,
    double zNoiseG,
    double xyOffsetG,
    double zOffsetG,
    double xyTempcoG,
    double zTempcoG,
    double wanderG,
    double scaleTolerance,
    double resolutionG,
    String source) {

  /** The same chip at another range. */
  public ChipFacts withResolution(double resolutionG) {
    return new ChipFacts(
        chip,
        xyNoiseG,
        zNoiseG,
        xyOffsetG,
        zOffsetG,
        xyTempcoG,
        zTempcoG,
        wanderG,
        scaleTolerance,
        resolutionG,
        source);
  }
}
