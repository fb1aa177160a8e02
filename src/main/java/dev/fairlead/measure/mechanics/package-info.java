/**
 * Three-dimensional beam model of the whole utility arch: what force a tied-in wire asks of incisors and molars, and
 * how far that can be known.
 *
 * <p>Pure functions over their own small records; depends on nothing else of Fairlead. Units are mm, N, MPa (N/mm²)
 * and, where a name says so, degrees; angles without a unit in the name are radians. Axes: x to the patient's left, y
 * anterior, z occlusal, origin midway between the mesial ends of the two molar tubes. Nothing here has been checked
 * against a bench test of a bent wire: the closed forms in the tests check the solver, not the clinic.
 *
 * <p>Read the rooms in this order: geometry, element, solver, answer; each knows only those before it.
 */
@NullMarked
package dev.fairlead.measure.mechanics;

import org.jspecify.annotations.NullMarked;
