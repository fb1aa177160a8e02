/** A case as text: written out, blank with every field explained, and the schema of its format. */
package dev.fairlead.intake.write;
