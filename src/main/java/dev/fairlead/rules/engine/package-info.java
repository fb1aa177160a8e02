/** From rules to what they say of facts. */
@NullMarked
package dev.fairlead.rules.engine;

import org.jspecify.annotations.NullMarked;
