package dev.fairlead.report.html;

/**
 * A number that a presentation opens with.
 *
 * @param value with error and unit, or "unknown"
 * @param remark what it stands beside; may be empty
 */
public record KeyNumber(String label, String value, String remark) {}
