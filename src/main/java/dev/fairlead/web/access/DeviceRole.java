package dev.fairlead.web.access;

import dev.fairlead.model.Choices.Role;
import java.util.Locale;

/** What may be done from a device; each may do what those before it may. */
public enum DeviceRole {
    READER("may look at everything and change nothing"),
    ASSISTANT("may enter readings and answers, and sign as assistant"),
    RESIDENT("may also waive cautions, and sign as resident"),
    CLINICIAN("may also waive stops, sign as clinician or supervisor, and pair devices"),
    DIRECTOR("may do everything");

    private final String may;

    DeviceRole(String may) {
        this.may = may;
    }

    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** What it may do, in words. */
    public String may() {
        return may;
    }

    public boolean mayChange() {
        return this != READER;
    }

    /** Whether a waiver may be written from such a device at all; {@link #maySignAs} tells in which role. */
    public boolean mayWaive() {
        return compareTo(RESIDENT) >= 0;
    }

    /** Whether devices may be paired and sent away from it. */
    public boolean mayPair() {
        return compareTo(CLINICIAN) >= 0;
    }

    /** Whether a person may sign or waive in that role from such a device. */
    public boolean maySignAs(Role role) {
        return compareTo(
                        switch (role) {
                            case ASSISTANT -> ASSISTANT;
                            case RESIDENT -> RESIDENT;
                            case CLINICIAN, SUPERVISOR -> CLINICIAN;
                            case DIRECTOR -> DIRECTOR;
                        })
                >= 0;
    }

    /** The role of that word; throws when there is none. */
    public static DeviceRole of(String word) {
        return valueOf(word.toUpperCase(Locale.ROOT));
    }
}
