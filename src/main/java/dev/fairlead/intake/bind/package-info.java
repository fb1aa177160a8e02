/** Binds tokens straight to the records of a case, as the records describe themselves. */
package dev.fairlead.intake.bind;
