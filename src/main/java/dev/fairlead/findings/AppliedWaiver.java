package dev.fairlead.findings;

import dev.fairlead.model.Choices.Role;
import java.time.LocalDate;

/**
 * A waiver that holds for a finding: the finding stays, and says who answers for it.
 *
 * @param pointer JSON Pointer of the waiver in the case
 */
public record AppliedWaiver(String pointer, String reason, Role by, LocalDate date, LocalDate expires) {}
