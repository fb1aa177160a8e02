/** Other plans of a case, searched beside the pages: what would clear a warning, and what that would change. */
@NullMarked
package dev.fairlead.web.plan;

import org.jspecify.annotations.NullMarked;
