/** Binds tokens straight to the records of a case, as the records describe themselves. */
@NullMarked
package dev.fairlead.intake.bind;

import org.jspecify.annotations.NullMarked;
