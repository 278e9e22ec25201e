/**
 * Which piece goes under which tyre, how far each jack moves, which way to turn the coach.
 *
 * <p>The rules and the order of preference are in docs/levelling.md.
 */
@org.jspecify.annotations.NullMarked
package io.pitchwatch.levelling;
