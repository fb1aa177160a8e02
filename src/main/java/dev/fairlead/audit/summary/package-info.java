/** What many rows say together: counts, rates, groups, periods, what is missing, which cases need a look. */
@NullMarked
package dev.fairlead.audit.summary;

import org.jspecify.annotations.NullMarked;
