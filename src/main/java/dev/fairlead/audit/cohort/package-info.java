/** Invented cases with faults planted in them and the truth beside each, to try rules and audits on. */
@NullMarked
package dev.fairlead.audit.cohort;

import org.jspecify.annotations.NullMarked;
