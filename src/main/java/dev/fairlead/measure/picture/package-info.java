/** Named points placed on a picture, film or scan, and the numbers that follow from them with their errors. */
@NullMarked
package dev.fairlead.measure.picture;

import org.jspecify.annotations.NullMarked;
