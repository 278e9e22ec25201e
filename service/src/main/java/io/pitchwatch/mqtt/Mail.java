package io.pitchwatch.mqtt;

import io.pitchwatch.mqtt.link.Inbox;
import io.pitchwatch.mqtt.link.Outbox;

/**
 * What goes to and comes from the broker, whichever connection carries it.
 *
 * @param inbox what came in
 * @param outbox what is to go out
 * @param log what is said about it
 */
record Mail(Inbox inbox, Outbox outbox, LinkLog log) {}
