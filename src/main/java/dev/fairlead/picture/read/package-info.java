/** Reads pictures, films, scans and tables of points within bounds; what a file is is told by its content alone. */
package dev.fairlead.picture.read;
