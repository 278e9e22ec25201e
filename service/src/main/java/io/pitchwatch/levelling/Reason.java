package io.pitchwatch.levelling;

/**
 * Why a plan is what it is, or what would change it.
 *
 * @param code a lasting name, of a-z and -
 * @param text one sentence for people
 */
public record Reason(String code, String text) {}
