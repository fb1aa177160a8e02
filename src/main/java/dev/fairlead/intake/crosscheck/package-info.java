/** Looks over a case that was read for facts that contradict each other in ways that a slip of the pen explains. */
@NullMarked
package dev.fairlead.intake.crosscheck;

import org.jspecify.annotations.NullMarked;
