/**
 * Turns pages of XHTML into PDF that can be kept, read aloud and printed true to size; sheets and reports write through
 * it.
 */
@NullMarked
package dev.fairlead.report.pdf;

import org.jspecify.annotations.NullMarked;
