/** What a rule may say: lint, checks of texts, scaffold, facts of examples. */
@NullMarked
package dev.fairlead.rules.language;

import org.jspecify.annotations.NullMarked;
