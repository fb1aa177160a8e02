/** Invented cases with faults planted in them and the truth beside each, to try rules and audits on. */
package dev.fairlead.audit.cohort;
