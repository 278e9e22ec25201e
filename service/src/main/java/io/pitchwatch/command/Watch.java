package io.pitchwatch.command;

import io.pitchwatch.store.Kept;
import io.pitchwatch.visit.Watchkeeper;

/**
 * The parts that orders are about.
 *
 * @param sensors all sensors, which one is believed, and who looks after them
 * @param keeper makes reports of what they say
 * @param kept what must last
 * @param historian answers what people ask about the history
 * @param sites keeps the book of visits
 */
record Watch(Sensors sensors, Watchkeeper keeper, Kept kept, Historian historian, SiteLog sites) {}
