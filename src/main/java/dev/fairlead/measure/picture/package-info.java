/** Named points placed on a picture, film or scan, and the numbers that follow from them with their errors. */
package dev.fairlead.measure.picture;
