/** The product: a pure core that computes, and thin edges that touch the world. */
package io.pitchwatch;
