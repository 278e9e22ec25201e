package io.pitchwatch.alarms;

import io.pitchwatch.attitude.Lean;
import io.pitchwatch.comfort.FridgeWatch;
import io.pitchwatch.settling.GroundReport;
import java.util.List;

/**
 * All that alarms look at, at one instant.
 *
 * @param lean the floor's lean, radians; NaN when not known
 * @param leanDoubtRad by how much the sensor may feign the lean, radians
 * @param underWay whether the coach is driven
 * @param toleranceRad what the stay allows, radians
 * @param fridges the fridges of the coach, in its order
 * @param ground what is known of the ground
 * @param sensors one for each sensor of the coach, in its order
 * @param twistRad twist of the frame, radians; NaN without a second sensor
 * @param zeroAgeDays how long ago the sensor was zeroed, days; NaN when not known
 * @param zeroDoubt why the zero may not hold any more; empty when nothing speaks against it
 * @param piecesLaid how many pieces lie under the tyres
 */
public record Situation(
    Lean lean,
    double leanDoubtRad,
    boolean underWay,
    double toleranceRad,
    List<FridgeWatch> fridges,
    GroundReport ground,
    List<SensorTrust> sensors,
    double twistRad,
    double zeroAgeDays,
    String zeroDoubt,
    int piecesLaid) {}
