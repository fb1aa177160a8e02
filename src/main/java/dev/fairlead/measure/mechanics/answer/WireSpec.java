package dev.fairlead.measure.mechanics.answer;

import dev.fairlead.measure.mechanics.element.SectionStiffness;
import dev.fairlead.measure.mechanics.geometry.Require;

/**
 * Round wire as the beam model sees it.
 *
 * @param d diameter, mm
 * @param e Young's modulus, MPa
 * @param nu Poisson's ratio
 */
public record WireSpec(double d, double e, double nu) {

    public WireSpec {
        Require.positive("wire diameter", d);
        Require.positive("Young's modulus", e);
        if (!(nu > -1 && nu < 0.5)) {
            throw new IllegalArgumentException("Poisson's ratio must lie between -1 and 0.5: " + nu);
        }
    }

    /** Cross-section, mm²: pi d²/4. */
    public double area() {
        return Math.PI * d * d / 4;
    }

    /** Second moment of area about a diameter, mm⁴: pi d⁴/64. */
    public double inertia() {
        return Math.PI * Math.pow(d, 4) / 64;
    }

    /** Section modulus in bending, mm³: pi d³/32. The one in torsion is twice this. */
    public double sectionModulus() {
        return Math.PI * Math.pow(d, 3) / 32;
    }

    /** Shear modulus, MPa: E / (2 (1 + nu)). */
    public double shearModulus() {
        return e / (2 * (1 + nu));
    }

    SectionStiffness section() {
        double ei = e * inertia();
        return new SectionStiffness(e * area(), ei, ei, shearModulus() * 2 * inertia());
    }
}
