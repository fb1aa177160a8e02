/** Verdicts with the criterion's texts, this case's numbers and its waivers: what people and programs read. */
package dev.fairlead.findings;
