/** One arch tied in: its setup as a frame, and what force, moment, stress and band come of it. */
@NullMarked
package dev.fairlead.measure.mechanics.answer;

import org.jspecify.annotations.NullMarked;
