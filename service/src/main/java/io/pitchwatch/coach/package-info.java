/** What the owner described: axles, jacks, pieces, fridge, doors, and how level is level enough. */
package io.pitchwatch.coach;
