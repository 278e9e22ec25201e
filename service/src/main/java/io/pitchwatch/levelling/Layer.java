package io.pitchwatch.levelling;

/**
 * One layer of a stack: pieces of one kind side by side.
 *
 * @param piece id of the kind of piece
 * @param abreast how many lie side by side across the coach, at least one
 */
public record Layer(String piece, int abreast) {}
