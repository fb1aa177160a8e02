/** Other plans: the smallest changes that clear a warning, and what a change of one's own would do. */
@NullMarked
package dev.fairlead.check.whatif;

import org.jspecify.annotations.NullMarked;
