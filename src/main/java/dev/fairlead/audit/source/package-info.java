/** Where the cases of an audit come from: folders, files, lines, tables and archives, one case at a time. */
@NullMarked
package dev.fairlead.audit.source;

import org.jspecify.annotations.NullMarked;
