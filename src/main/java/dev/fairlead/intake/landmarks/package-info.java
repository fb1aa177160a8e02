/** Landmarks from a table of points. */
package dev.fairlead.intake.landmarks;
