/**
 * From a case file (JSON or YAML) to the model: one pass, every problem at once with its place, likely slip and mend;
 * and back to text.
 */
@NullMarked
package dev.fairlead.intake;

import org.jspecify.annotations.NullMarked;
