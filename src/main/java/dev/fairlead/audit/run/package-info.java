/** Runs an audit: cases judged on all cores, in order, in bounded memory, to be taken up again where it stopped. */
@NullMarked
package dev.fairlead.audit.run;

import org.jspecify.annotations.NullMarked;
