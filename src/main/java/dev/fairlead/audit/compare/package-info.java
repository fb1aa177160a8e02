/** What a change of rules or thresholds would do to known cases, before it is adopted. */
@NullMarked
package dev.fairlead.audit.compare;

import org.jspecify.annotations.NullMarked;
