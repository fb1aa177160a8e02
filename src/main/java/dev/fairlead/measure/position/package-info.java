/** Where the lower incisors have to go and what follows from it, as pure functions in mm and degrees on arch curves. */
@NullMarked
package dev.fairlead.measure.position;

import org.jspecify.annotations.NullMarked;
