/** Whether fridge and doors are content. */
package io.pitchwatch.comfort;
