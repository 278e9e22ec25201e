/** The owner's file: TOML to records, every fault reported at once with line and key. */
package io.pitchwatch.config;
