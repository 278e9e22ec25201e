/** Whether the ground gives way under a parked coach, how fast, and when that will matter. */
package io.pitchwatch.settling;
