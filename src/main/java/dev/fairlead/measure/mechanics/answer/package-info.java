/** One arch tied in: its setup as a frame, and what force, moment, stress and band come of it. */
package dev.fairlead.measure.mechanics.answer;
