package dev.fairlead.findings;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Which case was checked, and for which day.
 *
 * @param id the pseudonym of the case
 * @param hash SHA-256 of its content; empty for a report that does not show it
 * @param date the day for which it was judged; empty when neither the case nor the call names one
 */
public record Subject(String id, String hash, Optional<LocalDate> date) {}
