/** Verdicts with the criterion's texts, this case's numbers and its waivers: what people and programs read. */
@NullMarked
package dev.fairlead.findings;

import org.jspecify.annotations.NullMarked;
