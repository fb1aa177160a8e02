/** Reads pictures, films, scans and tables of points within bounds; what a file is is told by its content alone. */
@NullMarked
package dev.fairlead.picture.read;

import org.jspecify.annotations.NullMarked;
