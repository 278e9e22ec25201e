/** The floor's lean and how sure it is: live and steady estimates from one stream of samples. */
package io.pitchwatch.floor;
