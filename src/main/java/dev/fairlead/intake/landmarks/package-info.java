/** Landmarks from a table of points. */
@NullMarked
package dev.fairlead.intake.landmarks;

import org.jspecify.annotations.NullMarked;
