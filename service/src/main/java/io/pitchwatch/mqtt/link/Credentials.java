package io.pitchwatch.mqtt.link;

import java.nio.file.Path;

/**
 * Who the broker is to see.
 *
 * @param user the name
 * @param passwordFile holds the password on its first line; read anew for every connection, so that
 *     a changed one is used without a restart
 */
public record Credentials(String user, Path passwordFile) {}
