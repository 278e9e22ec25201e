/** The commands, and the one place where core and edges are wired together. */
package io.pitchwatch.command;
