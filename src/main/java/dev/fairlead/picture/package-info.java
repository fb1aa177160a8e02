/** Pictures, films, scans and tables of points: read within bounds, and what was measured on them put into a case. */
@NullMarked
package dev.fairlead.picture;

import org.jspecify.annotations.NullMarked;
