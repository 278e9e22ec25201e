package io.pitchwatch.sensing;

/**
 * The change of output, in g, that a chip's self-test must bring; signs count.
 *
 * @param xMinG least change of x
 * @param xMaxG greatest change of x
 * @param yMinG least change of y
 * @param yMaxG greatest change of y
 * @param zMinG least change of z
 * @param zMaxG greatest change of z
 */
public record SelfTestLimits(
    double xMinG, double xMaxG, double yMinG, double yMaxG, double zMinG, double zMaxG) {}
