package io.pitchwatch.store;

/**
 * Something that happened once, to be marked in the history: an alert raised or acknowledged, a
 * zero taken, a visit begun.
 *
 * @param atNanos monotonic time, nanoseconds; when read back: nanoseconds since the run began
 * @param run which run of the service; 0 when writing
 * @param wallSeconds seconds since 1970, a label
 * @param kind one word
 * @param name what it happened to, such as the id of an alert; may be empty
 * @param text for people; may be empty
 */
public record HistoryEvent(
    long atNanos, long run, long wallSeconds, String kind, String name, String text) {}
