/** Pictures, films, scans and tables of points: read within bounds, and what was measured on them put into a case. */
package dev.fairlead.picture;
