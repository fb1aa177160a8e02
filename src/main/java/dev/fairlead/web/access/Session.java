package dev.fairlead.web.access;

import java.time.LocalDate;

/**
 * A browser that may ask for pages.
 *
 * @param id names it in lists; tells nothing of its cookie
 * @param name of the device as it was paired
 * @param paired false for a browser of the machine that serves, which opened the printed link
 * @param since the day of pairing
 * @param who role and initials of the person who works on it, as typed; empty until somebody says so
 */
public record Session(String id, String name, DeviceRole role, boolean paired, LocalDate since, String who) {
    /** Who is put into a case's log for what is done from here. */
    public String author() {
        return who.isEmpty() ? name : paired ? who + ", " + name : who;
    }
}
