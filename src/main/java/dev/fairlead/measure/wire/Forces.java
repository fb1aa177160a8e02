package dev.fairlead.measure.wire;

import dev.fairlead.model.Measured;

/**
 * What the tied-in wire does at one visit.
 *
 * @param low low end of the total labial force, gf
 * @param high high end of the total labial force, gf
 * @param peakStress peak bending stress in the wire, MPa
 * @param intrusivePerIncisor intrusive force per incisor, mean, gf; negative when it extrudes
 */
public record Forces(Measured low, Measured high, Measured peakStress, Measured intrusivePerIncisor) {}
