/** Holds an audit against what others say of the same cases: a reviewer's verdicts, or the truth of invented cases. */
@NullMarked
package dev.fairlead.audit.agree;

import org.jspecify.annotations.NullMarked;
