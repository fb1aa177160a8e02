/** What a change of rules or thresholds would do to known cases, before it is adopted. */
package dev.fairlead.audit.compare;
