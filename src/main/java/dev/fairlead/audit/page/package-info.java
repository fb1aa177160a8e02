/** The report of an audit as one page that needs nothing else: for a meeting, for paper, and without a network. */
@NullMarked
package dev.fairlead.audit.page;

import org.jspecify.annotations.NullMarked;
