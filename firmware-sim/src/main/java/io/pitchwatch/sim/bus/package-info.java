/**
 * A simulated two-wire bus: transactions, addresses, acknowledge, and the ways in which it fails.
 */
package io.pitchwatch.sim.bus;
