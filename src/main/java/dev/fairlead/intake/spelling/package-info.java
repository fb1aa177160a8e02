/**
 * What a person wrote and what was meant: quantities, units, dates, words, likely slips, and what may tell who the
 * patient is.
 */
@NullMarked
package dev.fairlead.intake.spelling;

import org.jspecify.annotations.NullMarked;
