/** Puts readings that were taken by picture into a case, beside what was typed. */
@NullMarked
package dev.fairlead.picture.into;

import org.jspecify.annotations.NullMarked;
