/** A case as text: written out, blank with every field explained, and the schema of its format. */
@NullMarked
package dev.fairlead.intake.write;

import org.jspecify.annotations.NullMarked;
