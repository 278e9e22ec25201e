package io.pitchwatch.sim.scenario;

import java.util.function.Consumer;

/**
 * A fault that comes or goes.
 *
 * @param atS when, seconds of scenario time
 * @param action what is switched
 */
record Switch(double atS, Consumer<Breakables> action) {}
