/**
 * What the case model looks like, read from the records: keys, kinds, units, ranges; reading, schema, blank case and
 * forms all use it.
 */
@NullMarked
package dev.fairlead.model.shape;

import org.jspecify.annotations.NullMarked;
