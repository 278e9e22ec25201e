package io.pitchwatch.alarms;

/**
 * One alarm that stands, for people and for the network.
 *
 * @param id its lasting name, of a-z, 0-9 and -
 * @param priority how soon somebody should act
 * @param state its state by the standards' names; never normal, never suppressed
 * @param text what, since when, how much and what to do, one line
 * @param sinceNanos monotonic time at which the condition began
 * @param notices how often somebody was told: when it grows it is the moment to do so
 */
public record StandingAlarm(
    String id, Priority priority, AlarmState state, String text, long sinceNanos, long notices) {}
