/** What any part may use, and what knows nothing of cases. */
@NullMarked
package dev.fairlead.base;

import org.jspecify.annotations.NullMarked;
