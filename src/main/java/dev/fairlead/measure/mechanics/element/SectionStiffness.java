package dev.fairlead.measure.mechanics.element;

/**
 * Stiffnesses of a cross-section along an element's own axes (x along the element).
 *
 * @param ea axial, N
 * @param eiY bending about the local y axis, N mm²
 * @param eiZ bending about the local z axis, N mm²
 * @param gj torsion, N mm²
 */
public record SectionStiffness(double ea, double eiY, double eiZ, double gj) {}
