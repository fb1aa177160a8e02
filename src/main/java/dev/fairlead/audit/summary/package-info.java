/** What many rows say together: counts, rates, groups, periods, what is missing, which cases need a look. */
package dev.fairlead.audit.summary;
