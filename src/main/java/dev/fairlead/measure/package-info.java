/** From a case to named measurements with their working, and to the facts that the rules look at. */
@NullMarked
package dev.fairlead.measure;

import org.jspecify.annotations.NullMarked;
