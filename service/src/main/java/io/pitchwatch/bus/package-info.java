/** The register-bus port of sensing on Pi4J: the one place of the service that imports it. */
package io.pitchwatch.bus;
