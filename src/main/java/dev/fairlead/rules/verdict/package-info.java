/** What a rule reports, what its silence means, and the judgement. */
@NullMarked
package dev.fairlead.rules.verdict;

import org.jspecify.annotations.NullMarked;
