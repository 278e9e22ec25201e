/** The coach one does not have on the desk; it never imports the service. */
package io.pitchwatch.sim;
