/** The text of a case file as tokens, with limits, and what is wrong with it as problems with line and column. */
@NullMarked
package dev.fairlead.intake.text;

import org.jspecify.annotations.NullMarked;
