/** The façade: a case in, a report out. The command line, the web page, audits and tests all come through here. */
@NullMarked
package dev.fairlead.check;

import org.jspecify.annotations.NullMarked;
