/** Puts readings that were taken by picture into a case, beside what was typed. */
package dev.fairlead.picture.into;
