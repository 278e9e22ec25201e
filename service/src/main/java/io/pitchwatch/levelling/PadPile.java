package io.pitchwatch.levelling;

/**
 * Pads of one kind under one jack.
 *
 * @param pad id of the kind
 * @param count how many lie on each other
 */
public record PadPile(String pad, int count) {}
